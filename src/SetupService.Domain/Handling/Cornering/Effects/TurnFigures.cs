using System.Runtime.CompilerServices;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering.Effects;

/// <summary>The figures of a turn that inputs are followed in, or how far each moves.</summary>
[InlineArray(Count)]
public struct TurnFigures
{
    /// <summary>How many there are.</summary>
    public const int Count = 13;

    private double _first;

    /// <summary>Roll of the body, degrees; positive = out of the turn.</summary>
    public double RollDeg { readonly get => this[0]; set => this[0] = value; }

    /// <summary>Mean steer of the front wheels, degrees, positive = into the turn.</summary>
    public double SteerDeg { readonly get => this[1]; set => this[1] = value; }

    /// <summary>Share of the front axle's grip that is used.</summary>
    public double FrontGripUsed { readonly get => this[2]; set => this[2] = value; }

    /// <summary>Share of the rear axle's grip that is used.</summary>
    public double RearGripUsed { readonly get => this[3]; set => this[3] = value; }

    /// <summary>Lateral acceleration of the turn, g.</summary>
    public double LateralG { readonly get => this[12]; set => this[12] = value; }

    /// <summary>Load of a wheel, N.</summary>
    public readonly double LoadN(WheelPosition wheel) => this[4 + (int)wheel];

    /// <summary>Inclination of a wheel to the road, degrees.</summary>
    public readonly double InclinationAngleDeg(WheelPosition wheel) => this[InclinationIndex(wheel)];

    /// <summary>Where a wheel's inclination stands.</summary>
    internal static int InclinationIndex(WheelPosition wheel) => 8 + (int)wheel;

    /// <summary>Sets load and inclination of a wheel.</summary>
    public void Set(WheelPosition wheel, double loadN, double inclinationAngleDeg) => (this[4 + (int)wheel], this[8 + (int)wheel]) = (loadN, inclinationAngleDeg);
}
