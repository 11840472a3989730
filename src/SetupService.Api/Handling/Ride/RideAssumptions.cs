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
        foreach (var one in car.Reading.Assumed)
        {
            if (!HandlingInputs.IsOfGrip(one.Input)) list.Add(Scalar(car, one, detail));
        }

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
        if (HandlingInputs.IsOfSideForce(one.Input)) return plain with { Moves = [] };
        var (lower, upper) = (one.Input.Put(car.Stands, one.Lower), one.Input.Put(car.Stands, one.Upper));
        var (front, rear) = (Varied(CarAxle.Front), Varied(CarAxle.Rear));
        return plain with
        {
            Moves = [.. ((MoveResponse?[])
            [
                Move(front, "/front/rideFrequencyHz", axle => axle.RideFrequencyHz),
                Move(rear, "/rear/rideFrequencyHz", axle => axle.RideFrequencyHz),
                Move(front, "/front/dampingRatio/mean", axle => axle.MeanRatio),
                Move(rear, "/rear/dampingRatio/mean", axle => axle.MeanRatio),
            ]).OfType<MoveResponse>()],
        };

        // The axle at both ends of the range; the one as it is where the input is none of its own.
        (RideAxle? Lower, RideAxle? Upper) Varied(CarAxle at) => (Build(lower, at), Build(upper, at));

        RideAxle? Build(HandlingCar varied, CarAxle at) => ReferenceEquals(varied.At(at), car.Stands.At(at)) ? car.Car.At(at) : car.Varied(varied, at);

        static MoveResponse? Move((RideAxle? Lower, RideAxle? Upper) axle, string output, Func<RideAxle, double?> figure) =>
            (Figure(axle.Lower, figure), Figure(axle.Upper, figure)) is var (atLower, atUpper) && atLower != atUpper
                ? new MoveResponse { Output = output, Lower = atLower, Upper = atUpper }
                : null;

        static double? Figure(RideAxle? axle, Func<RideAxle, double?> figure) => axle is null ? null : figure(axle);
    }
}
