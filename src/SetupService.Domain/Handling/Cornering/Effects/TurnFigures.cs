using System.Runtime.CompilerServices;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering.Effects;

/// <summary>The figures of a turn that inputs are followed in, or how far each moves.</summary>
[InlineArray(Count)]
public struct TurnFigures
{
    /// <summary>How many there are.</summary>
    public const int Count = 11;

    private double _first;

    /// <summary>Roll of the body, degrees; positive = out of the turn.</summary>
    public double RollDeg { readonly get => this[0]; set => this[0] = value; }

    /// <summary>Mean steer of the front wheels, degrees, positive = into the turn.</summary>
    public double SteerDeg { readonly get => this[1]; set => this[1] = value; }

    /// <summary>Lateral acceleration of the turn, g.</summary>
    public double LateralG { readonly get => this[10]; set => this[10] = value; }

    /// <summary>Load of a wheel, N.</summary>
    public readonly double LoadN(WheelPosition wheel) => this[2 + (int)wheel];

    /// <summary>Inclination of a wheel to the road, degrees.</summary>
    public readonly double InclinationAngleDeg(WheelPosition wheel) => this[InclinationIndex(wheel)];

    /// <summary>Where a wheel's inclination stands.</summary>
    internal static int InclinationIndex(WheelPosition wheel) => 6 + (int)wheel;

    /// <summary>Sets load and inclination of a wheel.</summary>
    public void Set(WheelPosition wheel, double loadN, double inclinationAngleDeg) => (this[2 + (int)wheel], this[InclinationIndex(wheel)]) = (loadN, inclinationAngleDeg);
}
