namespace SetupService.Domain.Handling.Cornering;

/// <summary>How load crosses one axle, N from the inner to the outer wheel against rest; the three parts add up to the whole.</summary>
public readonly record struct AxleAttitude
{
    /// <summary>Half the difference between outer and inner wheel, less what it is at rest.</summary>
    public required double LoadTransferN { get; init; }

    /// <summary>What the links carry across, from side force and roll centre.</summary>
    public required double GeometricN { get; init; }

    /// <summary>What the unsprung masses move across by themselves.</summary>
    public required double UnsprungN { get; init; }

    /// <summary>What springs, bar and stops carry across.</summary>
    public double ElasticN => LoadTransferN - GeometricN - UnsprungN;

    /// <summary>How far the body rose at the axle, mm; positive = jacked up.</summary>
    public required double HeaveMm { get; init; }

    /// <summary>Slip angle of the axle, degrees.</summary>
    public required double SlipDeg { get; init; }

    /// <summary>Height of the roll centre at rest, mm above the ground.</summary>
    public required double RollCentreHeightMm { get; init; }
}
