namespace SetupService.Domain.Handling.Cornering;

/// <summary>What stays as it is while a turn is taken harder: its radius, or the speed.</summary>
public readonly record struct TurnPath
{
    private readonly double? _radiusM;
    private readonly double _speedKmh;

    private TurnPath(TurnDirection turn, double? radiusM, double speedKmh) => (Turn, _radiusM, _speedKmh) = (turn, radiusM, speedKmh);

    /// <summary>Which way.</summary>
    public TurnDirection Turn { get; }

    /// <summary>A turn of a radius, m.</summary>
    public static TurnPath AtRadius(TurnDirection turn, double radiusM) => new(turn, radiusM, 0);

    /// <summary>A turn at a speed, km/h, above 0.</summary>
    public static TurnPath AtSpeed(TurnDirection turn, double speedKmh) => new(turn, null, speedKmh);

    /// <summary>The turn at a lateral acceleration, g, not negative.</summary>
    public CorneringDemand At(double lateralG) =>
        _radiusM is { } radiusM ? new(lateralG, radiusM, Turn) : CorneringDemand.AtSpeed(lateralG, _speedKmh, Turn);

    /// <summary>Radius, m; null where the turn is as good as straight.</summary>
    public double? RadiusM(double lateralG) => At(lateralG) is { IsStraight: false } demand ? demand.RadiusM : null;

    /// <summary>Speed, km/h.</summary>
    public double SpeedKmh(double lateralG) => _radiusM is null ? _speedKmh : At(lateralG).SpeedKmh;
}
