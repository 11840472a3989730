using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Pressures;

/// <summary>One setting for both tyres of an axle where what each asks for differs by no more than the gauge errs.</summary>
public static class AxlePressures
{
    /// <summary>The same tyres, those of an axle set alike where they cannot be told apart.</summary>
    /// <param name="tyres">The tyres with their pressures; null where none was read.</param>
    /// <param name="conditions">What they were read in.</param>
    public static TyrePressure?[] Level(IReadOnlyList<(WheelPosition Position, TyrePressure? Pressure)> tyres, in PressureConditions conditions)
    {
        ArgumentNullException.ThrowIfNull(tyres);
        TyrePressure?[] level = [.. tyres.Select(tyre => tyre.Pressure)];
        foreach (var axle in (ReadOnlySpan<CarAxle>)[CarAxle.Front, CarAxle.Rear])
        {
            int[] at = [.. Enumerable.Range(0, tyres.Count).Where(i => tyres[i].Pressure is not null && WheelPositions.AxleOf(tyres[i].Position) == axle)];
            if (at is not [var one, var other] || (level[one], level[other]) is not ({ } left, { } right) || left.Reading.AimHotKpa != right.Reading.AimHotKpa) continue;
            var (nowKpa, nextKpa) = (Common(left.ColdNow, right.ColdNow), Common(left.ColdNext, right.ColdNext));
            if (nowKpa is null && nextKpa is null) continue;
            level[one] = TyrePressureBuilder.SetTo(left, conditions, nowKpa, nextKpa);
            level[other] = TyrePressureBuilder.SetTo(right, conditions, nowKpa, nextKpa);
        }

        return level;
    }

    /// <summary>The mean of two settings that differ by no more than their joint error; null where they differ by more, or the load holds one up.</summary>
    private static double? Common(in ColdSetting? one, in ColdSetting? other)
    {
        if ((one, other) is not ({ SetKpa: { } a, NeededKpa: { } forA, IsHeldByLoad: false }, { SetKpa: { } b, NeededKpa: { } forB, IsHeldByLoad: false })) return null;
        var (halfA, halfB) = ((forA.Upper - forA.Lower) / 2, (forB.Upper - forB.Lower) / 2);
        var mean = (a + b) / 2;
        return (a - b) * (a - b) <= (halfA * halfA) + (halfB * halfB) ? mean : null;
    }
}
