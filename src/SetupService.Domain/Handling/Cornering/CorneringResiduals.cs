using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering.Balance;
using SetupService.Domain.Handling.Cornering.Effects;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>
/// The equilibrium as a system of equations: its unknowns as a vector, and what is out of balance at any of their values, without solving. Whatever
/// <see cref="Solve(in CorneringDemand)"/> balances stands here too, so that derivatives of the system are derivatives of its solution.
/// </summary>
public sealed partial class CorneringSolver
{
    /// <summary>Number of unknowns, and of equations.</summary>
    internal const int UnknownCount = 9;

    /// <summary>
    /// Steps, one an unknown, at which central differences of the residuals lose least to curvature and rounding: sine of roll; travel of the front outer, front inner, rear outer
    /// and rear inner wheel, mm; steer, in units of the input; station of the turn's centre, mm; side force of the outer wheel in front and behind, N. Heave and slip are none of
    /// them: in any state each axle stands at the height at which it carries its load, and has the slip at which its tyres give its side force, so that the bend of their
    /// curves, sharp near the peak, is not in the way of a straight step.
    /// </summary>
    internal static ReadOnlySpan<double> UnknownSteps => [2e-6, 2e-3, 2e-3, 2e-3, 2e-3, 2e-3, 0.2, 0.1, 0.1];

    /// <summary>Copies the unknowns as they are, in the order of <see cref="UnknownSteps"/>.</summary>
    internal void CopyState(Span<double> state)
    {
        state[0] = Math.Sin(_rollRad);
        (state[1], state[2], state[3], state[4]) = (_front.Outer.TravelMm, _front.Inner.TravelMm, _rear.Outer.TravelMm, _rear.Inner.TravelMm);
        (state[5], state[6]) = (_steer, _centreStationMm);
        (state[7], state[8]) = (_front.Outer.SideForceN, _rear.Outer.SideForceN);
    }

    /// <summary>The same of a turn that is neither braked nor driven: lateral acceleration in g, radius in m.</summary>
    internal bool TryResiduals(ReadOnlySpan<double> state, double lateralG, double radiusM, Span<double> residuals) =>
        TryResiduals(state, new CorneringDemand(lateralG, radiusM, _turn), residuals);

    /// <summary>
    /// Puts the car into a state and computes what is out of balance there; all zero in a solution. What the solver tells afterwards (roll, grip used, attitude) is of this
    /// state, and the next turn is solved from it. Allocates nothing.
    /// </summary>
    /// <param name="state">The unknowns, in the order of <see cref="UnknownSteps"/>.</param>
    /// <param name="demand">The turn; its direction is the solver's.</param>
    /// <param name="residuals">
    /// Receives, in this order: tyre load less suspension load of the four wheels, N; moment about the x axis, N at half the sum of both tracks; heading of the front axle,
    /// degrees; station of the turn's centre, mm; side force by the outer tyre in front and behind less that of the state, N.
    /// </param>
    /// <param name="atPeak">The axle whose tyres stand at the slip they have where it uses all its grip, whatever it uses in this state, so that nothing kinks about its limit; null = none.</param>
    /// <param name="isRough">True where slip need not be found to the last digit, as <see cref="Tyres.TyrePair.RoughStepDeg"/> has it.</param>
    /// <returns>False where a wheel cannot be there, both tyres of an axle have left the road, or no slip gives its side force.</returns>
    internal bool TryResiduals(ReadOnlySpan<double> state, in CorneringDemand demand, Span<double> residuals, CarAxle? atPeak = null, bool isRough = false)
    {
        var acceleration = demand.LateralG * HandlingCar.StandardGravity;
        var radiusMm = demand.RadiusM * 1000;
        var forces = LongitudinalForces.Compute(_car, demand);
        Demand(acceleration, forces);
        _rollRad = Math.Asin(Math.Clamp(state[0], -1, 1));
        (_front.Outer.TravelMm, _front.Inner.TravelMm, _rear.Outer.TravelMm, _rear.Inner.TravelMm) = (state[1], state[2], state[3], state[4]);
        _steer = state[5];
        _centreStationMm = Math.Clamp(state[6], -FurthestCentre * radiusMm, FurthestCentre * radiusMm);
        _centreMm = CentreMm(radiusMm);
        var (sin, cos) = Math.SinCos(_rollRad);
        _needsPoses = !TryUpdatePoses();
        if (_needsPoses) return false;
        _front.CarryLoad(sin, cos);
        _rear.CarryLoad(sin, cos);

        // How longitudinal forces are shared goes by the loads alone; what they turn the car by is part of the side forces.
        if (!forces.AreNone)
        {
            _front.ApplyBody(sin, cos);
            _rear.ApplyBody(sin, cos);
            ShareLongitudinal();
        }

        _front.PlaceSideForce(state[7], acceleration);
        _rear.PlaceSideForce(state[8], acceleration);
        _front.ApplyBody(sin, cos);
        _rear.ApplyBody(sin, cos);
        (residuals[0], residuals[1]) = _front.Residuals(0);
        (residuals[2], residuals[3]) = _rear.Residuals(0);
        residuals[4] = BodyBalance.MomentOffNmm(_body, _front, _rear, acceleration, sin, cos, _front.MovedN, _rear.MovedN) / (_front.HalfTrackMm + _rear.HalfTrackMm);
        if (_front.TrySlip(_centreStationMm, _centreMm, atPeak == CarAxle.Front, isRough) is not { } frontOuterN
            || _rear.TrySlip(_centreStationMm, _centreMm, atPeak == CarAxle.Rear, isRough) is not { } rearOuterN) return false;
        residuals[5] = _front.SlipDeg + PathDeg(_front, _centreMm) - _front.TyreHeadingDeg;
        residuals[6] = _centreStationMm - CentreStationMm(_centreMm);
        (residuals[7], residuals[8]) = (frontOuterN - state[7], rearOuterN - state[8]);
        return true;
    }

    /// <summary>
    /// Moves the travels of a state to where wheels whose tyres are of another rate than those of a similar car carry the load that car's carry in the state last put: that is far nearer to balance
    /// than the same travels, since tyres are stiffer than springs. True where there are any.
    /// </summary>
    /// <param name="state">The unknowns, in the order of <see cref="UnknownSteps"/>.</param>
    /// <param name="other">The similar car's solver.</param>
    internal bool KeepTyreLoads(Span<double> state, CorneringSolver other)
    {
        var (front, rear) = (_front.MoreDeflected(other._front), _rear.MoreDeflected(other._rear));
        (state[1], state[2], state[3], state[4]) = (state[1] + front.Outer, state[2] + front.Inner, state[3] + rear.Outer, state[4] + rear.Inner);
        return front != (0, 0) || rear != (0, 0);
    }

    /// <summary>Share of its grip the axle that stands at its peak uses in the state last put.</summary>
    internal double UsedAtPeak(CarAxle at) => (at == CarAxle.Front ? _front : _rear).UsedAtPeak;

    /// <summary>True where a state in which nothing is out of balance is an equilibrium: springs, bars or stops resist roll, the inner side stands, and no outer wheel is beyond what was read of it.</summary>
    internal bool IsSolution(double lateralG)
    {
        var (sin, cos) = Math.SinCos(_rollRad);
        return IsStanding() && Reached() is null && BodyBalance.Compute(_body, _front, _rear, lateralG * HandlingCar.StandardGravity, sin, cos, 0).Change.IsHeld;
    }

    /// <summary>The figures inputs are followed in, of the turn last solved or the state last put. Allocates nothing.</summary>
    internal TurnFigures Figures()
    {
        var figures = new TurnFigures { RollDeg = RollDeg, SteerDeg = _front.HeadingDeg };
        foreach (var position in (ReadOnlySpan<WheelPosition>)[WheelPosition.FrontLeft, WheelPosition.FrontRight, WheelPosition.RearLeft, WheelPosition.RearRight])
            figures.Set(position, Wheel(position).LoadN, Wheel(position).InclinationAngleDeg);
        return figures;
    }

    /// <summary>Inclination of a wheel to the road, degrees, in the turn last solved or the state last put.</summary>
    internal double InclinationAngleDeg(WheelPosition wheel) => Wheel(wheel).InclinationAngleDeg;

    /// <summary>Travel of an axle's outer wheel from ride height, mm, in the turn last solved or the state last put.</summary>
    internal double OuterTravelMm(CarAxle at) => (at == CarAxle.Front ? _front : _rear).Outer.TravelMm;

    /// <summary>Load of both inner wheels, N, in the turn last solved or the state last put; where it is gone the car rolls over.</summary>
    internal double InnerLoadN => _front.Inner.LoadN + _rear.Inner.LoadN;

    /// <summary>Load of an axle's inner wheel, N, in the turn last solved or the state last put.</summary>
    internal double InnerLoadOfN(CarAxle at) => (at == CarAxle.Front ? _front : _rear).Inner.LoadN;

    /// <summary>The same at rest, N.</summary>
    internal double InnerStaticLoadOfN(CarAxle at) => (at == CarAxle.Front ? _front : _rear).Inner.StaticLoadN;

    /// <summary>True where all wheels stand on the road and their springs, on no stop, but for the outer wheel of an axle, which may be on its bump stop.</summary>
    internal bool StandsAsAtRest(CarAxle? onStop) => (Contacts & WheelContacts & ~(onStop switch { CarAxle.Front => OuterBump, CarAxle.Rear => OuterBump << (2 * WheelBits), _ => 0 })) == RestContacts;

    // What carries a wheel takes so many bits: the front outer, front inner, rear outer and rear inner wheel, from below.
    private const int WheelBits = 5;
    private const int EachWheel = 1 | (1 << WheelBits) | (1 << (2 * WheelBits)) | (1 << (3 * WheelBits));

    // The bump stop of the front outer wheel, as it gives way and solid; road and spring of each wheel.
    private const int OuterBump = 0x14;
    private const int RestContacts = 0x3 * EachWheel;

    /// <summary>Load of both inner wheels at rest, N.</summary>
    internal double InnerStaticLoadN => _front.Inner.StaticLoadN + _rear.Inner.StaticLoadN;

    /// <summary>What carries the four wheels, and which axle's tyres are raised, in the state last put.</summary>
    internal int Contacts => (_front.IsRaised ? 1 << (4 * WheelBits) : 0) | (_rear.IsRaised ? 1 << ((4 * WheelBits) + 1) : 0)
        | _front.Outer.Contacts | (_front.Inner.Contacts << WheelBits) | (_rear.Outer.Contacts << (2 * WheelBits)) | (_rear.Inner.Contacts << (3 * WheelBits));

    /// <summary>What of <see cref="Contacts"/> but the road would carry the four wheels a step from the state last put.</summary>
    /// <param name="steps">The step, in the order of <see cref="UnknownSteps"/>.</param>
    internal int CarriedBy(ReadOnlySpan<double> steps) =>
        _front.Outer.CarriedBy(steps[1]) | (_front.Inner.CarriedBy(steps[2]) << WheelBits) | (_rear.Outer.CarriedBy(steps[3]) << (2 * WheelBits)) | (_rear.Inner.CarriedBy(steps[4]) << (3 * WheelBits));

    /// <summary>The bits of <see cref="Contacts"/> that tell of the wheels.</summary>
    internal const int WheelContacts = 0x1F * EachWheel;

    /// <summary>Those of them that tell of bump stops.</summary>
    internal const int BumpContacts = 0x4 * EachWheel;

    /// <summary>Those of them that tell of the road.</summary>
    internal const int RoadContacts = EachWheel;

    /// <summary>True where an unknown, in the order of <see cref="UnknownSteps"/>, is the travel of a wheel that one of these bits of <see cref="Contacts"/> tells of.</summary>
    internal static bool IsTravelOf(int unknown, int contacts) => unknown is >= 1 and <= 4 && ((contacts >> (WheelBits * (unknown - 1))) & 0x1F) != 0;

    private CorneringWheel Wheel(WheelPosition position) => position switch
    {
        WheelPosition.FrontLeft => _front.At(WheelSide.Left),
        WheelPosition.FrontRight => _front.At(WheelSide.Right),
        WheelPosition.RearLeft => _rear.At(WheelSide.Left),
        _ => _rear.At(WheelSide.Right),
    };

    /// <summary>Station of the turn's centre that the path of the rear wheels asks for, mm, the centre being this far to the side.</summary>
    private double CentreStationMm(double centreMm)
    {
        var (sin, cos) = Math.SinCos(double.DegreesToRadians(_rear.TyreHeadingDeg - _rear.SlipDeg));
        return _rear.StationMm - (centreMm * sin / cos);
    }
}
