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
        var input = HandlingInputs.For(at).Camber;
        var straight = Straight(vehicle, reading.Car, at, wanted);
        return new CamberTargetAnswer
        {
            StaticCamberDeg = UncertaintyResponse.From(result.StaticCamberDeg.Ninety),
            LeftStaticCamberDeg = result.LeftDeg,
            RightStaticCamberDeg = result.RightDeg,
            Before = Setting(input.Read(reading.Car), result.MeanInclinationNowDeg),
            IsReachable = request.Adjustable?.CamberDeg is null ? null : result.NearestCamberDeg == wanted,
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
            Assumptions = [.. Assumptions(request, vehicle, reading, scale, corners, result)],
            Cautions = CautionResponse.From([.. CorneringCautions.OfAttitudes([.. result.Corners.Select(one => one.Attitude)]), .. CamberTargetCautions.Build(wanted), .. vehicle.SuspensionCautions(units)]),
        };

        CamberSettingResponse Setting(double camberDeg, double? meanInclinationDeg) => new()
        {
            StaticCamberDeg = camberDeg,
            MeanInclinationDeg = meanInclinationDeg,
            Straight = Straight(vehicle, reading.Car, at, camberDeg),
        };
    }

    private static SensitivityResponse Sensitivity(CamberSensitivity one, CamberTargetRequest request, UnitSystem units)
    {
        var input = one.Place is "/lateralG" or "/cornerRadiusM" ? CorneringPointer(one.Place, request) : LoadPointer(one.Place, request);
        return input == "/speedKmh"
            ? BySpeed(one, request.SpeedKmh!.Value, units)
            : Sensitivity(input, one.Unit, one.Value, one.DegPerUnit, one.StandardError, CamberTargetWords.Explain(one.Place, one.DegPerUnit, units));
    }

    /// <summary>With the lateral acceleration as it is the radius goes with the square of the speed.</summary>
    private static SensitivityResponse BySpeed(CamberSensitivity one, double speedKmh, UnitSystem units)
    {
        var mPerKmh = 2 * one.Value / speedKmh;
        return Sensitivity("/speedKmh", "Kmh", speedKmh, one.DegPerUnit * mPerKmh, one.StandardError / mPerKmh, CamberTargetWords.Explain("/speedKmh", one.DegPerUnit * mPerKmh, units));
    }

    private static SensitivityResponse Sensitivity(string input, string unit, double value, double degPerUnit, double standardError, string text) => new()
    {
        Input = input,
        Unit = unit,
        Value = value,
        DegPerUnit = degPerUnit,
        StandardError = standardError,
        LeavesOpenDeg = Math.Abs(degPerUnit) * standardError,
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
            BrakingPatchPct = runs.BrakingPatchPct,
            InnerShoulderWearRatio = UncertaintyResponse.From(runs.InnerShoulderWearRatio),
        };
    }

    private static IEnumerable<UnknownResponse> Gaps(CamberTargetResult result, StraightRunningResponse? straight, CarAxle at)
    {
        if (result.LeftDeg is null) yield return Gap("leftStaticCamberDeg", "no right turn is asked for", "/turn");
        if (result.RightDeg is null) yield return Gap("rightStaticCamberDeg", "no left turn is asked for", "/turn");
        if (result.MeanInclinationAtNearestDeg is null) yield return Gap("nearest/meanInclinationDeg", "set so, the car has no equilibrium in one of the corners");
        if (at == CarAxle.Rear)
        {
            yield return Gap("casterSaving", "the rear axle does not steer");
            yield return Gap("casterSavingInTightest", "the rear axle does not steer");
        }
        else
        {
            if (result.SavedPerCasterDeg is null) yield return Gap("casterSaving", "caster does not move the camber wanted, or the car has no equilibrium with a little more of it");
            if (result.SavedPerCasterInTightestDeg is null) yield return Gap("casterSavingInTightest", "the tightest corner has no equilibrium with more caster");
        }

        if (straight is null)
        {
            yield return Gap("straight", "needs the tyre's marking", at == CarAxle.Front ? "/vehicle/front/tyre" : "/vehicle/rear/tyre");
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
        yield return Assumption("/corners", null, "weighted by load times slip times time", "work of the tread against the road", "A corner counts by the work the outer tyre does in it; how closely lateral acceleration (0.03 g) and radius (10 %) are known is common practice, no source.");
        if (vehicle.At(request.Axle).Tyre is { } tyre)
        {
            var tread = TreadWidth.Mm(tyre);
            yield return Assumption($"/vehicle/{(request.Axle == CarAxle.Front ? "front" : "rear")}/tyre", tread.Value, null, tread.Source, "Value is the width of the tread on the road in mm; with it the load moves across the tread on the straight.");
        }
    }

    /// <summary>To first order: the sensitivity times the way to either end of the range.</summary>
    private static AssumptionResponse Scalar(AssumedInput one, CamberTargetResult result)
    {
        var slope = result.Sensitivities.FirstOrDefault(other => other.Place == "/vehicle" + one.Input.Place)?.DegPerUnit ?? 0;
        var wanted = result.StaticCamberDeg.Value;
        return AssumptionResponse.From(one.ToAssumption()) with
        {
            Plausible = new PlausibleResponse { Lower = one.Lower, Upper = one.Upper },
            Moves = slope == 0 ? [] : [new MoveResponse { Output = "/staticCamberDeg/value", Lower = wanted + (slope * (one.Lower - one.Value)), Upper = wanted + (slope * (one.Upper - one.Value)) }],
        };
    }

    private static AssumptionResponse Assumption(string input, double? value, string? text, string source, string reason) =>
        AssumptionResponse.From(new Assumption(input, value, text, source, reason));
}
