using SetupService.Domain.Handling.Cars;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>What the car does: a steady turn, or one it is braked or driven through, quasi-steady.</summary>
/// <param name="LateralG">Lateral acceleration in g, not negative.</param>
/// <param name="RadiusM">Radius of the centre of gravity's path, m.</param>
/// <param name="Turn">Which way.</param>
/// <param name="LongitudinalG">Longitudinal acceleration in g; negative = braking.</param>
public readonly record struct CorneringDemand(double LateralG, double RadiusM, TurnDirection Turn, double LongitudinalG = 0)
{
    // Straighter than this, m, nothing changes any more.
    private const double StraightM = 1e6;

    private double? StatedSpeedKmh { get; init; }

    /// <summary>Speed, km/h.</summary>
    public double SpeedKmh => StatedSpeedKmh ?? (3.6 * Math.Sqrt(LateralG * HandlingCar.StandardGravity * RadiusM));

    /// <summary>True when the path is as good as straight.</summary>
    public bool IsStraight => RadiusM >= StraightM;

    /// <summary>A turn at a speed, km/h; without lateral acceleration it is straight.</summary>
    public static CorneringDemand AtSpeed(double lateralG, double speedKmh, TurnDirection turn) =>
        new(lateralG, lateralG > 0 ? Math.Min(StraightM, speedKmh * speedKmh / (12.96 * lateralG * HandlingCar.StandardGravity)) : StraightM, turn) { StatedSpeedKmh = speedKmh };
}

/// <summary>Which way the car turns.</summary>
public enum TurnDirection
{
    /// <summary>To the left; the right wheels are the outer ones.</summary>
    Left,

    /// <summary>To the right; the left wheels are the outer ones.</summary>
    Right,
}

/// <summary>What stays as it is while a turn is taken harder: its radius, or the speed, and how it is braked or driven.</summary>
public readonly record struct TurnPath
{
    private readonly double? _radiusM;
    private readonly double _speedKmh;

    private TurnPath(TurnDirection turn, double? radiusM, double speedKmh) => (Turn, _radiusM, _speedKmh) = (turn, radiusM, speedKmh);

    /// <summary>Which way.</summary>
    public TurnDirection Turn { get; }

    /// <summary>Longitudinal acceleration, g; negative = braking.</summary>
    public double LongitudinalG { get; private init; }

    /// <summary>The same path braked or driven otherwise.</summary>
    public TurnPath WithLongitudinal(double longitudinalG) => this with { LongitudinalG = longitudinalG };

    /// <summary>A turn of a radius, m.</summary>
    public static TurnPath AtRadius(TurnDirection turn, double radiusM) => new(turn, radiusM, 0);

    /// <summary>A turn at a speed, km/h, above 0.</summary>
    public static TurnPath AtSpeed(TurnDirection turn, double speedKmh) => new(turn, null, speedKmh);

    /// <summary>The turn at a lateral acceleration, g, not negative.</summary>
    public CorneringDemand At(double lateralG) =>
        (_radiusM is { } radiusM ? new(lateralG, radiusM, Turn) : CorneringDemand.AtSpeed(lateralG, _speedKmh, Turn)) with { LongitudinalG = LongitudinalG };

    /// <summary>Radius, m; null where the turn is as good as straight.</summary>
    public double? RadiusM(double lateralG) => At(lateralG) is { IsStraight: false } demand ? demand.RadiusM : null;

    /// <summary>Speed, km/h.</summary>
    public double SpeedKmh(double lateralG) => _radiusM is null ? _speedKmh : At(lateralG).SpeedKmh;
}
