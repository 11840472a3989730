using SetupService.Api.Http.Contract;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>What the readings of one tyre say.</summary>
public sealed record TyreHeatPart
{
    /// <summary>Which wheel it is on.</summary>
    [Sample("frontLeft")]
    public required WheelPosition Position { get; init; }

    /// <summary>The tread; null where its temperatures are not given.</summary>
    public required TreadHeatPart? Tread { get; init; }

    /// <summary>The pressures; null where none is given.</summary>
    public required TyrePressurePart? Pressure { get; init; }
}
