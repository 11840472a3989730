using SetupService.Domain.Handling.Cars;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>
/// The car's balance, linear about where it stands: what is out of balance, and the step of Newton's method that takes it away.
/// Derivation in docs/methods/cornering.
/// </summary>
/// <param name="Residual">What is out of balance, as a share of the weight.</param>
/// <param name="Change">The change of roll, heave and travels.</param>
internal readonly record struct BodyBalance(double Residual, BodyChange Change)
{
    // By the weight: a body that is held less against roll is taken to be held so much, and so goes on falling in long steps.
    private const double LeastResistanceMm = 1;

    /// <summary>Height of the sprung centre of gravity above the roll axis at rest, mm.</summary>
    public static double RollArmMm(HandlingCar car, CorneringAxle front, CorneringAxle rear) =>
        car.SprungHeightMm - ((car.SprungShareFront * front.RollCentreHeightMm) + ((1 - car.SprungShareFront) * rear.RollCentreHeightMm));

    /// <summary>The balance once the wheels are steered so much further, with the sine and cosine of roll.</summary>
    public static BodyBalance Compute(HandlingCar car, CorneringAxle front, CorneringAxle rear, double acceleration, double sin, double cos, double steer)
    {
        var rollArmMm = RollArmMm(car, front, rear);
        var mass = car.SprungMassKg;
        var share = car.SprungShareFront;
        var weight = mass * HandlingCar.StandardGravity;
        var height = car.SprungHeightMm + (share * front.HeaveMm) + ((1 - share) * rear.HeaveMm) - (rollArmMm * (1 - cos));
        var moment = (mass * acceleration * height) + (weight * rollArmMm * sin) + front.UnsprungMomentNmm + rear.UnsprungMomentNmm;
        var perRoll = (-mass * acceleration * rollArmMm * sin / cos) + (weight * rollArmMm);

        var frontBalance = AxleBalance.Create(front, steer);
        var rearBalance = AxleBalance.Create(rear, 0);
        var momentOff = (2 * frontBalance.MovedN * front.HalfTrackMm) + (2 * rearBalance.MovedN * rear.HalfTrackMm) - moment;

        // Each axle's load gives its heave by the roll; what is left is one equation for the roll.
        var frontHeave = frontBalance.HeaveFor(-frontBalance.OffN);
        var rearHeave = rearBalance.HeaveFor(-rearBalance.OffN);
        var frontMoment = frontBalance.Moment(frontHeave, front.HalfTrackMm);
        var rearMoment = rearBalance.Moment(rearHeave, rear.HalfTrackMm);
        var byFrontHeave = mass * acceleration * share;
        var byRearHeave = mass * acceleration * (1 - share);
        var fixedPart = momentOff + frontMoment.Fixed + rearMoment.Fixed - (byFrontHeave * frontHeave.Fixed) - (byRearHeave * rearHeave.Fixed);
        var rollPart = frontMoment.PerRoll + rearMoment.PerRoll - perRoll - (byFrontHeave * frontHeave.PerRoll) - (byRearHeave * rearHeave.PerRoll);

        // With nothing left that resists roll the body falls, until a stop holds it or it falls over.
        var leastPart = weight * LeastResistanceMm;
        var roll = -fixedPart / Math.Max(rollPart, leastPart);
        var (frontRise, rearRise) = (frontHeave.Fixed + (frontHeave.PerRoll * roll), rearHeave.Fixed + (rearHeave.PerRoll * roll));
        BodyChange change = new(roll, frontRise, rearRise, frontBalance.Travels(frontRise, roll), rearBalance.Travels(rearRise, roll), steer, rollPart > leastPart);
        var whole = front.StaticLoadN + rear.StaticLoadN;
        var residual = Math.Max(
            Math.Max(Math.Max(frontBalance.Largest, rearBalance.Largest), Math.Max(Math.Abs(frontBalance.OffN), Math.Abs(rearBalance.OffN))) / whole,
            Math.Abs(momentOff) / (whole * (front.HalfTrackMm + rear.HalfTrackMm)));
        return new(residual, change);
    }
}
