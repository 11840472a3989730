using SetupService.Api.Drawings.Charts;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>Draws a camber target: grip in the bends and braking over static camber, and under them what is set, what each answer wants and how far it can be set.</summary>
internal static class CamberChart
{
    private const string Change = "change against now";

    // A camber counts as the one of a row within this, degrees.
    private const double AlikeDeg = 1e-6;

    /// <summary>The picture.</summary>
    /// <param name="request">What was asked.</param>
    /// <param name="answer">What was found.</param>
    /// <param name="setRange">The camber set now with the gauge's error; null where nobody measured it.</param>
    /// <param name="reach">How far camber can be set; null where nobody said.</param>
    /// <param name="widthPx">The width it will be shown at.</param>
    public static string Draw(CamberTargetRequest request, CamberTargetAnswer answer, Uncertainty? setRange, AngleReach? reach, double widthPx)
    {
        var end = CorneringWords.Name(request.Axle);
        return ChartDrawing.Draw(new Chart
        {
            Heading = $"Camber of the {end} wheels",
            Lines = request.Vehicle.Label is { Length: > 0 } label ? [label, Verdict(answer)] : [Verdict(answer)],
            Across = new ChartAxis("static camber", "°") { Low = "more negative" },
            Panels =
            [
                Panel("grip in these corners", static row => row.GripChangePct),
                Panel("braking on the straight", static row => row.BrakingChangePct),
            ],
            Spans = Spans(request, answer, setRange, reach),
            Notes =
            [
                $"Grip and braking are those of the {end} tyres. Beyond a few degrees of lean grip is judgement: nobody has published at which lean a road tyre grips best. What camber does to braking is judgement too, and may be nothing.",
                .. answer.Cautions.Select(static caution => caution.Text),
            ],
        }, widthPx);

        ChartPanel Panel(string name, Func<TradeOffResponse, UncertaintyResponse?> change)
        {
            List<ChartSeries> series = [new(Change, [.. answer.TradeOff.Select(row => Point(row, change(row)))]) { BandName = "90 % range" }];
            series.AddRange(Dots("set now", answer.Before.StaticCamberDeg));
            if (answer.Recommended is { StepDeg: not (null or 0), CamberDeg: { } advised }) series.AddRange(Dots("recommended", advised));
            return new(name, "%", series) { LeastSpan = 0.2 };

            IEnumerable<ChartSeries> Dots(string of, double deg) => answer.TradeOff.Where(row => Math.Abs(row.StaticCamberDeg - deg) < AlikeDeg).Take(1)
                .Select(row => new ChartSeries(of, [new ChartPoint(row.StaticCamberDeg, change(row)?.Value)]) { IsMain = false, IsJoined = false });
        }

        static ChartPoint Point(TradeOffResponse row, UncertaintyResponse? change) => new(row.StaticCamberDeg, change?.Value) { Lower = change?.Lower, Upper = change?.Upper };
    }

    private static string Verdict(CamberTargetAnswer answer) => answer.Recommended.Text[..(answer.Recommended.Text.IndexOf(". ", StringComparison.Ordinal) is var end and > 0 ? end + 1 : answer.Recommended.Text.Length)];

    private static List<ChartSpan> Spans(CamberTargetRequest request, CamberTargetAnswer answer, Uncertainty? setRange, AngleReach? reach)
    {
        var list = new List<ChartSpan>();
        if (setRange is { } now) list.Add(new($"set now: {Deg(now.Value)} (gauge error {Deg(now.Lower)} to {Deg(now.Upper)})", now.Lower, now.Upper) { Value = now.Value });
        else list.Add(new($"set now: not measured, taken as {Deg(answer.Before.StaticCamberDeg)}", answer.Before.StaticCamberDeg, answer.Before.StaticCamberDeg) { Value = answer.Before.StaticCamberDeg });
        Add(request.TargetInclinationDeg is { } target and not 0 ? $"outer tyre at {Deg(target)} to the road" : "outer tyre flat on the road", answer.StaticCamberDeg, Deg);
        Add("most grip, judgement", answer.BestGripCamberDeg, static deg => FormattableString.Invariant($"{deg:0.#}°").Replace('-', '−'));
        if (answer.Recommended is { StepDeg: not (null or 0), CamberDeg: { } advised }) list.Add(new($"recommended: {Deg(advised)}", advised, advised) { Value = advised });
        if (reach is { CanBeSet: true } range) list.Add(new($"can be set: {Deg(range.FromDeg)} to {Deg(range.ToDeg)}", range.FromDeg, range.ToDeg));
        return list;

        void Add(string what, UncertaintyResponse range, Func<double, string> write) =>
            list.Add(new($"{what}: {write(range.Value!.Value)} ({write(range.Lower!.Value)} to {write(range.Upper!.Value)})", range.Lower!.Value, range.Upper!.Value) { Value = range.Value });
    }

    private static string Deg(double deg) => Prose.Write(UnitSystem.Metric, $"{deg:angle}");
}
