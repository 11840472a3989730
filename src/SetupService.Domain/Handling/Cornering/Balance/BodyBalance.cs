using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering.Balance;

/// <summary>
/// The car's equilibrium equations, linearised about the present state: the residual and the Newton step.
/// Derivation in docs/methods/cornering.
/// </summary>
/// <param name="Residual">Largest residual, as a share of the weight.</param>
/// <param name="Change">The change of roll, heave and travels.</param>
internal readonly record struct BodyBalance(double Residual, BodyChange Change)
{
    // Least roll stiffness, as a height times the weight: a body with less is given this much, so that it goes on rolling in long steps.
    private const double LeastResistanceMm = 1;

    /// <summary>Height of the sprung centre of gravity above the roll axis at rest, mm.</summary>
    public static double RollArmMm(in SprungBody body, CorneringAxle front, CorneringAxle rear) =>
        body.HeightMm - ((body.ShareFront * front.RollCentreHeightMm) + ((1 - body.ShareFront) * rear.RollCentreHeightMm));

    /// <summary>Residual of the moment about the x axis, N mm: what these loads moved across each axle since rest, N, make less the car's own.</summary>
    public static double MomentOffNmm(
        in SprungBody body, CorneringAxle front, CorneringAxle rear, double acceleration, double sin, double cos, double frontMovedN, double rearMovedN)
    {
        var rollArmMm = RollArmMm(body, front, rear);
        var (mass, share) = (body.MassKg, body.ShareFront);
        var height = body.HeightMm + (share * front.HeaveMm) + ((1 - share) * rear.HeaveMm) - (rollArmMm * (1 - cos));
        var moment = (mass * acceleration * height) + (mass * HandlingCar.StandardGravity * rollArmMm * sin) + front.UnsprungMomentNmm + rear.UnsprungMomentNmm;
        return (2 * frontMovedN * front.HalfTrackMm) + (2 * rearMovedN * rear.HalfTrackMm) - moment;
    }

    /// <summary>Computes residual and step after this much more steer, at this sine and cosine of roll.</summary>
    public static BodyBalance Compute(in SprungBody body, CorneringAxle front, CorneringAxle rear, double acceleration, double sin, double cos, double steer)
    {
        var rollArmMm = RollArmMm(body, front, rear);
        var (mass, share) = (body.MassKg, body.ShareFront);
        var weight = mass * HandlingCar.StandardGravity;
        var perRoll = (-mass * acceleration * rollArmMm * sin / cos) + (weight * rollArmMm);

        var frontBalance = AxleBalance.Create(front, steer);
        var rearBalance = AxleBalance.Create(rear, 0);
        var momentOff = MomentOffNmm(body, front, rear, acceleration, sin, cos, frontBalance.MovedN, rearBalance.MovedN);

        // Each axle's load equation gives its heave as a function of roll, which leaves one equation for roll.
        var frontHeave = frontBalance.HeaveFor(-frontBalance.OffN);
        var rearHeave = rearBalance.HeaveFor(-rearBalance.OffN);
        var frontMoment = frontBalance.Moment(frontHeave, front.HalfTrackMm);
        var rearMoment = rearBalance.Moment(rearHeave, rear.HalfTrackMm);
        var byFrontHeave = mass * acceleration * share;
        var byRearHeave = mass * acceleration * (1 - share);
        var fixedPart = momentOff + frontMoment.Fixed + rearMoment.Fixed - (byFrontHeave * frontHeave.Fixed) - (byRearHeave * rearHeave.Fixed);
        var rollPart = frontMoment.PerRoll + rearMoment.PerRoll - perRoll - (byFrontHeave * frontHeave.PerRoll) - (byRearHeave * rearHeave.PerRoll);

        // Without roll stiffness the body goes on rolling until a stop holds it or it rolls over.
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

/// <summary>What counts of a car's sprung mass.</summary>
/// <param name="MassKg">It, kg.</param>
/// <param name="ShareFront">The share of it that the front axle carries.</param>
/// <param name="HeightMm">Height of its centre of gravity above the ground at rest, mm.</param>
internal readonly record struct SprungBody(double MassKg, double ShareFront, double HeightMm)
{
    /// <summary>A car's.</summary>
    public static SprungBody From(HandlingCar car) => new(car.SprungMassKg, car.SprungShareFront, car.SprungHeightMm);
}

/// <summary>One Newton step of the body and its wheels: roll by its sine, heave and travels in mm, steer in units of the input; IsHeld is true when springs, bars or stops resist roll here.</summary>
internal readonly record struct BodyChange(
    double RollSine, double FrontHeaveMm, double RearHeaveMm, (double Outer, double Inner) Front, (double Outer, double Inner) Rear, double Steer, bool IsHeld)
{
    public double LargestTravelMm =>
        Math.Max(Math.Max(Math.Abs(Front.Outer), Math.Abs(Front.Inner)), Math.Max(Math.Abs(Rear.Outer), Math.Abs(Rear.Inner)));

    /// <summary>The change of an axle's outer wheel's travel, mm.</summary>
    public double OuterMm(CarAxle at) => at == CarAxle.Front ? Front.Outer : Rear.Outer;

    /// <summary>So much of the way from this step to another; beyond it where the share is above 1.</summary>
    public BodyChange Towards(in BodyChange other, double share) => this with
    {
        RollSine = Between(RollSine, other.RollSine, share),
        FrontHeaveMm = Between(FrontHeaveMm, other.FrontHeaveMm, share),
        RearHeaveMm = Between(RearHeaveMm, other.RearHeaveMm, share),
        Front = (Between(Front.Outer, other.Front.Outer, share), Between(Front.Inner, other.Front.Inner, share)),
        Rear = (Between(Rear.Outer, other.Rear.Outer, share), Between(Rear.Inner, other.Rear.Inner, share)),
    };

    private static double Between(double one, double other, double share) => one + (share * (other - one));
}

/// <summary>The change of steer that side forces and path need.</summary>
/// <param name="Steer">Change of steer, in units of the input.</param>
/// <param name="MovedN">Sum of the last changes of side forces, steer and turn centre, the latter two as shares of the weight, N: 0 when converged.</param>
internal readonly record struct SteerSolution(double Steer, double MovedN);

/// <summary>Load, inclination and heading of a tyre, from which its side force and slip angle follow.</summary>
/// <param name="LoadN">Load, N; not positive where it is off the road.</param>
/// <param name="InclinationAngleDeg">Inclination to the road, degrees.</param>
/// <param name="HeadingDeg">Heading against the body, degrees, positive = into the turn, without compliance steer.</param>
internal readonly record struct TyrePose(double LoadN, double InclinationAngleDeg, double HeadingDeg);
