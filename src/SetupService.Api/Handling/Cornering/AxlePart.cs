using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.Cornering;

/// <summary>How load crosses one axle against rest, half the difference of outer and inner wheel; the three parts add up to the whole.</summary>
public sealed record AxlePart
{
    /// <summary>Load that crosses from the inner to the outer wheel.</summary>
    [Sample(1900.0)]
    public required double LoadTransferN { get; init; }

    /// <summary>What springs, bar and stops carry across.</summary>
    [Sample(1500.0)]
    public required double ElasticN { get; init; }

    /// <summary>What the links carry across, from side force and roll centre.</summary>
    [Sample(240.0)]
    public required double GeometricN { get; init; }

    /// <summary>What the unsprung masses move across by themselves.</summary>
    [Sample(160.0)]
    public required double UnsprungN { get; init; }

    /// <summary>How far the body rose at this axle; positive = jacked up.</summary>
    [Sample(1.2)]
    public required double HeaveMm { get; init; }

    /// <summary>Slip angle of the axle; positive = pulling into the turn.</summary>
    [Sample(4.0)]
    public required double SlipDeg { get; init; }

    /// <summary>Height of the roll centre above the ground at ride height.</summary>
    [Sample(55.0)]
    public required double RollCentreHeightMm { get; init; }
}
