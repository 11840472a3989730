namespace SetupService.Domain.Suspension.Steering;

/// <summary>How far readings on turn plates reach.</summary>
/// <param name="DifferentCount">Steer angles that count as different.</param>
/// <param name="SpreadDeg">From the rightmost to the leftmost, degrees.</param>
public readonly record struct SteerSpread(int DifferentCount, double SpreadDeg)
{
    /// <summary>Of readings in any order.</summary>
    public static SteerSpread Compute(ReadOnlySpan<SteerReading> readings)
    {
        var steerDeg = new double[readings.Length];
        for (var i = 0; i < readings.Length; i++) steerDeg[i] = readings[i].SteerDeg;
        Array.Sort(steerDeg);

        var different = 0;
        var lastDeg = double.NegativeInfinity;
        foreach (var angleDeg in steerDeg)
        {
            if (angleDeg - lastDeg < CasterReadings.SameSteerDeg) continue;
            different++;
            lastDeg = angleDeg;
        }

        return new(different, steerDeg.Length == 0 ? 0 : steerDeg[^1] - steerDeg[0]);
    }
}
