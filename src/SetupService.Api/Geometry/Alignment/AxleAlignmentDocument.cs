namespace SetupService.Api.Geometry.Alignment;

/// <summary>What was measured at the two wheels of an axle.</summary>
public sealed record AxleAlignmentDocument
{
    /// <summary>Left wheel.</summary>
    public WheelAlignmentDocument? Left { get; set; }

    /// <summary>Right wheel.</summary>
    public WheelAlignmentDocument? Right { get; set; }
}
