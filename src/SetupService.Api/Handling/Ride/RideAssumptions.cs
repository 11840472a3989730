using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling.Ride;

/// <summary>What a call on ride assumes, with how far its main outputs move.</summary>
internal static class RideAssumptions
{
    private static readonly Assumption LinearSpring = new(
        "/vehicle/front/spring/rateNPerMm", null, "springs and dampers as linear as their figures", "common practice, no source",
        "A progressive spring or a digressive damper has other figures at other travels and speeds.");

    /// <summary>All of it.</summary>
    public static AssumptionResponse[] List(RideEvaluation car, RideEvaluation? before, RideDetail detail)
    {
        var list = new List<AssumptionResponse>();
        foreach (var one in car.Reading.Assumed.Where(one => !HandlingInputs.IsOfGrip(one.Input))) list.Add(Scalar(car, one, detail));
        list.AddRange(AssumptionResponse.From(car.Reading.Notes));
        list.Add(AssumptionResponse.From(LinearSpring));
        if (before is not null && (car.HeightMm.Front is null || car.HeightMm.Rear is null))
        {
            list.Add(AssumptionResponse.From(new Assumption("/change", 0, null, "common practice, no source",
                "The springs' lengths do not give the ride height after the change; it is taken as unchanged, as with adjustable seats.")));
        }

        foreach (var at in (ReadOnlySpan<CarAxle>)[CarAxle.Front, CarAxle.Rear])
        {
            if (before is null || !SpringHeight.KeepsFreeLength(before.Stated.At(at).Spring, car.Stated.At(at).Spring)) continue;
            list.Add(AssumptionResponse.From(new Assumption(
                at == CarAxle.Front ? "/change/vehicle/front/spring/freeLengthMm" : "/change/vehicle/rear/spring/freeLengthMm", car.Stated.At(at).Spring.FreeLengthMm, null, "the spring before",
                "The change gives another rate and no free length; the new spring is taken to be as long as the one before, which decides the ride height.")));
        }

        list.AddRange(car.Car.Followed.Select(one => AssumptionResponse.From(one with { Input = "/change" + one.Input })));
        return [.. list];
    }

    private static AssumptionResponse Scalar(RideEvaluation car, AssumedInput one, RideDetail detail)
    {
        var plain = AssumptionResponse.From(one.ToAssumption()) with { Plausible = new PlausibleResponse { Lower = one.Lower, Upper = one.Upper } };
        if (detail != RideDetail.Full) return plain;
        var lower = one.Input.Put(car.Stands, one.Lower);
        var upper = one.Input.Put(car.Stands, one.Upper);
        return plain with
        {
            Moves = [.. ((MoveResponse?[])
            [
                Move(CarAxle.Front, "/front/rideFrequencyHz", axle => axle.RideFrequencyHz),
                Move(CarAxle.Rear, "/rear/rideFrequencyHz", axle => axle.RideFrequencyHz),
                Move(CarAxle.Front, "/front/dampingRatio/mean", axle => axle.MeanRatio),
                Move(CarAxle.Rear, "/rear/dampingRatio/mean", axle => axle.MeanRatio),
            ]).OfType<MoveResponse>()],
        };

        // An input of the other axle, or of the turn alone, moves none of them.
        MoveResponse? Move(CarAxle at, string output, Func<RideAxle, double?> figure) =>
            (Figure(lower, at, figure), Figure(upper, at, figure)) is var (atLower, atUpper) && atLower != atUpper
                ? new MoveResponse { Output = output, Lower = atLower, Upper = atUpper }
                : null;

        double? Figure(HandlingCar varied, CarAxle at, Func<RideAxle, double?> figure) => car.Varied(varied, at) is { } axle ? figure(axle) : null;
    }
}
