using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>Which tyres of an axle show a cause.</summary>
internal static class CauseScope
{
    // A mark as likely as this by a cause alone belongs to it.
    private const double Belongs = 0.25;
    private const double PressureShare = 0.07;

    /// <summary>The tyres; all of the axle that were read where none shows it alone, and both where none was read.</summary>
    public static IReadOnlyList<WheelPosition> FindTyres(WornHere worn, CarAxle at, WearCause cause)
    {
        WheelPosition[] axle = at == CarAxle.Front ? [WheelPosition.FrontLeft, WheelPosition.FrontRight] : [WheelPosition.RearLeft, WheelPosition.RearRight];
        var (read, showing) = (new List<WheelPosition>(2), new List<WheelPosition>(2));
        foreach (var position in axle)
        {
            if (worn.TyreOf(position, cause) is not { } tyre) continue;
            read.Add(tyre.Position);
            if (Shows(tyre, cause)) showing.Add(tyre.Position);
        }

        return showing.Count > 0 ? showing : read.Count > 0 ? read : axle;
    }

    private static bool Shows(TyreReading tyre, WearCause cause)
    {
        if (tyre.Pressure.OffShare is { } off)
        {
            if (cause == WearCause.UnderInflation) return off <= -PressureShare;
            if (cause == WearCause.OverInflation) return off >= PressureShare;
        }

        if (tyre.Patterns is not { } patterns) return false;
        foreach (var chance in WearTable.Marks)
        {
            if (chance.Cause != cause || chance.Probability < Belongs || chance.Mark > WearMark.DiagonalScallop) continue;
            foreach (var pattern in patterns)
            {
                if ((WearMark)pattern == chance.Mark) return true;
            }
        }

        return false;
    }
}
