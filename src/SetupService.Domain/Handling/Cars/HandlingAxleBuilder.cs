using SetupService.Domain.Answers;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cars;

/// <summary>Makes one axle ready for the handling model: how it moves is asked of its <see cref="SuspensionModel"/>.</summary>
internal static class HandlingAxleBuilder
{
    // Points and track that differ by more than this, mm, describe two states of the car.
    private const double TrackAgreementMm = 10;

    // How far the friction of one axle's tyres may be off against the other's, as a share (90 %); judgement.
    private const double OtherTyreShare = 0.03;

    /// <summary>The axle; null where its points or readings make no corner. Loads, track (or points) and spring rate are there.</summary>
    public static HandlingAxle? Build(Vehicle vehicle, CarAxle at, List<AssumedInput> assumed, List<Assumption> notes, UnitSystem units)
    {
        var axle = vehicle.At(at);
        var (left, right) = StaticLoads.Compute(vehicle, at) is { } loads ? (loads.LeftN, loads.RightN) : (0, 0);
        var list = new HandlingAxleAssumptions(at, assumed, notes, units);
        var suspension = axle.Suspension;
        if (suspension.Contradictions.Count > 0) return null;

        var tyreRate = axle.Tyre?.VerticalRateNPerMm ?? list.Add(list.Inputs.TyreRate, TypicalValues.TyreRateNPerMm(axle.Tyre),
            "The tyre's vertical rate stands in series with the springs: it lets the body roll further and lowers the frequencies.");
        var radiusMm = Radius(vehicle, at, list);
        var steers = at == CarAxle.Front;
        var camber = (axle.Left.CamberDeg, axle.Right.CamberDeg);
        var leftCamber = suspension.ReadCamberDeg ?? camber.Item1 ?? list.Add(list.Inputs.Camber, TypicalValues.CamberDeg(at), "The camber set is where the inclination starts from.");
        var toe = (axle.Left.ToeDeg, axle.Right.ToeDeg);
        var leftToe = toe.Item1 ?? suspension.ReadToeDeg ?? list.Add(list.Inputs.Toe, TypicalValues.ToeDeg(at), "Toe enters each wheel's slip angle.");
        if (suspension.AtStated(new() { CamberDeg = leftCamber, ToeDeg = leftToe, LoadedRadiusMm = radiusMm, Motion = AxleMotion.Opposite }) is not { } told) return null;
        var tellsAxis = suspension.Tells.HasFlag(SuspensionFigures.SteeringAxis);
        var caster = tellsAxis ? told.CasterDeg ?? 0
            : !steers ? axle.Left.CasterDeg ?? 0
            : axle.Left.CasterDeg ?? told.CasterDeg ?? list.Add(list.Inputs.Caster, TypicalValues.CasterDeg, "Caster leans the outer wheel into the turn as it steers.");
        var inclination = tellsAxis || !steers
            ? (tellsAxis ? told.SteeringAxisInclinationDeg : null) ?? axle.Left.SteeringAxisInclinationDeg ?? 0
            : axle.Left.SteeringAxisInclinationDeg ?? told.SteeringAxisInclinationDeg ?? list.Add(list.Inputs.Inclination, TypicalValues.SteeringAxisInclinationDeg(suspension.Layout), "Steering-axis inclination leans a steered wheel out.");
        var motionRatio = told.SpringMotionRatio ?? axle.Spring.MotionRatio ?? list.Add(list.Inputs.MotionRatio, TypicalValues.MotionRatio(suspension.Layout),
            "The spring acts at the wheel with the square of its motion ratio.");
        list.Unused(axle, told, steers);
        return new HandlingAxle
        {
            Suspension = suspension,
            LeftLoadN = left,
            RightLoadN = right,
            TrackMm = Track(axle, told, list),
            UnsprungMassKg = axle.UnsprungMassKg ?? list.Add(list.Inputs.UnsprungMass, TypicalValues.UnsprungMassKg(StaticLoads.CarMassKg(vehicle) ?? 0, suspension.Layout),
                "The unsprung mass moves its own load across the axle, and what it weighs the springs do not carry."),
            LoadedRadiusMm = radiusMm,
            TyreRateNPerMm = tyreRate,
            CorneringStiffnessNPerDeg = axle.Tyre?.CorneringStiffnessNPerDeg,
            TyreNominalLoadN = list.Add(list.Inputs.TyreNominalLoad, axle.Tyre is { } tyre ? TyreTypicals.NominalLoadN(tyre.Marking) : TyreTypicals.NominalLoadN(StaticLoads.MeanOfWheelsN(vehicle)),
                "Value is the tyre's nominal load, N, the measure of its size: a larger tyre works at a lower share of it, and grips and steers better under the same load."),
            TyreFriction = Friction(axle.Tyre?.Category, list),
            SpringRateNPerMm = axle.Spring.RateNPerMm ?? 0,
            MotionRatio = motionRatio,
            DamperMotionRatio = told.DamperMotionRatio ?? axle.Damper.MotionRatio ?? list.Add(list.Inputs.DamperMotionRatio, TypicalValues.DamperMotionRatio(suspension.Layout, motionRatio),
                "Damper and bump stop act at the wheel with the square of their motion ratio."),
            BarRollRateNmPerDeg = axle.BarRollRateNmPerDeg ?? list.Add(list.Inputs.BarRollRate, TypicalValues.BarRollRateNmPerDeg(at, axle.Spring.RateNPerMm ?? 0, motionRatio, Track(axle, told, null)),
                "No bar was given, and most cars have one: a typical one is taken. A bar lets the body roll less and moves load transfer to its axle; 0 says that there is none."),
            RollCentreHeightMm = told.RollCentreHeightMm ?? axle.RollCentreHeightMm ?? list.Add(list.Inputs.RollCentreHeight, TypicalValues.RollCentreHeightMm(suspension.Layout, at),
                "The height of the roll centre decides what crosses the axle through the links and what rolls the body."),
            SwingArmMm = !suspension.Tells.HasFlag(SuspensionFigures.CamberOverTravel)
                ? list.Add(list.Inputs.SwingArm, TypicalValues.SwingArmMm(suspension.Layout, at), "Without points or readings camber is taken to change evenly with travel, about a front-view swing arm of this length in mm.")
                : TypicalValues.SwingArmMm(suspension.Layout, at).Value,
            BumpTravelMm = axle.BumpTravelMm ?? list.NoBumpStop(),
            ReboundTravelMm = axle.ReboundTravelMm ?? list.NoDroopStop(),
            StopCurve = axle.BumpStop.ForceCurve,
            StopRateNPerMm = axle.BumpStop.ForceCurve.Count > 0 ? TypicalValues.StopRateNPerMm.Value : axle.BumpStop.RateNPerMm ?? list.Add(list.Inputs.StopRate, TypicalValues.StopRateNPerMm, "It counts only where a bump stop is reached."),
            StopLengthMm = axle.BumpStop.ForceCurve.Count > 0 ? TypicalValues.StopLengthMm.Value : axle.BumpStop.LengthMm ?? list.Add(list.Inputs.StopLength, TypicalValues.StopLengthMm, "It counts only where a bump stop is pressed flat."),
            RideHeightChangeMm = axle.RideHeightChangeMm ?? 0,
            LeftCamberDeg = leftCamber,
            // Readings and what is stated for the left are put together above; the right keeps its difference from what is stated.
            RightCamberDeg = camber is ({ } statedLeft, { } statedRight) ? leftCamber + (statedRight - statedLeft) : camber.Item2 ?? leftCamber,
            LeftToeDeg = leftToe,
            RightToeDeg = toe.Item2 ?? leftToe,
            LeftCasterDeg = caster,
            RightCasterDeg = tellsAxis ? caster : axle.Right.CasterDeg ?? caster,
            SteeringAxisInclinationDeg = inclination,
            CamberComplianceDegPerKn = axle.Compliance.CamberDegPerKn ?? list.Add(list.Inputs.CamberCompliance, TypicalValues.CamberComplianceDegPerKn(suspension.Layout),
                "Rubber and metal give: side force leans the outer wheel out. Nobody measured it here; none at all would be unusual."),
            ToeComplianceDegPerKn = axle.Compliance.ToeDegPerKn ?? list.Add(list.Inputs.ToeCompliance, TypicalValues.ToeComplianceDegPerKn(at), "Rubber gives: side force turns the wheels."),
        };
    }

    private static double Radius(Vehicle vehicle, CarAxle at, HandlingAxleAssumptions list)
    {
        if (StandingRadius.Compute(vehicle, at) is not { } radius) return list.NoTyre(TypicalValues.LoadedRadiusMm);
        return radius.IsEstimated ? list.EstimatedRadius(radius.Mm) : radius.Mm;
    }

    // The kind of tyre is common to grip of both axles (HandlingInputs.Grip); here only what one axle's tyres differ from the other's by wear, warmth and pressure.
    private static double Friction(TyreCategory? category, HandlingAxleAssumptions list)
    {
        var typical = TyreTypicals.Friction(category);
        return list.Add(list.Inputs.TyreFriction, new(typical.Value, (1 - OtherTyreShare) * typical.Value, (1 + OtherTyreShare) * typical.Value, typical.Source), category is null
            ? "Value is the peak friction of this axle's tyres at nominal load. What they are made for (category) was not given; the range is that against the other axle's."
            : "Value is the peak friction of this axle's tyres at nominal load, as tyres of their category usually have it; the range is that against the other axle's.");
    }

    private static double Track(Axle axle, in StatedFigures told, HandlingAxleAssumptions? list)
    {
        if (axle.TrackMm is not { } trackMm) return 2 * told.HalfTrackMm ?? 0;
        if (told.HalfTrackMm is { } halfTrackMm && Math.Abs((2 * halfTrackMm) - trackMm) > TrackAgreementMm) list?.TrackDiffers(trackMm, 2 * halfTrackMm);
        return trackMm;
    }
}
