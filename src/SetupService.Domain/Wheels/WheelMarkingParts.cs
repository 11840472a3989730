namespace SetupService.Domain.Wheels;

/// <summary>What has been read of a wheel's marking so far.</summary>
internal sealed class WheelMarkingParts
{
    public double RimDiameterIn { get; set; }

    public double RimWidthIn { get; set; }

    public string? Contour { get; set; }

    public string? Hump { get; set; }

    public double? OffsetMm { get; set; }

    public BoltCircle? BoltCircle { get; set; }
}
