using SetupService.Api.Drawings;
using SetupService.Api.Fitment.Report;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Pages;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Planning;
using SetupService.Domain.Planning.Sheets;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Plans.Sheets;

/// <summary>The sheets as a page to print and hang on the car. Written from the answer, so that both say the same.</summary>
internal static partial class SheetPage
{
    /// <summary>The page.</summary>
    public static string Write(SheetedPlan sheet)
    {
        var (answer, units) = (SheetsAnswers.Create(sheet), sheet.Units);
        var label = sheet.Request.Vehicle.Label ?? "Car not named";
        using HtmlWriter page = new();
        page.Open("html", ("lang", "en"));
        ReportPage.Head(page, SheetStyle.Page, $"Workshop sheets, {label}");
        page.Open("body", ("class", Palette.RootClass));
        page.Open("main");
        Section("Job sheet", () =>
        {
            Boxes(page, "Customer", "Registration", "Odometer", "Technician", "Date");
            page.Element("p", answer.Summary, ("class", "job"));
            Cautions(page, answer, isForWork: true);
            if (sheet.Work.Parts.Count > 0) Parts(page, sheet);
            Work(page, answer);
            Cautions(page, answer, isForWork: false);
        });
        Section("Alignment and pressures", () =>
        {
            Alignment(page, answer.Alignment, units);
            Pressures(page, answer.Pressures, units);
        });
        Section("Tyres and test", () =>
        {
            Tyres(page, answer.Tyres, units);
            page.Element("p", answer.FitText, ("class", "note"));
            Test(page, answer.Test);
        });
        foreach (var (axle, check) in sheet.Fits())
        {
            Section($"Fit, {CorneringWords.Name(axle.Axle)} axle", () =>
            {
                var found = answer.Fit.Single(one => one.Axle == axle.Axle).Check;
                page.Open("div", ("class", "beside"));
                page.Open("div");
                page.Element("p", DrawingWords.Headline(found.Verdict, axle.Axle), ("class", $"verdict {EnumNames<CheckStatus>.GetName(found.Verdict)}"));
                page.Element("p", found.Summary, ("class", "summary"));
                if (found.Comparison is { } comparison) ReportChanges.Write(page, comparison, units);
                page.Close();
                if (check.Candidate.Tyre.Marking.HasDimensions)
                {
                    page.Open("figure");
                    page.Markup(CornerDrawing.Draw(check.Car, check.Candidate, check.Sheet, units, $"drawing-{CorneringWords.Name(axle.Axle)}"));
                    page.Close();
                }

                page.Close();
                page.Open("div", ("class", "small"));
                ReportPage.Checks(page, found.Checks!);
                page.Close();
            });
        }

        Section("Rests on", () =>
        {
            page.Open("div", ("class", "small"));
            Blank(page, answer.Unknown);
            ReportPage.Assumptions(page, [.. SheetsAnswers.Own(sheet)], units);
            page.Element("p", "What the model of the car takes beside that stands in the assumptions of the sheets as JSON, and of the plan.");
            page.Element("footer", $"Calculated from what was stated: no approval and no inspection. How: docs/methods/{answer.Method}, edition {answer.Edition}.");
            page.Close();
        });
        page.Close();
        page.Close();
        page.Close();
        return page.Finish();

        void Section(string title, Action content)
        {
            page.Open("section", ("class", "sheet"));
            page.Open("h1");
            page.Text(title);
            page.Element("span", label);
            page.Close();
            content();
            page.Close();
        }
    }

    private static void Boxes(HtmlWriter page, params ReadOnlySpan<string> names)
    {
        page.Open("div", ("class", "who"));
        foreach (var name in names) page.Element("div", name);
        page.Close();
    }

    // What can hurt while the car is worked on stands before the work; the rest after it, before driving.
    private static void Cautions(HtmlWriter page, PlanSheetsAnswer answer, bool isForWork)
    {
        HashSet<string> ofWork = [.. answer.WorkOrder.Steps.Where(step => step.Stage is not (WorkStage.SetUp or WorkStage.Check)).SelectMany(step => step.CautionCodes), .. TreadsFirst.StopCodes, "makersTorque", "selfLockingNuts"];
        string[] texts = [.. answer.Cautions.Where(one => ofWork.Contains(one.Code) == isForWork).Select(one => one.Text)];
        if (texts.Length == 0) return;
        page.Open("div", ("class", isForWork ? "danger" : "danger later"));
        page.Element("h2", isForWork ? "Read first" : "Before driving");
        List(page, texts);
        page.Close();
    }

    private static void Parts(HtmlWriter page, SheetedPlan sheet) => ReportPage.Table(page, "Parts", "parts", ["Here", "Part", "What", "Where"], () =>
    {
        foreach (var part in sheet.Work.Parts)
        {
            page.Open("tr");
            Tick(page);
            page.Element("th", part.Part.Id, ("scope", "row"));
            page.Element("td", Words(EnumNames<PartKind>.GetName(part.Part.Kind)!) + (part.IsRenewal ? ", renewed" : ""));
            page.Element("td", part.Axles switch { [CarAxle.Front] => "front", [CarAxle.Rear] => "rear", [_, _] => "front and rear", _ => "not told" });
            page.Close();
        }
    });

    private static void Work(HtmlWriter page, PlanSheetsAnswer answer)
    {
        if (answer.WorkOrder.Steps.Length == 0) return;
        ReportPage.Table(page, "Work order", "steps", ["", "", "Step", "Torque"], () =>
        {
            WorkStage? stage = null;
            var number = 0;
            foreach (var step in answer.WorkOrder.Steps)
            {
                if (step.Stage != stage)
                {
                    stage = step.Stage;
                    page.Open("tr", ("class", "stage"));
                    page.Element("th", Stage(step.Stage), ("colspan", "4"), ("scope", "colgroup"));
                    page.Close();
                }

                page.Open("tr");
                page.Element("td", FormattableString.Invariant($"{++number}"));
                Tick(page);
                page.Open("td");
                if (step.CautionCodes.Contains("springsUnderLoad")) page.Element("span", "Spring under load. ", ("class", "care"));
                page.Text(step.Axle is { } axle ? $"{(axle == CarAxle.Front ? "Front" : "Rear")}: {step.Text}" : step.Text);
                page.Close();
                page.Open("td");
                foreach (var torque in step.Torques)
                {
                    page.Open("div");
                    page.Text($"{Capital(SheetWords.Name(torque.Fastener))}{(torque.Axle is { } at && step.Axle is null ? $", {CorneringWords.Name(at)}" : "")}: ");
                    page.Element("span", torque.Text, ("class", "nm"));
                    page.Close();
                }

                page.Close();
                page.Close();
            }
        });
        page.Element("p", $"Tools: {string.Join("; ", answer.WorkOrder.Tools)}.", ("class", "note"));
        if (answer.WorkOrder.LabourHours > 0)
            page.Element("p", FormattableString.Invariant($"Labour {answer.WorkOrder.LabourHours:0.#} h, without the alignment{(answer.WorkOrder.SavedHours > 0 ? FormattableString.Invariant($"; {answer.WorkOrder.SavedHours:0.#} h saved by shared strip-downs") : "")}."), ("class", "note"));
    }

    private static void Tyres(HtmlWriter page, TyreRecordResponse[] tyres, UnitSystem units) =>
        ReportPage.Table(page, "Tyre record", "fill", ["", "Tyre", "Date code", "Outer", "Middle", "Inner"], () =>
        {
            foreach (var tyre in tyres)
            {
                page.Open("tr");
                page.Element("th", Capital(CorneringWords.Name(tyre.Position)), ("scope", "row"));
                Told(tyre.Marking is { } marking ? marking + (tyre.IsOther ? ", new" : "") : null);
                Told(tyre.MadeWeek);
                foreach (var depth in (double?[])[tyre.DepthMm?.Outer, tyre.DepthMm?.Centre, tyre.DepthMm?.Inner]) page.Element("td", depth is { } mm ? "last " + Prose.Write(units, $"{mm:tread}") : "", ("class", "box note"));
                page.Close();
            }

            void Told(string? text)
            {
                if (text is null) Box(page);
                else page.Element("td", text);
            }
        });

    private static void Test(HtmlWriter page, TestPlanResponse test)
    {
        page.Element("h2", "Test plan");
        page.Element("p", test.LapsPerSession is { } laps ? FormattableString.Invariant($"{test.SessionCount} {(test.SessionCount == 1 ? "session" : "sessions")} of about {Math.Round(laps):0} laps.") : "On the road.", ("class", "summary"));
        page.Element("p", test.Enough);
        ReportPage.Table(page, "Read", "read", ["When", "What"], () =>
        {
            foreach (var one in test.Read)
            {
                page.Open("tr");
                page.Element("th", Capital(one.When), ("scope", "row"));
                page.Element("td", Capital(one.What));
                page.Close();
            }
        });
        Log("Sessions", ["", "Laps", "Air", "FL hot", "FR hot", "RL hot", "RR hot"], "", test.SessionCount, "");
        Log("Depths: outer / middle / inner", ["", "Laps", "FL", "FR", "RL", "RR"], "/ /", test.ReadingCount, "Start");
        page.Element("h2", "Did it work?");
        page.Element("p", test.Proof);
        page.Element("p", test.Stop);

        void Log(string heading, string[] columns, string mark, int rows, string first) => ReportPage.Table(page, heading, "fill log", columns, () =>
        {
            for (var row = 0; row < Math.Min(rows, MostRows); row++)
            {
                page.Open("tr");
                page.Element("th", row == 0 && first.Length > 0 ? first : FormattableString.Invariant($"{(first.Length > 0 ? row : row + 1)}"), ("scope", "row"));
                for (var column = 1; column < columns.Length; column++) page.Element("td", column > 1 || mark.Length == 0 ? mark : "", ("class", "box"));
                page.Close();
            }
        });
    }

    // More rows than a session's day has go on a second copy.
    private const int MostRows = 8;

    private static void Blank(HtmlWriter page, UnknownResponse[] unknown)
    {
        if (unknown.Length == 0) return;
        page.Element("h2", "Left blank, and why");
        List(page, [.. unknown.Select(one => one.Reason).Distinct().Select(Capital)]);
    }

    private static void List(HtmlWriter page, IReadOnlyList<string> items)
    {
        page.Open("ul");
        foreach (var item in items) page.Element("li", item);
        page.Close();
    }

    private static void Tick(HtmlWriter page)
    {
        page.Open("td");
        page.Element("span", "", ("class", "tickbox"));
        page.Close();
    }

    private static void Box(HtmlWriter page) => page.Element("td", "", ("class", "box"));

    private static string Stage(WorkStage stage) => stage switch
    {
        WorkStage.Prepare => "Prepare",
        WorkStage.Strip => "Take apart",
        WorkStage.Renew => "Fit the new parts",
        WorkStage.Refit => "Put together",
        WorkStage.AtRideHeight => "At ride height only",
        WorkStage.SetUp => "Set up",
        _ => "Check",
    };

    private static string Words(string name) => string.Concat(name.Select(static letter => char.IsUpper(letter) ? $" {char.ToLowerInvariant(letter)}" : letter.ToString()));

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
