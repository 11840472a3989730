using SetupService.Api.Fitment.Compare;
using SetupService.Api.Http;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Fitment.Check;

/// <summary>A request for a check, mapped and evaluated.</summary>
internal sealed class CheckedFitting
{
    private CheckedFitting(FitmentContext car, in Fitting candidate)
    {
        Car = car;
        Candidate = candidate;
        FitmentCheck.Evaluate(car, candidate, Sheet);
    }

    public FitmentContext Car { get; }

    public Fitting Candidate { get; }

    public CheckSheet Sheet { get; } = new();

    /// <summary>Evaluates a request; refused where its mapping is.</summary>
    public static MapResult<CheckedFitting> Evaluate(CheckRequest request)
    {
        if (!CheckMapper.Map(request).TryGet(out var inputs, out var refusal))
            return refusal;
        var settings = FitmentMapper.Settings(request.Tolerances, request.Required, request.CamberChange);
        return new CheckedFitting(FitmentContext.Prepare(inputs.Vehicle, request.Axle, settings), inputs.Candidate);
    }

    public CheckAnswer ToAnswer(UnitSystem units) => CheckMapper.ToAnswer(Car, Candidate, Sheet, units);
}

/// <summary>Maps the request of a check to domain values, and an evaluated sheet to the answer.</summary>
internal static class CheckMapper
{
    /// <summary>The car and candidate of a check.</summary>
    public static MapResult<(Vehicle Vehicle, Fitting Candidate)> Map(CheckRequest request)
    {
        Refusal? refusal = null;
        var vehicle = VehicleMapper.Map(request.Vehicle).Take("vehicle", ref refusal);
        var candidate = FitmentMapper.Map(request.Candidate).Take("candidate", ref refusal);
        if (refusal is not null)
            return refusal;
        return (vehicle!, candidate);
    }

    /// <summary>The answer: numbers as they are, texts in the caller's units.</summary>
    public static CheckAnswer ToAnswer(FitmentContext car, in Fitting candidate, CheckSheet sheet, UnitSystem units) => new()
    {
        Verdict = sheet.Verdict,
        Governing = sheet.Governing,
        Unknown = Unknown(car, candidate, sheet, units),
        Checks = Items(car, candidate, sheet, units),
        Comparison = car.Present is { } present
            ? ComparisonPart.From(Comparison.Between(present, candidate, car.Axle.Left.SteeringAxisInclinationDeg))
            : null,
        Method = "fitment-check",
        Edition = Edition.Current,
        Assumptions = AssumptionResponse.Of(FitmentAssumptions.ForCheck(car, candidate, units)),
        Cautions = CautionResponse.Of(FitmentCautions.For(car, candidate, sheet, units)),
    };

    private static UnknownCheck[] Unknown(FitmentContext car, in Fitting candidate, CheckSheet sheet, UnitSystem units)
    {
        var list = new UnknownCheck[sheet.Unknown.Count];
        var next = 0;
        for (var id = CheckId.InboardClearance; id <= CheckId.ArchCover; id++)
        {
            if (sheet.Unknown.Contains(id))
                list[next++] = UnknownCheck.From(car, candidate, id, sheet[id], units);
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
