using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>Puts down a camber target with all it rests on.</summary>
internal static class CamberTargetAnswers
{
    private const string CommonPractice = "common practice, no source";

    /// <summary>The answer.</summary>
    public static CamberTargetAnswer Create(CamberTargetRequest request, Vehicle vehicle, ResolvedHandlingCar reading, in GripScale scale, BendMixMapper corners, CamberTargetResult result, UnitSystem units)
    {
        var target = request.TargetInclinationDeg ?? 0;
        var wanted = result.StaticCamberDeg.Value;
        var at = request.Axle;
        var straight = Straight(vehicle, reading.Car, at, wanted);
        return new CamberTargetAnswer
        {
            Recommended = new() { CamberDeg = result.Advice.CamberDeg, StepDeg = result.Advice.StepDeg, Text = result.Advice.Text },
            StaticCamberDeg = UncertaintyResponse.From(result.StaticCamberDeg),
            BestGripCamberDeg = UncertaintyResponse.From(result.BestGripCamberDeg),
            TradeOff = [.. CamberTradeOff.Compute(result, vehicle.At(at).Adjustable.Camber, reading.Car, at, vehicle.At(at).Tyre).Select(Row)],
            LeftStaticCamberDeg = result.LeftDeg,
            RightStaticCamberDeg = result.RightDeg,
            Before = Setting(result.SetCamberDeg, result.MeanInclinationNowDeg),
            IsReachable = vehicle.At(at).Adjustable.Camber is null ? null : result.NearestCamberDeg == wanted,
            Nearest = Setting(result.NearestCamberDeg, result.MeanInclinationAtNearestDeg),
            WithCaster = [.. result.WithCaster.Select(one => new CamberForCasterResponse { CasterDeg = one.CasterDeg, StaticCamberDeg = one.StaticCamberDeg })],
            CasterSaving = result.SavedPerCasterDeg,
            CasterSavingInTightest = result.SavedPerCasterInTightestDeg,
            Sensitivities = [.. result.Sensitivities.Select(one => Sensitivity(one, request, units))],
            Straight = straight,
            Corners = [.. result.Corners.Select(Corner)],
            Summary = CamberTargetWords.Summarize(result, target, at),
            Unknown = [.. Gaps(result, straight, at)],
            Method = "camber-target",
            Edition = Edition.Current,
            Next = NextCalls.AfterCamberTarget,
            Assumptions = [.. Assumptions(request, vehicle, reading, scale, corners, result)],
            Cautions = CautionResponse.From([.. CorneringCautions.OfAttitudes([.. result.Corners.Select(one => one.Attitude)]), .. CamberTargetCautions.Build(Math.Min(wanted, result.SetCamberDeg)), .. vehicle.SuspensionCautions(units)]),
        };

        CamberSettingResponse Setting(double camberDeg, double? meanInclinationDeg) => new()
        {
            StaticCamberDeg = camberDeg,
            MeanInclinationDeg = meanInclinationDeg,
            Straight = Straight(vehicle, reading.Car, at, camberDeg),
        };
    }

    private static TradeOffResponse Row(CamberTradeOff one) => new()
    {
        StaticCamberDeg = one.StaticCamberDeg,
        GripChangePct = UncertaintyResponse.From(one.GripChangePct),
        BrakingChangePct = UncertaintyResponse.From(one.BrakingChangePct),
        IsReachable = one.IsReachable,
    };

    private static SensitivityResponse Sensitivity(CamberSensitivity one, CamberTargetRequest request, UnitSystem units)
    {
        var input = one.Place is "/lateralG" or "/cornerRadiusM" ? CorneringPointer(one.Place, request) : LoadPointer(one.Place, request);
        return input == "/speedKmh"
            ? BySpeed(one, request.SpeedKmh!.Value, units)
            : Sensitivity(input, one.Unit, one.Value, one.DegPerUnit, one.StandardError, one.LeavesOpenDeg, CamberTargetWords.Explain(one.Place, one.DegPerUnit, units));
    }

    /// <summary>With the lateral acceleration as it is the radius goes with the square of the speed.</summary>
    private static SensitivityResponse BySpeed(CamberSensitivity one, double speedKmh, UnitSystem units)
    {
        var mPerKmh = 2 * one.Value / speedKmh;
        return Sensitivity("/speedKmh", "Kmh", speedKmh, one.DegPerUnit * mPerKmh, one.StandardError / mPerKmh, one.LeavesOpenDeg, CamberTargetWords.Explain("/speedKmh", one.DegPerUnit * mPerKmh, units));
    }

    private static SensitivityResponse Sensitivity(string input, string unit, double value, double degPerUnit, double standardError, double leavesOpenDeg, string text) => new()
    {
        Input = input,
        Unit = unit,
        Value = value,
        DegPerUnit = degPerUnit,
        StandardError = standardError,
        LeavesOpenDeg = leavesOpenDeg,
        Text = text,
    };

    /// <summary>An axle's load stands where it was told: its scales go before.</summary>
    private static string LoadPointer(string place, CamberTargetRequest request) => (place, request.Vehicle.CornerWeightsKg) switch
    {
        ("/vehicle/frontAxleLoadKg", { FrontLeft: not null }) or ("/vehicle/rearAxleLoadKg", { RearLeft: not null }) => "/vehicle/cornerWeightsKg",
        _ => place,
    };

    /// <summary>Where the cornering stands in the request: of several corners all are moved alike, told by the hardest or tightest.</summary>
    private static string CorneringPointer(string place, CamberTargetRequest request) =>
        request.Corners is not null ? "/corners" : request.HistogramCsv is not null ? "/histogramCsv"
            : place == "/cornerRadiusM" && request.CornerRadiusM is null ? "/speedKmh" : place;

    private static BendMixResponse Corner(BendWork one) => new()
    {
        LateralG = one.Corner.Demand.LateralG,
        CornerRadiusM = one.Corner.Demand.RadiusM,
        Turn = one.Turn,
        InclinationDeg = one.InclinationAngleDeg,
        LoadN = one.LoadN,
        SlipDeg = one.SlipDeg,
        WorkPct = 100 * one.Work,
    };

    private static StraightRunningResponse? Straight(Vehicle vehicle, HandlingCar car, CarAxle at, double camberDeg)
    {
        if (vehicle.At(at).Tyre is not { } tyre) return null;
        var axle = car.At(at);
        var runs = StraightRunning.Compute(camberDeg, (axle.LeftToeDeg + axle.RightToeDeg) / 2, axle.LoadN / 2, axle.TyreRateNPerMm, TreadWidth.Mm(tyre).Value, axle.LoadedRadiusMm);
        return new StraightRunningResponse
        {
            InnerShoulderLoadPct = runs.InnerShoulderLoadPct,
            OuterShoulderLoadPct = runs.OuterShoulderLoadPct,
            InnerShoulderWearRatio = UncertaintyResponse.From(runs.InnerShoulderWearRatio),
        };
    }

    private static IEnumerable<UnknownResponse> Gaps(CamberTargetResult result, StraightRunningResponse? straight, CarAxle at)
    {
        if (result.LeftDeg is null) yield return Gap("/leftStaticCamberDeg", "no right turn is asked for", "/turn");
        if (result.RightDeg is null) yield return Gap("/rightStaticCamberDeg", "no left turn is asked for", "/turn");
        if (result.Advice.CamberDeg is null) yield return Gap("/recommended/camberDeg", CamberSign.IsDoubtful(result.SetCamberDeg) ? "the sign of the camber set now is doubtful" : "the camber set now was not given", at == CarAxle.Front ? "/vehicle/front/alignment/camberDeg" : "/vehicle/rear/alignment/camberDeg");
        if (result.MeanInclinationAtNearestDeg is null) yield return Gap("/nearest/meanInclinationDeg", "set so, the car has no equilibrium in one of the corners");
        if (at == CarAxle.Rear)
        {
            yield return Gap("/casterSaving", "the rear axle does not steer");
            yield return Gap("/casterSavingInTightest", "the rear axle does not steer");
        }
        else
        {
            if (result.SavedPerCasterDeg is null) yield return Gap("/casterSaving", "caster does not move the camber wanted, or the car has no equilibrium with a little more of it");
            if (result.SavedPerCasterInTightestDeg is null) yield return Gap("/casterSavingInTightest", "the tightest corner has no equilibrium with more caster");
        }

        if (straight is null)
        {
            var place = at == CarAxle.Front ? "/vehicle/front/tyre" : "/vehicle/rear/tyre";
            yield return Gap("/straight", "needs the tyre's marking", place);
            yield return Gap("brakingChangePct", "needs the tyre's marking", place);
        }

        static UnknownResponse Gap(string output, string reason, params string[] needs) => UnknownResponse.Create(output, reason, needs);
    }

    private static IEnumerable<AssumptionResponse> Assumptions(
        CamberTargetRequest request, Vehicle vehicle, ResolvedHandlingCar reading, GripScale scale, BendMixMapper corners, CamberTargetResult result)
    {
        foreach (var one in reading.Assumed) yield return Scalar(one, result);
        foreach (var one in CorneringAssumptions.Build(reading, scale)) yield return AssumptionResponse.From(one);
        if (request.TargetInclinationDeg is null)
            yield return Assumption("/targetInclinationDeg", 0, null, "from memory: a loaded radial usually likes 0 to −3° to the road", "The tread is to be flat on the road; the angle this tyre works best at is not given.");
        if (corners.IsTurnAssumed)
            yield return Assumption("/turn", null, "left", CommonPractice, "Corners that do not say their direction are taken as left ones; it matters only where the car differs from side to side.");
        if (request.LateralG is null && Math.Abs(corners.ShareSum - 100) > 0.5)
            yield return Assumption(request.Corners is null ? "/histogramCsv" : "/corners", corners.ShareSum, null, "the request", "The shares do not make 100; they are taken as ratios.");
        if (vehicle.At(request.Axle).AdjustableAsStated.Camber is null)
        {
            var place = $"/vehicle/{CorneringWords.Name(request.Axle)}/adjustable/camberDeg";
            yield return vehicle.At(request.Axle).Adjustable.Camber is null
                ? Assumption(place, null, "can be set as far as it takes", CommonPractice, "How far the camber can be set was not given, and this kind of suspension does not tell.")
                : Assumption(place, null, "cannot be set", CommonPractice, "How far the camber can be set was not given; this kind of suspension has nothing to set it with.");
        }

        yield return Assumption("/corners", null, "weighted by load times slip times time", "work of the tread against the road", "A corner counts by the work the outer tyre does in it; how closely lateral acceleration (0.03 g) and radius (10 %) are known is common practice, no source.");
        if (vehicle.At(request.Axle).Tyre is { } tyre)
        {
            var tread = TreadWidth.Mm(tyre);
            yield return Assumption($"/vehicle/{CorneringWords.Name(request.Axle)}/tyre", tread.Value, null, tread.Source, "Value is the width of the tread on the road in mm; with it the load moves across the tread on the straight.");
            yield return Assumption($"/vehicle/{CorneringWords.Name(request.Axle)}/tyre", 0.147, null, "judgement, 0 to 0.45; three of four published sets have no effect of inclination on the braking peak", "Value is the share of its friction a part of the tread loses where its pressure doubles: braking over camber goes by it.");
        }
    }

    /// <summary>The camber wanted at both ends of an assumed input's range.</summary>
    private static AssumptionResponse Scalar(AssumedInput one, CamberTargetResult result)
    {
        var effect = result.Sensitivities.FirstOrDefault(other => other.Place == "/vehicle" + one.Input.Place);
        var wanted = result.StaticCamberDeg.Value;
        return AssumptionResponse.From(one.ToAssumption()) with
        {
            Plausible = new PlausibleResponse { Lower = one.Lower, Upper = one.Upper },
            Moves = effect is null ? [] : [new MoveResponse { Output = "/staticCamberDeg/value", Lower = wanted + effect.AtLowerDeg, Upper = wanted + effect.AtUpperDeg }],
        };
    }

    private static AssumptionResponse Assumption(string input, double? value, string? text, string source, string reason) =>
        AssumptionResponse.From(new Assumption(input, value, text, source, reason));
}
