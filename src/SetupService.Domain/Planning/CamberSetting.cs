using SetupService.Domain.Answers;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Planning;

/// <summary>The static camber a package is set to at one axle, as a gauge reads it with the car standing.</summary>
/// <param name="Axle">Which axle.</param>
/// <param name="GivenDeg">That of the car as given, mean of both wheels, degrees.</param>
/// <param name="ToDeg">What the package is judged with, degrees, both wheels alike.</param>
/// <param name="FlatDeg">The camber that keeps the outer tread flat over the bends, degrees.</param>
/// <param name="IsShort">True where the adjuster, the rule book or the road ends it before that.</param>
/// <param name="GainDeg">How much more camber the wheel has standing than at the ride height at which the vehicle states its angles, degrees.</param>
public readonly record struct CamberSetting(CarAxle Axle, double GivenDeg, double ToDeg, double FlatDeg, bool IsShort, double GainDeg)
{
    // Told in tenths; half of a thousandth takes up rounding.
    private const double ToldDeg = 0.1;
    private const double Slack = 5e-4;
    private const double GaugeDeg = 0.02;

    // Less than this nobody pays an alignment for; judgement.
    private const double LeastDeg = 0.25;

    /// <summary>How far it is changed in all, degrees.</summary>
    public double ChangeDeg => ToDeg - GivenDeg;

    /// <summary>How far each wheel of the car as given is from the mean of both, degrees, left first.</summary>
    public (double Left, double Right) GivenOffDeg { get; init; }

    /// <summary>How far each wheel is changed to come to a camber, degrees; one figure for both where a gauge shows them alike.</summary>
    /// <param name="toDeg">The camber, both wheels alike.</param>
    public (double Left, double? Right) ChangesTo(double toDeg)
    {
        var mean = toDeg - GivenDeg;
        return Math.Abs(GivenOffDeg.Left - GivenOffDeg.Right) < ToldDeg - GaugeDeg ? (mean, null) : (mean - GivenOffDeg.Left, mean - GivenOffDeg.Right);
    }

    /// <summary>The same in words, of each side where they differ.</summary>
    public string DescribeChange(double toDeg, UnitSystem units)
    {
        var (left, right) = ChangesTo(toDeg);
        if (right is not { } other) return IsNone(left) ? "as now" : $"{Amount(left)} {Way(left)}";
        if (IsNone(left) || IsNone(other) || Math.Sign(left) != Math.Sign(other)) return $"left {Alone(left)}, right {Alone(other)}";
        return $"left {Amount(left)}, right {Amount(other)} {Way(left)}";

        string Alone(double deg) => IsNone(deg) ? "as now" : $"{Amount(deg)} {Way(deg)}";

        string Amount(double deg) => Prose.Write(units, $"{Math.Abs(deg):angle}");

        static string Way(double deg) => deg < 0 ? "more negative than now" : "less negative than now";

        static bool IsNone(double deg) => Math.Abs(deg) < ToldDeg / 2;
    }

    /// <summary>How far the adjuster reaches, degrees with the car standing; null = further than any step.</summary>
    public (double FromDeg, double ToDeg)? Reach { get; init; }

    /// <summary>What to set first, degrees: no more than a step one would dare at once, unless parts that set camber begin further off.</summary>
    public double FirstDeg
    {
        get
        {
            if (Math.Abs(ChangeDeg) <= CamberAdvice.LargestStepDeg + Slack) return ToDeg;
            var first = Told(GivenDeg + (Math.Sign(ChangeDeg) * CamberAdvice.LargestStepDeg), GivenDeg);
            return Reach is { } reach ? Math.Clamp(first, reach.FromDeg, reach.ToDeg) : first;
        }
    }

    /// <summary>The same as the vehicle states it, at its stated ride height, degrees.</summary>
    public double StatedDeg => ToDeg - GainDeg;

    /// <summary>
    /// The setting nearest to flat that can be set; null where it stays as it is: nobody said that it can be set or what is set now, it is within half a degree of flat, or a quarter of a degree of the setting.
    /// </summary>
    /// <param name="axle">Which axle.</param>
    /// <param name="stated">The axle with the package's parts.</param>
    /// <param name="gainDeg">How much more camber it has standing than stated, degrees.</param>
    /// <param name="flatDeg">The camber standing that keeps the outer tread flat, degrees.</param>
    /// <param name="mostDeg">The most negative camber allowed, degrees.</param>
    /// <param name="givenDeg">The camber of the car as given, degrees.</param>
    public static CamberSetting? Choose(CarAxle axle, Axle stated, double gainDeg, double flatDeg, double mostDeg, double givenDeg)
    {
        ArgumentNullException.ThrowIfNull(stated);
        if (stated.Adjustable.Camber is not { CanBeSet: true } reach || stated.Left.CamberDeg is not { } left || stated.Right.CamberDeg is not { } right) return null;
        var (now, from, to) = (((left + right) / 2) + gainDeg, reach.FromDeg + gainDeg, reach.ToDeg + gainDeg);
        var isWithin = now >= from - Slack && now <= to + Slack;
        var mayStay = isWithin && now >= mostDeg - Slack;
        if (mayStay && Math.Abs(flatDeg - now) <= CamberAdvice.MattersDeg) return null;

        // A road car is not set to positive camber. Parts that set camber set it somewhere in their own range, whatever was set before.
        var aim = Math.Clamp(Math.Max(Math.Min(flatDeg, Math.Max(now, 0)), mostDeg), from, to);
        var set = isWithin ? Told(aim, now) : aim;
        return Math.Abs(set - now) < (mayStay ? LeastDeg : ToldDeg / 2) ? null : new(axle, givenDeg, set, flatDeg, Math.Abs(flatDeg - set) > CamberAdvice.MattersDeg, gainDeg) { Reach = (from, to) };
    }

    // In tenths as a gauge shows them, no further from what is set than wanted but for what no gauge shows.
    private static double Told(double deg, double nowDeg) => Math.Round(ToldDeg * (deg < nowDeg ? Math.Ceiling((deg - GaugeDeg) / ToldDeg) : Math.Floor((deg + GaugeDeg) / ToldDeg)), 6);

    /// <summary>What a change that sets these cambers names.</summary>
    public static CarChange Change(IReadOnlyList<CamberSetting> settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        var named = new HashSet<string>(StringComparer.Ordinal);
        foreach (var one in settings)
        {
            var place = CarChange.PlaceOf(one.Axle);
            foreach (var member in (ReadOnlySpan<string>)["", "/alignment", "/alignment/camberDeg"]) named.Add(place + member);
        }

        return new() { States = named.Contains };
    }
}
