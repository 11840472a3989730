using SetupService.Api.Fitment.Compare;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Words;

namespace SetupService.Api.Fitment.Check;

/// <summary>Writes the answer of a check from its evaluated sheet.</summary>
internal static class CheckAnswers
{
    /// <summary>Where a check's candidate stands in its request.</summary>
    public const string Candidate = "/candidate";

    /// <summary>The answer: numbers in the units of their names, texts in the caller's units.</summary>
    public static CheckAnswer Create(FitmentContext car, in Fitting candidate, CheckSheet sheet, UnitSystem units, CheckDetail detail, string member = Candidate)
    {
        var isFull = detail == CheckDetail.Full;
        var cautions = FitmentCautions.For(car, candidate, sheet, units);
        return new()
        {
            Summary = SummaryWords.Write(car, candidate, sheet, units),
            Verdict = sheet.Verdict,
            DecidedBy = sheet.DecidedBy.ToArray(),
            Needs = [.. UnknownNeeds.All(car, candidate, sheet).Select(need => Placed(need, member))],
            Governing = sheet.Governing,
            Unknown = detail == CheckDetail.Verdict ? null : Unknown(car, candidate, sheet, units, member),
            Checks = detail == CheckDetail.Verdict ? null : Items(car, candidate, sheet, units),
            Comparison = isFull && car.Present is { } present && candidate.Tyre.Marking.HasDimensions ? ComparisonResponse.From(Comparison.Between(present, candidate, car.Axle.Left.SteeringAxisInclinationDeg)) : null,
            Method = "fitment-check",
            Edition = Edition.Current,
            Assumptions = isFull ? AssumptionResponse.From([.. FitmentAssumptions.ForCheck(car, candidate, units).Select(one => one with { Input = Placed(one.Input, member) })]) : null,
            Cautions = isFull ? CautionResponse.From(cautions) : null,
            CautionCodes = isFull ? null : [.. cautions.Select(one => one.Code)],
        };
    }

    /// <summary>A pointer into a check's candidate as one into the request it came in.</summary>
    public static string Placed(string pointer, string member) =>
        member != Candidate && pointer.StartsWith(Candidate, StringComparison.Ordinal) ? member + pointer[Candidate.Length..] : pointer;

    private static UnknownCheck[] Unknown(FitmentContext car, in Fitting candidate, CheckSheet sheet, UnitSystem units, string member)
    {
        var list = new UnknownCheck[sheet.Unknown.Count];
        var next = 0;
        foreach (var id in sheet.Unknown)
            list[next++] = Unknown(car, candidate, id, sheet[id], units, member);
        return list;
    }

    private static CheckItem[] Items(FitmentContext car, in Fitting candidate, CheckSheet sheet, UnitSystem units)
    {
        var items = new CheckItem[sheet.Applicable.Count];
        var next = 0;
        foreach (var id in sheet.Applicable)
            items[next++] = Item(car, candidate, id, sheet[id], units);
        return items;
    }

    /// <summary>One check.</summary>
    public static CheckItem Item(FitmentContext car, in Fitting candidate, CheckId id, in CheckResult result, UnitSystem units) => new()
    {
        Id = id,
        Title = CheckWords.Title(id),
        Status = result.Status,
        Value = result.Value,
        Limit = result.Limit,
        Unit = CheckWords.Unit(id, result),
        ValueText = CheckWords.ValueText(candidate, id, result, units),
        LimitText = CheckWords.LimitText(car, id, result, units),
        NominalMm = result.Margin?.NominalMm,
        ProbableMm = result.Margin?.ProbableMm,
        WorstCaseMm = result.Margin?.WorstCaseMm,
        Basis = CheckWords.Basis(candidate, id, result, units),
        Explanation = CheckWords.Explanation(car, candidate, id, result, units),
    };

    private static UnknownCheck Unknown(FitmentContext car, in Fitting candidate, CheckId id, in CheckResult result, UnitSystem units, string member) => new()
    {
        Id = id,
        Code = EnumNames<UnknownReason>.GetName(result.Reason) ?? "valueMissing",
        Reason = CheckWords.Explanation(car, candidate, id, result, units),
        MoreRoomMm = result.MoreRoomMm,
        Needs = [.. UnknownNeeds.Find(car, candidate, id, result).Select(need => Placed(need, member))],
    };
}
