using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling.Ride;

/// <summary>Puts down how a car rides with all it rests on.</summary>
internal static class RideAnswers
{
    /// <summary>The answer: of the car after the change where there is one.</summary>
    public static RideAnswer Of(RideEvaluation car, RideEvaluation? before, DampingRange range) => new()
    {
        Front = Axle(car, before, CarAxle.Front, range),
        Rear = Axle(car, before, CarAxle.Rear, range),
        FlatRide = Flat(car),
        Before = before is null ? null : new RideBeforePart
        {
            Front = Axle(before, null, CarAxle.Front, range),
            Rear = Axle(before, null, CarAxle.Rear, range),
            FlatRide = Flat(before),
        },
        Unknown = [.. RideGaps.Of(car, before)],
        Method = "ride",
        Edition = Edition.Current,
        Assumptions = RideAssumptions.Of(car, before),
        Cautions = CautionResponse.Of([.. RideCautions.Build(car.Front, car.Rear), .. car.Stated.SuspensionCautions()]),
    };

    private static FlatRidePart Flat(RideEvaluation car)
    {
        var flat = new FlatRide(car.Rear.RideFrequencyHz / car.Front.RideFrequencyHz);
        return new FlatRidePart { FrequencyRatio = flat.FrequencyRatio, IsFlat = flat.IsFlat, Text = RideWords.Flat(flat) };
    }

    private static RideAxlePart Axle(RideEvaluation car, RideEvaluation? before, CarAxle at, DampingRange range)
    {
        var isFront = at == CarAxle.Front;
        var axle = isFront ? car.Front : car.Rear;
        return new RideAxlePart
        {
            SprungMassKg = axle.SprungMassKg,
            MotionRatio = axle.MotionRatio,
            SpringForceN = axle.SpringForceN,
            WheelRateNPerMm = axle.WheelRateNPerMm,
            WheelRates = [.. RideAxleBuilder.RatesOverTravel(car.Stands, at).Select(one => new TravelRatePart { TravelMm = one.TravelMm, MotionRatio = one.MotionRatio, WheelRateNPerMm = one.WheelRateNPerMm })],
            TyreRateNPerMm = axle.TyreRateNPerMm,
            RideRateNPerMm = axle.RideRateNPerMm,
            RideFrequencyHz = axle.RideFrequencyHz,
            SpringFrequencyHz = axle.SpringFrequencyHz,
            DampedFrequencyHz = axle.DampedFrequencyHz,
            WheelHopFrequencyHz = axle.WheelHopFrequencyHz,
            CriticalDampingNsPerM = axle.CriticalDampingNsPerM,
            DampingRatio = new DampingRatioPart { Bump = axle.BumpRatio, Rebound = axle.ReboundRatio, Mean = axle.MeanRatio },
            StaticDeflectionMm = axle.StaticDeflectionMm,
            SpringLengthMm = axle.SpringLengthMm,
            RideHeightChangeMm = isFront ? car.HeightMm.Front : car.HeightMm.Rear,
            BumpLeftMm = axle.BumpLeftMm,
            DroopLeftMm = axle.DroopLeftMm,
            StopMetAtVerticalG = axle.StopMetAtG,
            StopMetAtLateralG = car.StopMetAtLateralG(at),
            CoilClearanceMm = axle.CoilClearanceMm,
            SeatedAtDroopMm = axle.SeatedAtDroopMm,
            Dampers = new DampersPart
            {
                Verdict = range.Judge(axle.MeanRatio),
                Text = RideWords.Dampers(axle, isFront ? before?.Front : before?.Rear, range),
                Feel = RideWords.Feel(axle),
                LeastRatio = range.Minimum,
                MostRatio = range.Maximum,
                RangeSource = range.Source,
            },
        };
    }
}
