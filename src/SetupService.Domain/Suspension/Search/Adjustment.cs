using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Search;

/// <summary>One thing adjusted, by how much.</summary>
/// <param name="By">What.</param>
/// <param name="Amount">How far, mm or degrees as <see cref="Adjuster"/> says.</param>
public readonly record struct Adjustment(Adjuster By, double Amount)
{
    /// <summary>Which of five links, 0 to 4, for <see cref="Adjuster.LinkLength"/>.</summary>
    public int LinkIndex { get; init; }

    /// <summary>Distance between the two bolts that hold the knuckle, mm, for <see cref="Adjuster.KnuckleEccentric"/>; more than the throw.</summary>
    public double BoltSpacingMm { get; init; }

    /// <summary>Centre of the other bolt, mm, for <see cref="Adjuster.KnuckleEccentric"/>; null for the strut's lower point.</summary>
    public Vector3? Pivot { get; init; }

    /// <summary>Size of the amount as movements are compared, mm: a degree of shim counts as 5 mm (a stated choice, no source).</summary>
    public double WeightMm => IsAngle ? 5 : 1;

    /// <summary>Whether the amount is degrees.</summary>
    public bool IsAngle => By is Adjuster.HubShimCamber or Adjuster.HubShimToe;
}
