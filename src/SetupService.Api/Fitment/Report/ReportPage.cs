using SetupService.Api.Drawings;
using SetupService.Api.Fitment.Check;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Pages;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Fitment.Report;

/// <summary>
/// The fit report: for the customer what came out, for the workshop every check with its reason, what is still to be measured and what to
/// do by hand. Written from the answer of the check, so that both say the same.
/// </summary>
internal static class ReportPage
{
    /// <summary>The page.</summary>
    /// <param name="done">The check.</param>
    /// <param name="label">What the caller calls the car; null where nothing.</param>
    /// <param name="units">Units of its texts.</param>
    public static string Write(CheckedFitting done, string? label, UnitSystem units)
    {
        var answer = done.ToAnswer(units, CheckDetail.Full);
        var headline = DrawingWords.Headline(answer.Verdict, done.Car.Position);
        using HtmlWriter page = new();
        page.Open("html", ("lang", "en"));
        Head(page, ReportStyle.Page, label is null ? $"Fit report: {headline}" : $"Fit report, {label}: {headline}");
        page.Open("body", ("class", Palette.RootClass));
        page.Open("main");
        page.Open("div", ("class", "beside"));
        page.Open("div");
        page.Element("h1", "Fit report");
        page.Element("p", $"{label ?? "Car not named"}, {(done.Car.Position == CarAxle.Front ? "front axle" : "rear axle")}", ("class", "soft"));
        page.Element("p", headline, ("class", $"verdict {EnumNames<CheckStatus>.GetName(answer.Verdict)}"));
        page.Element("p", answer.Summary, ("class", "summary"));
        Fittings(page, done, units);
        Missing(page, answer.Unknown!);
        Cautions(page, answer.Cautions!);
        Signatures(page);
        page.Close();
        if (done.Candidate.Tyre.Marking.HasDimensions)
        {
            page.Open("figure");
            page.Markup(CornerDrawing.Draw(done.Car, done.Candidate, done.Sheet, units));
            page.Close();
        }

        page.Close();
        page.Open("div", ("class", "workshop"));
        Checks(page, answer.Checks!);
        if (answer.Comparison is { } comparison) ReportChanges.Write(page, comparison, units);
        Assumptions(page, answer.Assumptions!, units);
        page.Element(
            "footer",
            $"Calculated from what was stated: no approval and no inspection. How each check is made: docs/methods/{answer.Method}, edition {answer.Edition}.");
        page.Close();
        page.Close();
        page.Close();
        page.Close();
        return page.Finish();
    }

    /// <summary>A table with a heading over it.</summary>
    internal static void Table(HtmlWriter page, string heading, string kind, IReadOnlyList<string> columns, Action rows)
    {
        page.Element("h2", heading);
        page.Open("table", ("class", kind));
        page.Open("thead");
        page.Open("tr");
        foreach (var column in columns) page.Element("th", column, ("scope", "col"));
        page.Close();
        page.Close();
        page.Open("tbody");
        rows();
        page.Close();
        page.Close();
    }

    /// <summary>The head of a page that holds everything it shows.</summary>
    internal static void Head(HtmlWriter page, PageStyle style, string title)
    {
        page.Open("head");
        page.Void("meta", ("charset", "utf-8"));

        // Goes with the page where it is kept as a file and no header comes with it.
        page.Void("meta", ("http-equiv", "Content-Security-Policy"), ("content", style.Policy));
        page.Void("meta", ("name", "viewport"), ("content", "width=device-width, initial-scale=1"));
        page.Element("title", title);
        page.Open("style");
        page.Markup(style.Sheet);
        page.Close();
        page.Close();
    }

    private static void Fittings(HtmlWriter page, CheckedFitting done, UnitSystem units)
    {
        var (wheel, tyre) = (done.Candidate.Wheel, done.Candidate.Tyre);
        var (oldWheel, oldTyre) = (done.Car.Axle.Wheel, done.Car.Axle.Tyre);
        Table(page, "Wheel and tyre", "fittings", ["", "New", "Now"], () =>
        {
            Row("Wheel", DrawingWords.Wheel(wheel, units), oldWheel is null ? null : DrawingWords.Wheel(oldWheel, units));
            Row("Tyre", tyre.Marking.Text, oldTyre?.Marking.Text);
            Row("Bolt circle", wheel.BoltCircle?.ToString(), oldWheel?.BoltCircle?.ToString());
            Row("Cold pressure", Pressure(tyre), oldTyre is null ? null : Pressure(oldTyre));
        });

        void Row(string name, string? then, string? now)
        {
            page.Open("tr");
            page.Element("th", name, ("scope", "row"));
            page.Element("td", then ?? "not given");
            page.Element("td", now ?? "not given");
            page.Close();
        }

        string? Pressure(Tyre of) => of.PressureKpa is { } kpa ? Prose.Write(units, $"{kpa:kPa}") : null;
    }

    /// <summary>Every check, as a table.</summary>
    internal static void Checks(HtmlWriter page, CheckItem[] checks) =>
        Table(page, "What was checked", "checks", ["Check", "Result", "Value", "Limit", "Why"], () =>
        {
            foreach (var check in checks)
            {
                page.Open("tr");
                page.Element("th", check.Title, ("scope", "row"));
                page.Element("td", Result(check.Status), ("class", $"result {EnumNames<CheckStatus>.GetName(check.Status)}"));
                page.Element("td", check.ValueText ?? "", ("class", "size"));
                page.Element("td", check.LimitText ?? "", ("class", "size"));
                page.Element("td", check.Explanation);
                page.Close();
            }
        });

    private static string Result(CheckStatus status) => status switch
    {
        CheckStatus.Pass => "in order",
        CheckStatus.Caution => "look first",
        CheckStatus.Fail => "fails",
        _ => "not known",
    };

    private static void Missing(HtmlWriter page, UnknownCheck[] unknown)
    {
        if (unknown.Length == 0) return;
        page.Element("h2", "Still to be measured or given");
        page.Open("ul", ("class", "tick"));
        foreach (var one in unknown) page.Element("li", $"{CheckWords.Title(one.Id)}: {one.Reason}");
        page.Close();
    }

    private static void Cautions(HtmlWriter page, CautionResponse[] cautions)
    {
        page.Element("h2", "Before driving");
        page.Open("ul", ("class", "tick"));
        foreach (var caution in cautions) page.Element("li", caution.Text);
        page.Close();
    }

    /// <summary>What was taken although nobody gave it, as a list.</summary>
    internal static void Assumptions(HtmlWriter page, AssumptionResponse[] assumptions, UnitSystem units)
    {
        if (assumptions.Length == 0) return;
        page.Element("h2", "Taken although nobody gave it");
        page.Open("ul");
        foreach (var one in assumptions) page.Element("li", $"{Taken(one, units)}{one.Reason} ({one.Source})");
        page.Close();
    }

    /// <summary>What was taken, as a sentence before the reason: the text, or the name of the input as words and its value; nothing where the reason says all.</summary>
    private static string Taken(AssumptionResponse one, UnitSystem units)
    {
        if (one is not { Value: { } value }) return $"{Capital(one.Text ?? "")}. ";
        var member = one.Input[(one.Input.LastIndexOf('/') + 1)..];
        var amount = UnitOfName.Read(member) switch
        {
            "mm" => Prose.Write(units, $"{value:gap}"),
            "kg" => Prose.Write(units, $"{value:kg}"),
            "kPa" => Prose.Write(units, $"{value:kPa}"),
            "km/h" => Prose.Write(units, $"{value:kmh}"),
            "deg" => Prose.Write(units, $"{value:angle}"),
            _ => null,
        };
        return amount is null ? "" : $"{Capital(Words(member))} {amount}. ";
    }

    /// <summary>A member's name as words, without the unit at its end: minimumMarginMm is "minimum margin".</summary>
    private static string Words(string member)
    {
        var suffix = UnitOfName.All.Keys.Where(one => member.Length > one.Length && member.EndsWith(one, StringComparison.Ordinal)).MaxBy(static one => one.Length) ?? "";
        return string.Concat(member[..^suffix.Length].Select(static letter => char.IsUpper(letter) ? $" {char.ToLowerInvariant(letter)}" : letter.ToString()));
    }

    private static void Signatures(HtmlWriter page)
    {
        page.Open("div", ("class", "sign"));
        foreach (var line in (ReadOnlySpan<string>)["Car, registration", "Checked on the car by", "Date"]) page.Element("div", line);
        page.Close();
    }

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
