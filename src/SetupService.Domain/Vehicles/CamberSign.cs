using SetupService.Domain.Answers;

namespace SetupService.Domain.Vehicles;

/// <summary>Cambers whose sign is doubtful: hardly any car's wheels lean out at the top, and people leave the minus out.</summary>
public static class CamberSign
{
    /// <summary>From so much positive camber on, degrees, the sign is asked about before anything is advised by it; judgement.</summary>
    public const double DoubtfulDeg = 0.75;

    /// <summary>True where the sign is doubtful; false where nothing was read.</summary>
    public static bool IsDoubtful(double? camberDeg) => camberDeg >= DoubtfulDeg;

    /// <summary>What to look at first, of an axle whose sign is doubtful; null where neither wheel's is.</summary>
    /// <param name="axle">"front" or "rear".</param>
    /// <param name="leftDeg">The left wheel's camber, degrees.</param>
    /// <param name="rightDeg">The right wheel's.</param>
    public static Caution? Doubt(string axle, double? leftDeg, double? rightDeg)
    {
        if (!IsDoubtful(leftDeg) && !IsDoubtful(rightDeg)) return null;
        var (given, wheels) = (IsDoubtful(leftDeg), IsDoubtful(rightDeg)) switch
        {
            (true, true) when leftDeg == rightDeg => (Told(leftDeg), $"the {axle} wheels"),
            (true, true) => ($"{Told(leftDeg)} left and {Told(rightDeg)} right", $"the {axle} wheels"),
            (true, _) => (Told(leftDeg), $"the {axle} left wheel"),
            _ => (Told(rightDeg), $"the {axle} right wheel"),
        };
        return new("camberSign", $"The camber of {wheels} is given as {given}: leaning out at the top, as hardly any car's wheels do. Look which way they lean; where they lean in at the top, camber is negative. Set nothing by this answer before that is known.");
    }

    private static string Told(double? camberDeg) => Prose.Write(UnitSystem.Metric, $"+{camberDeg ?? 0:angle}");
}
