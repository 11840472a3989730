using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Readings;

/// <summary>Shoulders of one tyre of which one is clearly hotter and the other clearly more worn: no camber or toe is changed by either before both are read again.</summary>
public static class HeatAgainstWear
{
    private const double HeatBeyondDoubtC = 10;
    private const double TiltBeyondDoubt = 0.35;

    /// <summary>What contradicts what, as sentences; null where nothing does, or either was not read.</summary>
    public static string? Find(TyreReading tyre, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(tyre);
        if (tyre.TemperatureC is not { } heat || TreadFigures.Compute(tyre) is not { } figures) return null;
        var (tiltC, tilt) = (heat.Outer - heat.Inner, figures.ShoulderDifference.Value);
        if (Math.Abs(tiltC) < HeatBeyondDoubtC || Math.Abs(tilt) < TiltBeyondDoubt + figures.ShoulderDifference.StandardError || tiltC > 0 == tilt > 0) return null;
        var (hotter, worn) = tiltC > 0 ? ("outer", "inner") : ("inner", "outer");
        return Prose.Write(units, $"The {hotter} shoulder is {Math.Abs(tiltC):cDiff} hotter, but the {worn} one is worn more. Heat shows the last laps, wear the tyre's whole life: its setting or position changed since, or one was read from the wrong side.");
    }
}
