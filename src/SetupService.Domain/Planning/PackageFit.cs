using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Planning;

/// <summary>Whether the wheels and tyres of a package fit and carry the car: the check of each axle whose wheel or tyre the package changes, at the ride height it gives.</summary>
public sealed record PackageFit
{
    private static readonly CarAxle[] Axles = [CarAxle.Front, CarAxle.Rear];

    private PackageFit(IReadOnlyList<AxleFit> axles) => Checked = axles;

    /// <summary>The axles checked; empty where no wheel or tyre is changed.</summary>
    public IReadOnlyList<AxleFit> Checked { get; }

    /// <summary>The gravest verdict: fail, unknown, caution, pass.</summary>
    public CheckStatus Verdict => Checked.Count == 0 ? CheckStatus.Pass : Checked.Select(one => one.Sheet.Verdict).MaxBy(Gravity);

    /// <summary>Checks the wheels and tyres of a package.</summary>
    /// <param name="given">The car as given, with the fitting its gaps were measured with.</param>
    /// <param name="merged">The car with the values of all changes.</param>
    /// <param name="car">How it stands with them.</param>
    public static PackageFit Compute(Vehicle given, Vehicle merged, StandingCar car)
    {
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(merged);
        ArgumentNullException.ThrowIfNull(car);
        var list = new List<AxleFit>(2);
        foreach (var at in Axles)
        {
            var (before, after) = (given.At(at), merged.At(at));
            if (after is not { Wheel: { } wheel, Tyre: { } tyre } || IsAsFitted(before, wheel, tyre)) continue;
            var candidate = new Fitting(wheel, tyre);
            var context = FitmentContext.Prepare(Fitted(at), at, new CheckSettings());
            var sheet = new CheckSheet();
            FitmentCheck.Evaluate(context, candidate, sheet);
            list.Add(new(at, context, candidate, sheet));
        }

        return new(list);

        // Another tyre of the same marking takes the same room and carries the same load.
        static bool IsAsFitted(Axle before, Wheel wheel, Tyre tyre) => Equals(before.Wheel, wheel) && Equals(before.Tyre?.Marking, tyre.Marking);

        // The gaps are those around the fitting of today, at the height the springs of the package give; the other axle has what is put on it.
        Vehicle Fitted(CarAxle at) => merged.With(at, merged.At(at) with
        {
            Wheel = given.At(at).Wheel,
            Tyre = given.At(at).Tyre,
            RideHeightChangeMm = car.Stands.At(at).RideHeightChangeMm is var mm && mm != 0 ? mm : given.At(at).RideHeightChangeMm,
        });
    }

    /// <summary>True where a check fails that is not to be mended by work on the arches.</summary>
    /// <param name="archesUntouched">Whether the arches stay as they are.</param>
    public bool Fails(bool archesUntouched) => Checked.Any(one => archesUntouched ? one.Sheet.Verdict == CheckStatus.Fail : one.Sheet.Failed.Without(CheckId.OutboardClearance).Without(CheckId.ArchCover).Count > 0);

    private static int Gravity(CheckStatus status) => status switch
    {
        CheckStatus.Fail => 3,
        CheckStatus.Unknown => 2,
        CheckStatus.Caution => 1,
        _ => 0,
    };
}

/// <summary>The check of one axle.</summary>
/// <param name="Axle">Which axle.</param>
/// <param name="Car">The car under check.</param>
/// <param name="Candidate">The wheel and tyre.</param>
/// <param name="Sheet">How they were judged.</param>
public sealed record AxleFit(CarAxle Axle, FitmentContext Car, Fitting Candidate, CheckSheet Sheet);
