using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment;

/// <summary>Says whether a stated error of the suspension's points acts in a check.</summary>
internal static class PointErrorUse
{
    /// <summary>The assumption to list; null where no error is stated.</summary>
    public static Assumption? Describe(FitmentContext car)
    {
        if (car.Axle.Suspension.PointErrorMm == 0) return null;
        var input = car.Position == CarAxle.Front ? "/vehicle/front/suspension/points/pointErrorMm" : "/vehicle/rear/suspension/points/pointErrorMm";
        return car.Travel switch
        {
            { Errors: not null } => new(input, null, "used for the tolerances inboard, outboard and at full lock", "derivation in docs/methods/fitment-clearance",
                "The 90 % range it leaves of the wheel's way sideways is added to the measuring error by squares."),
            { Upward: null } => new(input, null, "not used", "our choice, no source", "No travel of the suspension is counted here, so where its points stand makes no difference."),
            _ => new(input, null, "not used", "our choice, no source", "With one coordinate moved by it the suspension does not reach the travel, so what it leaves open is not known."),
        };
    }
}
