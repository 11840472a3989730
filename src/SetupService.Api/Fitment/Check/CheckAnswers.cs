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
    /// <summary>The answer: numbers in the units of their names, texts in the caller's units.</summary>
    public static CheckAnswer Create(FitmentContext car, in Fitting candidate, CheckSheet sheet, UnitSystem units) => new()
    {
        Summary = SummaryWords.Write(car, candidate, sheet, units),
        Verdict = sheet.Verdict,
        DecidedBy = sheet.DecidedBy.ToArray(),
        Needs = [.. UnknownNeeds.All(car, candidate, sheet)],
        Governing = sheet.Governing,
        Unknown = Unknown(car, candidate, sheet, units),
        Checks = Items(car, candidate, sheet, units),
        Comparison = car.Present is { } present
            ? ComparisonResponse.From(Comparison.Between(present, candidate, car.Axle.Left.SteeringAxisInclinationDeg))
            : null,
        Method = "fitment-check",
        Edition = Edition.Current,
        Assumptions = AssumptionResponse.From(FitmentAssumptions.ForCheck(car, candidate, units)),
        Cautions = CautionResponse.From(FitmentCautions.For(car, candidate, sheet, units)),
    };

    private static UnknownCheck[] Unknown(FitmentContext car, in Fitting candidate, CheckSheet sheet, UnitSystem units)
    {
        var list = new UnknownCheck[sheet.Unknown.Count];
        var next = 0;
        for (var id = CheckId.InboardClearance; id <= CheckId.ArchCover; id++)
        {
            if (sheet.Unknown.Contains(id))
                list[next++] = Unknown(car, candidate, id, sheet[id], units);
        }

        return list;
    }

    private static CheckItem[] Items(FitmentContext car, in Fitting candidate, CheckSheet sheet, UnitSystem units)
    {
        var items = new CheckItem[sheet.Applicable.Count];
        var next = 0;
        for (var id = CheckId.InboardClearance; id <= CheckId.ArchCover; id++)
        {
            if (sheet.Applicable.Contains(id))
                items[next++] = Item(car, candidate, id, sheet[id], units);
        }

        return items;
    }

    private static CheckItem Item(FitmentContext car, in Fitting candidate, CheckId id, in CheckResult result, UnitSystem units) => new()
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
        Basis = CheckWords.Basis(candidate, id, result),
        Explanation = CheckWords.Explanation(car, candidate, id, result, units),
    };

    private static UnknownCheck Unknown(FitmentContext car, in Fitting candidate, CheckId id, in CheckResult result, UnitSystem units) => new()
    {
        Id = id,
        Code = EnumNames<UnknownReason>.GetName(result.Reason) ?? "valueMissing",
        Reason = CheckWords.Explanation(car, candidate, id, result, units),
        MoreRoomMm = result.MoreRoomMm,
        Needs = [.. UnknownNeeds.Find(car, candidate, id, result)],
    };
}
