using SetupService.Api.Http.Contract;
using SetupService.Domain.Geometry.Alignment;

namespace SetupService.Api.Geometry.Alignment;

/// <summary>One toe in the three units the trade has for it; positive = toe-in.</summary>
public sealed record ToePart
{
    /// <summary>In degrees.</summary>
    [Sample(0.08)]
    public required double ToeDeg { get; init; }

    /// <summary>In minutes of arc.</summary>
    [Sample(4.8)]
    public required double ToeArcmin { get; init; }

    /// <summary>How much nearer to the car's centre plane the front of the wheel is than its rear, over measuringDiameterMm; of an axle, both wheels together.</summary>
    [Sample(0.63)]
    public required double ToeMm { get; init; }

    /// <summary>The part of a toe; null where it is not known.</summary>
    internal static ToePart? Of(ToeFigures? toe) => toe is { } known
        ? new() { ToeDeg = known.Deg, ToeArcmin = known.Minutes, ToeMm = known.Mm }
        : null;
}
