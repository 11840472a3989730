using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Cautions;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Diagnosis.Advice;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.TreadWear;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>Writes the answer of a diagnosis from its study.</summary>
internal static class DiagnosisAnswers
{
    private const double ToPct = 100;

    /// <summary>The answer.</summary>
    public static DiagnosisAnswer Create(DiagnosedCar car, UnitSystem units)
    {
        var study = car.Study;
        var diagnosis = study.Diagnosis;
        var advice = WearAdvice.Create(study, car.Conditions, units);
        return new DiagnosisAnswer
        {
            Summary = DiagnosisWords.Summary(advice),
            Causes = [.. diagnosis.Causes.Select(cause => Cause(advice, cause, units))],
            Axles = new AxlesAdviceResponse { Front = AxleAdviceResponse.From(advice.Axles[0]), Rear = AxleAdviceResponse.From(advice.Axles[1]) },
            Tread = [.. car.Request.Tyres.Select((tyre, i) => Tread(car, tyre, study.Case.Tyres[i], car.Conditions[i]))],
            WearModel = [.. ((LearnedTread?[])[study.Front, study.Rear]).OfType<LearnedTread>().Select(learned => Axle(car, learned))],
            NextCheck = new NextCheckResponse
            {
                Check = diagnosis.Next.Check,
                Text = NextCheckWords.Describe(diagnosis.Next.Check),
                ExpectedInformation = diagnosis.Next.ExpectedBits,
            },
            Contradictions = [.. advice.Contradictions.Select(one => new ContradictionResponse { Position = one.Position, Text = one.Text })],
            Unknown = DiagnosisGaps.Find(car),
            Method = "wear-diagnosis",
            Edition = Edition.Current,
            Next = NextCalls.AfterDiagnosis,
            Assumptions = DiagnosisAssumptions.List(car),
            Cautions = CautionResponse.From([.. WearDiagnosisCautions.Build(car.Conditions, advice, units), .. car.Stated?.SuspensionCautions(units) ?? []]),
        };
    }

    private static CauseResponse Cause(WearAdvice advice, CauseFinding finding, UnitSystem units)
    {
        var diagnosis = advice.Study.Diagnosis;
        return new CauseResponse
        {
            Cause = finding.Cause,
            Axle = finding.Axle,
            Probability = finding.Probability,
            Meaning = CauseWords.Describe(finding.Cause, finding.Axle),
            Tyres = [.. finding.Tyres],
            Evidence = [.. finding.Evidence.Select(one => new EvidenceResponse { Observation = Words(one), Supports = one.Weight > 0, Weight = Math.Abs(one.Weight) })],
            Actions = [.. advice.ActionsFor(finding).Select(ActionResponse.From)],
        };

        string Words(Evidence one) => one.Sign is { } sign
            ? SignWords.Describe(sign, diagnosis.Sign(one.Axle, sign)!.Value.Value, diagnosis.Sign(one.Axle, WearSign.ShoulderDifference)?.Value ?? 0, one.Axle, units)
            : SignWords.Describe(one.Mark!.Value, diagnosis.Mark(one.Axle, one.Mark.Value) is true, one.Axle);
    }

    private static TreadResponse Tread(DiagnosedCar car, TyreReadingDocument request, TyreReading tyre, TyreCondition condition)
    {
        var figures = TreadFigures.Compute(tyre);
        return new TreadResponse
        {
            Position = tyre.Position,
            DepthMm = figures is { } read ? DepthsResponse.From(read.DepthMm) : null,
            LeastDepthMm = condition.ShallowestMm,
            WornMm = figures is { } worn ? UncertaintyResponse.From(worn.WornMm) : null,
            OuterLessInnerPct = Pct(figures?.ShoulderDifference),
            CentreLessShouldersPct = Pct(figures?.CrownDifference),
            RoundTyreMm = UncertaintyResponse.From(figures?.RoundSpreadMm),
            PredictedDepthMm = Predicted(car.Study, request, tyre),
            AgeYears = condition.AgeYears,
        };
    }

    private static DepthsResponse? Predicted(WearStudy study, TyreReadingDocument request, TyreReading tyre)
    {
        if (study.At(tyre.Axle) is not { ReadingCount: > 0 } learned || tyre.Zones.Count == 0) return null;
        var freshMm = request.NewDepthMm ?? (TreadFigures.UsualNewDepthMm.Value + learned.Parameter(TreadWearParameters.NewDepthExcess).Value);
        return DepthsResponse.From(learned.WornMm(learned.Axle.At(tyre.IsLeft)).Select(wornMm => freshMm - wornMm));
    }

    private static AxleWearResponse Axle(DiagnosedCar car, LearnedTread learned)
    {
        var lapKm = car.Request.Use?.LapKm ?? TrackShare.UsualLapKm;
        var at = learned.Axle.Axle;

        // Readings outrank the model: where they contradict it, it tells nothing of another camber.
        var speaks = learned.HasUse && !TreadLifeVoice.ModelContradictsShoulders(car.Study, at);
        return new AxleWearResponse
        {
            Axle = at,
            WearPer1000KmMm = FromLogarithm(learned.Parameter(TreadWearParameters.Road), 1),
            WearPerLapMm = FromLogarithm(learned.Parameter(TreadWearParameters.Track), lapKm / 1000),
            DepthsLearnedFromCount = learned.ReadingCount,
            WithCamberSet = speaks && car.Study.ShortAt(at).Together is { } shortDeg && car.Study.UseWith(at, -shortDeg.Value) is { } set
                ? Effect(learned, -shortDeg.Value, set) : null,
            LongestLife = speaks && learned.LongestLife(changeDeg => car.Study.UseWith(at, changeDeg)) is var (changeDeg, longest) ? Effect(learned, changeDeg, longest) : null,
        };
    }

    private static CamberEffectResponse Effect(LearnedTread learned, double changeDeg, AxleUse set) => new()
    {
        CamberChangeDeg = changeDeg,
        LeftWornMm = DepthsResponse.From(learned.WornMm(set.Left)),
        RightWornMm = DepthsResponse.From(learned.WornMm(set.Right)),
        LifeRatio = learned.LifeRatio(set),
    };

    private static UncertaintyResponse FromLogarithm(in Estimate logarithm, double by)
    {
        var range = logarithm.Ninety;
        return UncertaintyResponse.From(new Uncertainty(by * Math.Exp(range.Value), by * Math.Exp(range.Lower), by * Math.Exp(range.Upper), range.LevelPct));
    }

    private static UncertaintyResponse? Pct(Estimate? share) => share is { } known ? UncertaintyResponse.From(new Estimate(ToPct * known.Value, ToPct * known.StandardError)) : null;
}
