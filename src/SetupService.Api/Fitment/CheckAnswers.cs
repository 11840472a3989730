using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Fitment;

/// <summary>Turns an evaluated sheet into the answer of the call: numbers as they are, texts in the caller's units.</summary>
internal static class CheckAnswers
{
    public static CheckAnswer Of(AxleUnderCheck car, in Fitting candidate, CheckSheet sheet, UnitSystem units) => new()
    {
        Verdict = sheet.Verdict,
        Governing = sheet.Governing,
        Unknown = Unknown(car, candidate, sheet, units),
        Checks = Items(car, candidate, sheet, units),
        Comparison = car.Present is { } present
            ? ComparisonPart.Of(Comparison.Between(present, candidate, car.Axle.Left.SteeringAxisInclinationDeg))
            : null,
        Method = "fitment-check",
        Edition = Edition.Current,
        Assumptions = AssumptionResponse.Of(FitmentAssumptions.ForCheck(car, candidate, units)),
        Cautions = CautionResponse.Of(FitmentCautions.For(car, candidate, sheet, units)),
    };

    private static UnknownCheck[] Unknown(AxleUnderCheck car, in Fitting candidate, CheckSheet sheet, UnitSystem units)
    {
        var list = new UnknownCheck[sheet.Unknown.Count];
        var next = 0;
        for (var id = CheckId.InboardClearance; id <= CheckId.ArchCover; id++)
        {
            if (sheet.Unknown.Contains(id))
                list[next++] = UnknownCheck.Of(car, candidate, id, sheet[id], units);
        }

        return list;
    }

    private static CheckItem[] Items(AxleUnderCheck car, in Fitting candidate, CheckSheet sheet, UnitSystem units)
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

    private static CheckItem Item(AxleUnderCheck car, in Fitting candidate, CheckId id, in CheckResult result, UnitSystem units) => new()
    {
        Id = (CheckId)id,
        Status = result.Status,
        Value = result.Value,
        Limit = result.Limit,
        Unit = CheckWords.Unit(id, result),
        ValueText = CheckWords.ValueText(candidate, id, result, units),
        LimitText = CheckWords.LimitText(car, id, result, units),
        NominalMm = result.Margin?.NominalMm,
        ProbableMm = result.Margin?.ProbableMm,
        WorstCaseMm = result.Margin?.WorstCaseMm,
        Basis = CheckWords.Basis(candidate, id),
        Explanation = CheckWords.Explanation(car, candidate, id, result, units),
    };
}
