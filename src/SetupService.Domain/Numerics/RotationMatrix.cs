namespace SetupService.Domain.Numerics;

/// <summary>A rotation as its matrix, by rows: what a <see cref="Rotation"/> becomes when it has several vectors to turn.</summary>
/// <param name="RowX">First row.</param>
/// <param name="RowY">Second row.</param>
/// <param name="RowZ">Third row.</param>
public readonly record struct RotationMatrix(Vector3 RowX, Vector3 RowY, Vector3 RowZ)
{
    /// <summary>The vector, turned.</summary>
    public Vector3 Apply(in Vector3 vector) => new(RowX.Dot(vector), RowY.Dot(vector), RowZ.Dot(vector));
}
