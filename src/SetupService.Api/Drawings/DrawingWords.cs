using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Drawings;

/// <summary>The words of the drawing.</summary>
internal static class DrawingWords
{
    public static string Length(double lengthMm, UnitSystem units) => Prose.Write(units, $"{lengthMm:mm}");

    public static string Place(CheckId place) => place switch
    {
        CheckId.InboardClearance => "inboard",
        CheckId.OutboardClearance => "outboard",
        CheckId.RadialClearance => "over the tread",
        CheckId.FullLockClearance => "at full lock",
        _ => "spring seat",
    };

    public static string Status(in CheckResult result) => result.Status switch
    {
        CheckStatus.Fail when result.Margin is { NominalMm: < 0 } => "touches",
        CheckStatus.Fail => "probably touches",
        CheckStatus.Caution => "tight",
        CheckStatus.Pass => "fits",
        _ => "not known",
    };

    public static InkRole StatusInk(CheckStatus status) => status switch
    {
        CheckStatus.Fail => InkRole.Fail,
        CheckStatus.Caution => InkRole.Caution,
        CheckStatus.Pass => InkRole.Pass,
        _ => InkRole.Ink,
    };

    public static string Heading(CarAxle position) => position == CarAxle.Front
        ? "Front left wheel, seen from behind"
        : "Rear left wheel, seen from behind";

    /// <summary>The verdict as a headline: whether it fits, and which axle.</summary>
    public static string Headline(CheckStatus verdict, CarAxle position)
    {
        var axle = position == CarAxle.Front ? "the front axle" : "the rear axle";
        return verdict switch
        {
            CheckStatus.Fail => $"Does not fit {axle}",
            CheckStatus.Unknown => $"Not known yet to fit {axle}",
            CheckStatus.Caution => $"Fits {axle}, with care",
            _ => $"Fits {axle}",
        };
    }

    /// <summary>Rim size and offset as they are stamped, and the spacer where there is one.</summary>
    public static string Wheel(Wheel wheel, UnitSystem units)
    {
        var size = Prose.Write(units, $"{wheel.RimWidthIn:n}Jx{wheel.RimDiameterIn:n} ET{wheel.OffsetMm:n}");
        return wheel.SpacerMm > 0 ? Prose.Write(units, $"{size}, spacer {wheel.SpacerMm:mm}") : size;
    }

    public static string Fitting(in Fitting fitting, UnitSystem units) => $"{Wheel(fitting.Wheel, units)}, {fitting.Tyre.Marking.Text}";

    public static string Title(CornerView view) =>
        $"{Heading(view.Car.Position)}: {Fitting(view.Candidate, view.Units)} {Against(view)}";

    /// <summary>The picture in words, for somebody who cannot see it.</summary>
    public static string Description(CornerView view)
    {
        var sentences = new List<string>
        {
            "Section through the wheel axis; the outboard side is on the left.",
            $"Candidate: {Fitting(view.Candidate, view.Units)}.",
            view.Car.Present is { } present ? $"Now: {Fitting(present, view.Units)}." : "The wheel and tyre fitted now are not described.",
        };
        for (var place = CheckId.InboardClearance; place <= CheckId.SpringSeatClearance; place++)
        {
            if (view.Sheet.Applicable.Contains(place) && view.Sheet[place].Margin is { } margin) sentences.Add(Gap(view, place, margin));
        }

        sentences.AddRange(DrawingNotes.List(view));
        sentences.Add(Verdict(view));
        return string.Join(' ', sentences);
    }

    /// <summary>The verdict of the whole check, including what the picture does not show: load, hub, brakes and gaps out of this section.</summary>
    public static string Verdict(CornerView view) => view.Sheet.Verdict switch
    {
        CheckStatus.Fail => $"The whole check fails on {CheckNames.List(view.Sheet.Failed)}.",
        CheckStatus.Unknown => $"The whole check is unknown without {CheckNames.List(new CheckIdSet(view.Sheet.Unknown.Bits & view.Car.RequiredFor(view.Candidate).Bits))}.",
        CheckStatus.Caution => $"Nothing fails in the whole check; caution on {CheckNames.List(Cautions(view.Sheet))}.",
        _ => "The whole check passes.",
    };

    private static CheckIdSet Cautions(CheckSheet sheet)
    {
        var cautions = default(CheckIdSet);
        for (var id = CheckId.InboardClearance; id <= CheckId.ArchCover; id++)
        {
            if (sheet.Applicable.Contains(id) && sheet[id].Status == CheckStatus.Caution) cautions = cautions.With(id);
        }

        return cautions;
    }

    private static string Against(CornerView view) =>
        view.Car.Present is { } present ? $"against {Fitting(present, view.Units)} now" : "alone; the present wheel and tyre are not described";

    private static string Gap(CornerView view, CheckId place, Margin margin) =>
        margin.NominalMm < 0
            ? $"{Capital(Place(place))}: touches, overlaps by {Length(-margin.NominalMm, view.Units)}."
            : $"{Capital(Place(place))}: {Length(margin.NominalMm, view.Units)}, at worst {Length(margin.WorstCaseMm, view.Units)}: {Status(view.Sheet[place])}.";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}

/// <summary>Names of the checks in running text.</summary>
internal static class CheckNames
{
    public static string From(CheckId id) => id switch
    {
        CheckId.InboardClearance => "room inboard",
        CheckId.OutboardClearance => "room outboard",
        CheckId.RadialClearance => "room over the tread",
        CheckId.FullLockClearance => "room at full lock",
        CheckId.SpringSeatClearance => "room at the spring seat",
        CheckId.RimDiameter => "rim diameter",
        CheckId.RimWidth => "rim width",
        CheckId.LoadCapacity => "load capacity",
        CheckId.SpeedRating => "speed symbol",
        CheckId.WheelLoadRating => "wheel load rating",
        CheckId.BoltCircle => "bolt circle",
        CheckId.CentreBore => "centre bore",
        CheckId.Fastener => "fasteners",
        CheckId.BrakeClearance => "room over the brake",
        CheckId.AxleDiameterMatch => "front against rear diameter",
        CheckId.OverallDiameter => "overall diameter",
        _ => "arch cover",
    };

    /// <summary>The names of a set in the order of the checks, with commas.</summary>
    public static string List(CheckIdSet checks)
    {
        var names = new List<string>(checks.Count);
        for (var id = CheckId.InboardClearance; id <= CheckId.ArchCover; id++)
        {
            if (checks.Contains(id)) names.Add(From(id));
        }

        return string.Join(", ", names);
    }
}
