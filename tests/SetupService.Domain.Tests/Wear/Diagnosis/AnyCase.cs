using CsCheck;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>Cases of any kind, sound or strange.</summary>
internal static class AnyCase
{
    private static readonly Gen<AcrossTread<double>> Depths = Gen.Select(Gen.Double[0, 9], Gen.Double[0, 9], Gen.Double[0, 9], (outer, centre, inner) => new AcrossTread<double>(outer, centre, inner));

    private static readonly Gen<TreadPattern[]> Patterns = Gen.Enum<TreadPattern>().Array[0, 4];

    public static Gen<WearCase> Cases { get; } = Gen.Select(
        Gen.Double[0, 40_000], Gen.Int[0, 400], Tyre(WheelPosition.FrontLeft), Tyre(WheelPosition.FrontRight), Tyre(WheelPosition.RearLeft), Tyre(WheelPosition.RearRight), Gen.Int[0, 15],
        (roadKm, laps, one, two, three, four, which) => new WearCase
        {
            Use = new WearUse(roadKm, laps, 3),
            Tyres = [.. new[] { one, two, three, four }.Where((_, i) => (which & (1 << i)) != 0)],
        });

    public static Gen<TyreReading> Tyre(WheelPosition position) => Gen.Select(
        Depths, Gen.Double[7, 9], Gen.Bool, Gen.Double[0.02, 0.6], Patterns, Gen.Int[0, 15], Depths.Array[0, 6], Gen.Double[-10, 140],
        (depths, newMm, knowsNew, gaugeMm, patterns, has, around, heatC) => new TyreReading
        {
            Position = position,
            Zones = (has & 1) != 0 ? TreadZone.FromDepths(depths) : [],
            AroundMm = (has & 3) == 3 ? around : [],
            NewDepthMm = knowsNew ? newMm : null,
            GaugeErrorMm = gaugeMm,
            Patterns = (has & 4) != 0 ? patterns : null,
            TemperatureC = (has & 8) != 0 ? new(heatC, heatC - 4, heatC + (2 * depths.Outer)) : null,
            Pressure = (has & 8) != 0 ? new TyrePressures(180 + (10 * depths.Centre), null, 220, null) : default,
        });
}
