using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Geometry;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Geometry.Steering;

/// <summary>Answers for an axis read from a wheel.</summary>
internal static class CasterFromReadingsMapper
{
    /// <summary>The answer of a fit.</summary>
    public static CasterFromReadingsAnswer ToAnswer(CasterFromReadingsRequest request, in CasterReadings result, in CasterFit fit, ReadOnlySpan<SteerReading> readings) => new()
    {
        CasterDeg = fit.CasterDeg,
        CasterStandardErrorDeg = fit.CasterStandardErrorDeg,
        CasterRangeDeg = UncertaintyResponse.From(fit.Caster),
        SteeringAxisInclinationDeg = fit.SteeringAxisInclinationDeg,
        SteeringAxisInclinationStandardErrorDeg = fit.InclinationStandardErrorDeg,
        SteeringAxisInclinationRangeDeg = UncertaintyResponse.From(fit.Inclination),
        CamberAheadDeg = fit.CamberAheadDeg,
        CamberAheadStandardErrorDeg = fit.CamberAheadStandardErrorDeg,
        CamberAheadRangeDeg = UncertaintyResponse.From(fit.CamberAhead),
        Readings = Fitted(fit, readings, SteerSweepMapper.Side(request.Side)),
        ResidualStandardDeviationDeg = fit.ResidualStandardDeviationDeg,
        Approximations = new CasterApproximationsResponse
        {
            WorkshopRuleCasterDeg = result.WorkshopRuleCasterDeg,
            PairRuleCasterDeg = result.PairRuleCasterDeg,
            PairRuleSteerDeg = result.PairRuleSteerDeg,
        },
        Unknown = Unknown(result, fit),
        Method = "caster-from-readings",
        Edition = Edition.Current,
        Next = NextCalls.AfterCasterFromReadings,
        Assumptions = AssumptionResponse.From(SteeringAssumptions.List(request)),
        Cautions = CautionResponse.From(SteeringCautions.For(fit)),
    };

    private static FittedReadingResponse[] Fitted(in CasterFit fit, ReadOnlySpan<SteerReading> readings, WheelSide side)
    {
        var parts = new FittedReadingResponse[readings.Length];
        for (var i = 0; i < parts.Length; i++)
        {
            var fittedDeg = fit.CamberDegAt(readings[i].SteerDeg, side);
            parts[i] = new FittedReadingResponse
            {
                SteerDeg = readings[i].SteerDeg,
                CamberDeg = readings[i].CamberDeg,
                FittedCamberDeg = fittedDeg,
                ResidualDeg = readings[i].CamberDeg - fittedDeg,
            };
        }

        return parts;
    }

    private static UnknownResponse[] Unknown(in CasterReadings result, in CasterFit fit)
    {
        var list = new List<UnknownResponse>();
        if (fit.ResidualStandardDeviationDeg is null) Add(list, "needs a fourth reading: three are met exactly", "residualStandardDeviationDeg");
        if (result.WorkshopRuleCasterDeg is null) Add(list, "needs readings at 20° ± 1° to either side", "workshopRuleCasterDeg");
        if (result.PairRuleCasterDeg is null) Add(list, "needs readings at 5° or more to either side whose angles differ in size by no more than 1°", "pairRuleCasterDeg", "pairRuleSteerDeg");
        return [.. list];
    }

    private static void Add(List<UnknownResponse> list, string reason, params ReadOnlySpan<string> outputs)
    {
        foreach (var output in outputs) list.Add(UnknownResponse.Create(output, reason, "/readings"));
    }
}
