using SetupService.Domain.Answers;
using SetupService.Domain.Fitment.Words;

namespace SetupService.Domain.Fitment;

/// <summary>
/// The texts of a check: what it is based on, and a sentence or two that quote the numbers of the case. Made only
/// when asked for; the results themselves are numbers.
/// </summary>
public static class CheckWords
{
    /// <summary>Why the check turned out as it did, in the caller's units.</summary>
    public static string Explanation(FitmentContext car, in Fitting candidate, CheckId id, in CheckResult result, UnitSystem units) => id switch
    {
        _ when result.Reason == UnknownReason.TyreSizeUnknown => SizeWords.Explain(car, candidate, id),
        CheckId.RimDiameter => RimWords.Diameter(candidate, result, units),
        CheckId.RimWidth => RimWords.Width(candidate, result, units),
        CheckId.LoadCapacity => LoadWords.Capacity(car, candidate, result, units),
        CheckId.SpeedRating => LoadWords.Speed(car, candidate, result, units),
        CheckId.WheelLoadRating => LoadWords.Wheel(car, candidate, result, units),
        CheckId.BoltCircle => HubWords.BoltCircle(car, candidate, result, units),
        CheckId.CentreBore => HubWords.CentreBore(car, candidate, result, units),
        CheckId.Fastener => HubWords.Fastener(car, candidate, result, units),
        CheckId.BrakeClearance => BrakeWords.Explain(car, candidate, result, units),
        CheckId.AxleDiameterMatch => RollingWords.Match(car, Envelope.Compute(candidate), result, units),
        CheckId.OverallDiameter => RollingWords.Diameter(car, Envelope.Compute(candidate), result, units),
        CheckId.ArchCover => CoverWords.Explain(car, result, units),
        _ => ClearanceWords.Explain(car, Envelope.Compute(candidate), id, result, units),
    };

    /// <summary>What the check is about, in a few words.</summary>
    public static string Title(CheckId id) => id switch
    {
        CheckId.InboardClearance => "Room inboard",
        CheckId.OutboardClearance => "Room at the arch lip",
        CheckId.RadialClearance => "Room over the tread",
        CheckId.FullLockClearance => "Room inboard at full lock",
        CheckId.SpringSeatClearance => "Room under the spring seat",
        CheckId.RimDiameter => "Tyre and rim of one diameter",
        CheckId.RimWidth => "Rim width for the tyre",
        CheckId.LoadCapacity => "Load the tyre carries",
        CheckId.SpeedRating => "Speed symbol",
        CheckId.WheelLoadRating => "Load the wheel carries",
        CheckId.BoltCircle => "Bolt circle",
        CheckId.CentreBore => "Centre bore",
        CheckId.Fastener => "Wheel fasteners",
        CheckId.BrakeClearance => "Room over the brake",
        CheckId.AxleDiameterMatch => "Front and rear roll alike",
        CheckId.OverallDiameter => "Overall diameter and speedometer",
        _ => "Cover by the arch",
    };

    /// <summary>What the check is based on, with its source, in the caller's units.</summary>
    public static string Basis(in Fitting candidate, CheckId id, in CheckResult result, UnitSystem units) => result.Reason == UnknownReason.InsidePresent ? ClearanceWords.InsideBasis : id switch
    {
        CheckId.RimDiameter => RimWords.DiameterBasis,
        CheckId.RimWidth => RimWords.WidthBasis(candidate),
        CheckId.LoadCapacity => LoadWords.CapacityBasis(candidate),
        CheckId.SpeedRating => LoadWords.SpeedBasis,
        CheckId.WheelLoadRating => LoadWords.WheelBasis,
        CheckId.BoltCircle => HubWords.BoltCircleBasis,
        CheckId.CentreBore => HubWords.CentreBoreBasis,
        CheckId.Fastener => HubWords.FastenerBasis,
        CheckId.BrakeClearance => BrakeWords.Basis,
        CheckId.AxleDiameterMatch => RollingWords.MatchBasis,
        CheckId.OverallDiameter => RollingWords.DiameterBasis(units),
        CheckId.ArchCover => CoverWords.Basis(units),
        _ => ClearanceWords.Basis,
    };

    /// <summary>The unit of the check's value and limit; null where they are not numbers of one kind.</summary>
    public static string Unit(CheckId id, in CheckResult result) => id switch
    {
        CheckId.RimDiameter or CheckId.RimWidth => "in",
        CheckId.LoadCapacity or CheckId.WheelLoadRating => "kg",
        CheckId.SpeedRating => "km/h",
        CheckId.AxleDiameterMatch or CheckId.OverallDiameter => "%",
        CheckId.BrakeClearance when result.Reason == UnknownReason.FromMinimumRim => "in",
        _ => "mm",
    };

    /// <summary>The value of a check as a person reads it; null where there is none.</summary>
    public static string? ValueText(in Fitting candidate, CheckId id, in CheckResult result, UnitSystem units) =>
        id == CheckId.BoltCircle ? candidate.Wheel.BoltCircle?.ToString(units) : Text(id, result, result.Value, units);

    /// <summary>The limit of a check as a person reads it; null where there is none.</summary>
    public static string? LimitText(FitmentContext car, CheckId id, in CheckResult result, UnitSystem units) =>
        id == CheckId.BoltCircle ? car.HubBoltCircle?.ToString(units) : Text(id, result, result.Limit, units);

    private static string? Text(CheckId id, in CheckResult result, double? number, UnitSystem units) => number is not { } value
        ? null
        : Unit(id, result) switch
        {
            "in" => Prose.Write(units, $"{value:in}"),
            "mm" when id is CheckId.CentreBore or CheckId.Fastener => Prose.Write(units, $"{value:fit}"),
            "kg" => Prose.Write(units, $"{value:kg}"),
            "km/h" => Prose.Write(units, $"{value:kmh}"),
            "%" => Prose.Write(units, $"{value:pct}"),
            _ => Prose.Write(units, $"{value:mm}"),
        };
}
