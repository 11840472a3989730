namespace SetupService.Domain.Suspension;

/// <summary>The travels at which a path is computed.</summary>
internal static class PathTravels
{
    /// <summary>
    /// From one end to the other in steps of at most <see cref="WheelPath.LongestStepMm"/>, both ends and, where it lies between them, the
    /// stated position among them exactly.
    /// </summary>
    public static List<double> Between(double fromMm, double toMm)
    {
        var travelsMm = new List<double> { fromMm };
        if (fromMm * toMm < 0) AddSteps(travelsMm, fromMm, 0);
        AddSteps(travelsMm, travelsMm[^1], toMm);
        return travelsMm;
    }

    private static void AddSteps(List<double> travelsMm, double fromMm, double toMm)
    {
        var stepCount = Math.Ceiling(Math.Abs(toMm - fromMm) / WheelPath.LongestStepMm);
        for (var step = 1; step <= stepCount; step++) travelsMm.Add(step == stepCount ? toMm : fromMm + ((toMm - fromMm) * step / stepCount));
    }
}
