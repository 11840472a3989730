using SetupService.Domain.Answers;
using SetupService.Domain.Fitment.Checks;
using SetupService.Domain.Tyres;

namespace SetupService.Domain.Fitment.Words;

/// <summary>The sentences of the load and speed checks.</summary>
internal static class LoadWords
{
    private const string Metric =
        "Load index table (French order of 24 Oct 1994, Annex I); load against pressure and speed after the tables of the handbook Automotive Engineering: Powertrain, Chassis System and Vehicle Body, pp. 290 and 291; reference pressures quoted and from memory.";

    private const string PMetric =
        "Load index table (French order of 24 Oct 1994, Annex I); load against the square root of pressure as a tyre engineer quotes the American association; reference pressures quoted and from memory; speed after the handbook's p. 291.";

    public static string CapacityBasis(in Fitting candidate) => candidate.Tyre.Marking.IsPMetric ? PMetric : Metric;

    public const string SpeedBasis = "Speed symbol table and article 3 of the French order of 24 Oct 1994.";

    public const string WheelBasis = "Wheel rating at least half the axle's greatest load: from memory, no source read.";

    public static string Capacity(FitmentContext car, in Fitting candidate, in CheckResult result, UnitSystem units)
    {
        var marking = candidate.Tyre.Marking;
        if (marking.LoadCapacityKg is not { } indexKg)
        {
            return Prose.Write(units, $"“{marking.Text}” carries no load index, so what it carries is not known.");
        }

        var speedKmh = LoadChecks.SpeedUsed(car, marking);
        if (result.Reason == UnknownReason.BeyondSpeedSymbol)
        {
            var beyond = Prose.Write(units, $"Load index {marking.LoadIndex ?? 0} stands for {indexKg:kg}, but not at {speedKmh:kmh}, which is beyond the tyre's speed symbol.");
            return result.Status == CheckStatus.Fail
                ? Prose.Write(units, $"{beyond} {Need(car, result, units)}: more than even the index stands for.")
                : beyond;
        }

        if (result.Reason == UnknownReason.MarkingSilent)
        {
            return Prose.Write(units, $"Load index {marking.LoadIndex ?? 0} stands for {indexKg:kg}, but the marking has no speed symbol, so what is left of it at {speedKmh:kmh} is not known.");
        }

        if (result.Reason == UnknownReason.IndexBelowMinimum)
        {
            return Prose.Write(units, $"Load index {marking.LoadIndex ?? 0} stands for {indexKg:kg} and is below {car.Axle.MinimumLoadIndex ?? 0}, the lowest the car's papers allow.");
        }

        var carries = Carries(car, candidate, indexKg, result.Value ?? 0, speedKmh, units);
        var need = Need(car, result, units);
        var first = result.Status switch
        {
            CheckStatus.Pass => "The tyre carries the load. ",
            CheckStatus.Caution when result.Reason == UnknownReason.SpeedAdditionShort => "The tyre carries the load, but raise the pressure for sustained speed. ",
            CheckStatus.Caution => "The tyre carries the load at the pressure its maker states. ",
            CheckStatus.Fail => "The tyre does not carry the load. ",
            _ => "",
        };
        if (result is { Status: CheckStatus.Unknown, Reason: UnknownReason.ValueMissing, Limit: null }) return $"{need}. {carries}";
        return Prose.Write(units, $"{first}{carries} {need}{Verdict(car, candidate, result, speedKmh, units)}");
    }

    public static string Speed(FitmentContext car, in Fitting candidate, in CheckResult result, UnitSystem units)
    {
        var marking = candidate.Tyre.Marking;
        if (car.Vehicle.TopSpeedKmh is not { } topKmh) return "The car's top speed is not given, so the speed symbol has nothing to be held against.";
        if (marking.SpeedSymbol is null)
        {
            return result.Status == CheckStatus.Pass
                ? Prose.Write(units, $"{marking.SpeedInSize ?? ""} stands for more than {marking.SpeedAboveKmh ?? 0:kmh}; the car reaches {topKmh:kmh}.")
                : Prose.Write(units, $"“{marking.Text}” carries no speed symbol, so whether it may do {topKmh:kmh} is not known.");
        }

        var symbolKmh = marking.MaximumSpeedKmh ?? 0;
        return (result.Status, result.Reason) switch
        {
            (CheckStatus.Pass, _) => Prose.Write(units, $"The speed symbol allows {symbolKmh:kmh}; the car reaches {topKmh:kmh}."),
            (CheckStatus.Caution, _) => Prose.Write(units, $"The speed symbol allows {symbolKmh:kmh} and the car reaches {topKmh:kmh}. Some countries allow it for winter tyres with a label in the driver's view and that speed not exceeded; local law decides."),
            (CheckStatus.Unknown, _) => Prose.Write(units, $"The brackets mark the tyre for more than {symbolKmh:kmh} without saying how much; the car reaches {topKmh:kmh}. Only the tyre's maker can tell."),
            _ => Prose.Write(units, $"The tyre is not made for this car's speed: its symbol allows {symbolKmh:kmh} and the car reaches {topKmh:kmh}."),
        };
    }

    public static string Wheel(FitmentContext car, in Fitting candidate, in CheckResult result, UnitSystem units)
    {
        if (candidate.Wheel.LoadRatingKg is not { } ratingKg) return "The wheel's load rating is not given; it is stamped on the wheel or in its papers.";
        if (car.LoadPerWheelKg is not { } loadKg) return Prose.Write(units, $"The wheel carries {ratingKg:kg}, but the axle's greatest load is not given.");
        return result.Status == CheckStatus.Pass
            ? Prose.Write(units, $"The wheel carries {ratingKg:kg}; half the axle's {loadKg * 2:kg} is {loadKg:kg}.")
            : Prose.Write(units, $"The wheel can break: it carries {ratingKg:kg}, less than half the axle's {loadKg * 2:kg}, which is {loadKg:kg}.");
    }

    private static string Carries(FitmentContext car, in Fitting candidate, double indexKg, double carriesKg, double speedKmh, UnitSystem units)
    {
        var marking = candidate.Tyre.Marking;
        if (LoadCapacity.ReferencePressureKpa(marking) is not { } referenceKpa)
        {
            return Prose.Write(units, $"Load index {marking.LoadIndex ?? 0} stands for {indexKg:kg} at the pressure the tyre's maker states; at {speedKmh:kmh} that is {carriesKg:kg}.");
        }

        var pressureKpa = LoadChecks.PressureUsed(car, candidate) ?? referenceKpa;
        return Prose.Write(
            units, $"Load index {marking.LoadIndex ?? 0} stands for {indexKg:kg} at {referenceKpa:kPa}; at {pressureKpa:kPa} and {speedKmh:kmh} the tyre carries {carriesKg:kg}.");
    }

    private static string Need(FitmentContext car, in CheckResult result, UnitSystem units)
    {
        if (car.LoadPerWheelKg is { } loadKg) return Prose.Write(units, $"Half the axle's {loadKg * 2:kg} is {loadKg:kg}");
        if (result.Reason == UnknownReason.LessThanAsDriven) return Prose.Write(units, $"Half the axle's load as driven is already {result.Limit ?? 0:kg}");
        if (car.Axle.MinimumLoadIndex is { } index && result.Limit is { } indexLoadKg)
        {
            return Prose.Write(units, $"The axle's greatest load is not given; the lowest load index allowed, {index}, stands for {indexLoadKg:kg}");
        }

        return "The axle's greatest load is not given, and no lowest load index either, so there is nothing to hold it against";
    }

    private static string Verdict(FitmentContext car, in Fitting candidate, in CheckResult result, double speedKmh, UnitSystem units)
    {
        var marking = candidate.Tyre.Marking;
        var wantedKpa = result.Limit is { } loadKg ? LoadChecks.PressureWanted(marking, loadKg, speedKmh) : null;
        var wanted = wantedKpa is { } kpa ? Wanted(kpa, LoadCapacity.SpeedPressureAdditionKpa(marking, speedKmh) ?? 0, units) : "";
        return result.Reason switch
        {
            UnknownReason.ValueMissing when result.Limit is not null => Prose.Write(units, $", more than the tyre carries so; only the axle's greatest load can tell whether that is enough.{wanted}"),
            UnknownReason.PressureBelowTable => Prose.Write(units, $". The standard's table starts at {LoadCapacity.LowestTabulatedPressureKpa:kPa}; below it no capacity is published.{wanted}"),
            UnknownReason.ReferencePressureUnknown => ". What it carries at another pressure only its maker can tell.",
            UnknownReason.SpeedAdditionShort => Prose.Write(units, $". It carries that, but sustained speed wants more pressure.{wanted}"),
            _ when result.Status == CheckStatus.Fail && wantedKpa is null => ": no pressure lets this tyre carry it.",
            _ when result.Status == CheckStatus.Fail => Prose.Write(units, $": too much at this pressure.{wanted}"),
            _ => Prose.Write(units, $".{wanted}"),
        };
    }

    private static string Wanted(double pressureKpa, double additionKpa, UnitSystem units) => additionKpa > 0
        ? Prose.Write(units, $" {pressureKpa:kPaUp} cold would carry it, {additionKpa:kPa} of that for sustained speed.")
        : Prose.Write(units, $" {pressureKpa:kPaUp} cold would carry it.");
}
