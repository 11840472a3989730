using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling.Ride;

/// <summary>Puts down how a car rides with all it rests on.</summary>
internal static class RideAnswers
{
    /// <summary>The answer: of the car after the change where there is one.</summary>
    public static RideAnswer Create(RideEvaluation car, RideEvaluation? before, DampingRange range, UnitSystem units, RideDetail detail) => new()
    {
        Front = Axle(car, before, CarAxle.Front, range, detail),
        Rear = Axle(car, before, CarAxle.Rear, range, detail),
        FlatRide = Flat(car),
        Before = before is null ? null : new RideStateResponse
        {
            Front = Axle(before, null, CarAxle.Front, range, detail),
            Rear = Axle(before, null, CarAxle.Rear, range, detail),
            FlatRide = Flat(before),
        },
        Unknown = [.. RideGaps.Find(car, before, detail), .. car.Car.Unknown.Select(RideGaps.OfChange)],
        Method = "ride",
        Edition = Edition.Current,
        Next = NextCalls.AfterRide,
        Assumptions = RideAssumptions.List(car, before, detail),
        Cautions = CautionResponse.From([.. RideCautions.Build(car.Front, car.Rear, car.HeightMm, units), .. car.Stated.SuspensionCautions(units)]),
    };

    private static FlatRideResponse Flat(RideEvaluation car)
    {
        var flat = car.FlatRide;
        return new FlatRideResponse { FrequencyRatio = flat.FrequencyRatio, IsFlat = flat.IsFlat, Text = car.FlatRideText };
    }

    private static TravelRateResponse[] Rates(IReadOnlyList<TravelRate> rates)
    {
        var parts = new TravelRateResponse[rates.Count];
        for (var i = 0; i < parts.Length; i++) parts[i] = new TravelRateResponse { TravelMm = rates[i].TravelMm, SpringMotionRatio = rates[i].MotionRatio, WheelRateNPerMm = rates[i].WheelRateNPerMm };
        return parts;
    }

    private static RideAxleResponse Axle(RideEvaluation car, RideEvaluation? before, CarAxle at, DampingRange range, RideDetail detail)
    {
        var isFront = at == CarAxle.Front;
        var axle = isFront ? car.Front : car.Rear;
        return new RideAxleResponse
        {
            SprungMassKg = axle.SprungMassKg,
            SpringMotionRatio = axle.MotionRatio,
            SpringForceN = axle.SpringForceN,
            WheelRateNPerMm = axle.WheelRateNPerMm,
            WheelRates = Rates(RideAxleBuilder.RatesOverTravel(car.Stands, at)),
            VerticalRateNPerMm = axle.TyreRateNPerMm,
            RideRateNPerMm = axle.RideRateNPerMm,
            RideFrequencyHz = axle.RideFrequencyHz,
            SpringFrequencyHz = axle.SpringFrequencyHz,
            DampedFrequencyHz = axle.DampedFrequencyHz,
            WheelHopFrequencyHz = axle.WheelHopFrequencyHz,
            CriticalDampingNsPerM = axle.CriticalDampingNsPerM,
            DampingRatio = new DampingRatioResponse { Bump = axle.BumpRatio, Rebound = axle.ReboundRatio, Mean = axle.MeanRatio },
            StaticDeflectionMm = axle.StaticDeflectionMm,
            SpringLengthMm = axle.SpringLengthMm,
            RideHeightChangeMm = isFront ? car.HeightMm.Front : car.HeightMm.Rear,
            BumpLeftMm = axle.BumpLeftMm,
            DroopLeftMm = axle.DroopLeftMm,
            StopMetAtVerticalG = axle.StopMetAtG,
            StopMetAtLateralG = detail == RideDetail.Full ? car.StopMetAtLateralG(at) : null,
            CoilClearanceMm = axle.CoilClearanceMm,
            SeatedAtDroopMm = axle.SeatedAtDroopMm,
            Dampers = new DampersResponse
            {
                Verdict = range.Judge(axle.MeanRatio),
                Text = RideWords.Dampers(axle, isFront ? before?.Front : before?.Rear, range, car.Reading.AssumedFor(HandlingInputs.For(at).DamperMotionRatio)),
                Feel = RideWords.Feel(axle),
                DampingRatioRange = new RangeResponse { From = range.From, To = range.To },
                RangeSource = range.Source,
            },
        };
    }
}

/// <summary>What an answer on ride leaves null, and why.</summary>
internal static class RideGaps
{
    /// <summary>Of the car, and of the car before where something was changed.</summary>
    public static IEnumerable<UnknownResponse> Find(RideEvaluation car, RideEvaluation? before, RideDetail detail) =>
        Find(car, "", detail).Concat(before is null ? [] : Find(before, "/before", detail));

    /// <summary>What a change moves by an amount nobody can tell.</summary>
    public static UnknownResponse OfChange(ChangeGap gap) => UnknownResponse.Create(
        $"/change/vehicle{CarChange.PlaceOf(gap.At)}/{gap.Figure switch { FollowingFigure.Track => "trackMm", FollowingFigure.UnsprungMass => "unsprungMassKg", _ => "rideHeightChangeMm" }}",
        gap.Reason,
        [.. gap.Needs.Select(need => "/vehicle" + need)]);

    private static IEnumerable<UnknownResponse> Find(RideEvaluation car, string place, RideDetail detail) =>
        Find(car, CarAxle.Front, $"{place}/front", detail).Concat(Find(car, CarAxle.Rear, $"{place}/rear", detail));

    private static IEnumerable<UnknownResponse> Find(RideEvaluation car, CarAxle at, string place, RideDetail detail)
    {
        var (axle, heightMm) = at == CarAxle.Front ? (car.Front, car.HeightMm.Front) : (car.Rear, car.HeightMm.Rear);
        var given = at == CarAxle.Front ? "/vehicle/front" : "/vehicle/rear";
        const string Damper = "needs bumpNsPerM and reboundNsPerM of the damper; a usual damper would be a guess";
        if (axle.BumpRatio is null) yield return Gap("/dampingRatio/bump", Damper, OfDamper()[0]);
        if (axle.ReboundRatio is null) yield return Gap("/dampingRatio/rebound", Damper, OfDamper()[1]);
        if (axle.MeanRatio is null)
        {
            yield return Gap("/dampingRatio/mean", Damper, OfDamper());
            yield return Gap("/dampedFrequencyHz", Damper, OfDamper());
            yield return Gap("/dampers/feel", Damper, OfDamper());
        }

        if (axle.SpringLengthMm is null) yield return Gap("/springLengthMm", "needs the spring's freeLengthMm or installedLengthMm", OfLength());
        if (heightMm is null) yield return Gap("/rideHeightChangeMm", RideWords.HeightUnknown, OfLength());
        if (axle.BumpLeftMm is null)
        {
            yield return Gap("/bumpLeftMm", "needs bumpTravelMm", given + "/bumpTravelMm");
            yield return Gap("/stopMetAtVerticalG", "needs bumpTravelMm", given + "/bumpTravelMm");
            yield return Gap("/stopMetAtLateralG", "needs bumpTravelMm", given + "/bumpTravelMm");
        }
        else if (car.Stands.WheelbaseMm is null)
        {
            yield return Gap("/stopMetAtLateralG", "needs wheelbaseMm", "/vehicle/wheelbaseMm");
        }
        else if (detail != RideDetail.Full)
        {
            yield return Gap("/stopMetAtLateralG", "not asked for; detail=full works it out");
        }
        else if (car.StopMetAtLateralG(at) is null)
        {
            yield return Gap("/stopMetAtLateralG", "the car rolls over, or a wheel cannot follow, before this stop is met");
        }

        if (axle.DroopLeftMm is null) yield return Gap("/droopLeftMm", "needs reboundTravelMm", given + "/reboundTravelMm");
        if (axle.SeatedAtDroopMm is null) yield return Gap("/seatedAtDroopMm", "needs reboundTravelMm", given + "/reboundTravelMm");
        if (axle.CoilClearanceMm is null) yield return Gap("/coilClearanceMm", "needs the spring's solidLengthMm, its freeLengthMm or installedLengthMm, and bumpTravelMm", [given + "/spring/solidLengthMm", .. OfLength(), given + "/bumpTravelMm"]);

        string[] OfDamper() => [given + "/damper/bumpNsPerM", given + "/damper/reboundNsPerM"];

        string[] OfLength() => [given + "/spring/freeLengthMm", given + "/spring/installedLengthMm"];

        UnknownResponse Gap(string output, string reason, params string[] needs) =>
            UnknownResponse.Create(place + output, reason, needs);
    }
}
