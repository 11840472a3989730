namespace SetupService.Domain.Suspension;

/// <summary>The travels a path is looked at.</summary>
internal static class PathTravels
{
    /// <summary>
    /// From one end to the other in steps of at most <see cref="WheelPath.LongestStepMm"/>, both ends and, where it lies between them, the
    /// stated position among them exactly.
    /// </summary>
    public static IEnumerable<double> Between(double fromMm, double toMm)
    {
        if (fromMm * toMm < 0) return [.. Steps(fromMm, 0), .. Steps(0, toMm).Skip(1)];
        return Steps(fromMm, toMm);
    }

    private static IEnumerable<double> Steps(double fromMm, double toMm)
    {
        yield return fromMm;
        var stepCount = Math.Ceiling(Math.Abs(toMm - fromMm) / WheelPath.LongestStepMm);
        for (var step = 1; step <= stepCount; step++) yield return step == stepCount ? toMm : fromMm + ((toMm - fromMm) * step / stepCount);
    }
}
