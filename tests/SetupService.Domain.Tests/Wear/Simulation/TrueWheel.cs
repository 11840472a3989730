using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>How one wheel truly stands and what befell its tyre.</summary>
internal sealed record TrueWheel
{
    public required WheelPosition Position { get; init; }

    /// <summary>Camber, degrees, negative = top inboard.</summary>
    public double CamberDeg { get; init; } = -1;

    /// <summary>Toe of the wheel, degrees, positive = toe-in.</summary>
    public double ToeDeg { get; init; } = 0.03;

    /// <summary>Pressure over what load and use want, as a share of it.</summary>
    public double PressureOffShare { get; init; }

    /// <summary>Wear of this tyre against its kind's.</summary>
    public double RateFactor { get; init; } = 1;

    /// <summary>Depth of the hollows a hopping wheel wore, mm; 0 = none.</summary>
    public double HollowMm { get; init; }

    /// <summary>Half the difference of wear round a tyre out of balance, mm.</summary>
    public double RunOutMm { get; init; } = 0.03;

    /// <summary>Rubber a locked wheel left in one place, mm.</summary>
    public double FlatMm { get; init; }

    /// <summary>How the spinning of the axle falls to this wheel; 1 = evenly.</summary>
    public double SpinShare { get; init; } = 1;

    /// <summary>Another place the tyre served at before; null = none.</summary>
    public EarlierPlace? Earlier { get; init; }

    /// <summary>Week of making since the year 2000.</summary>
    public int MadeInWeek { get; init; } = 1200;

    public bool IsLeft => Position is WheelPosition.FrontLeft or WheelPosition.RearLeft;
}
