using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Inputs;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cars;

/// <summary>Makes one axle ready for the handling model.</summary>
internal static class AxleMaker
{
    // Points and track that differ by more than this, mm, describe two states of the car.
    private const double TrackAgreementMm = 10;

    /// <summary>The axle; null where its points or readings make no corner. Loads, track (or points) and spring rate are there.</summary>
    public static HandlingAxle? Make(Vehicle vehicle, CarAxle at, List<AssumedInput> assumed, List<Assumption> notes)
    {
        var axle = vehicle.At(at);
        var (left, right) = StaticLoads.Of(vehicle, at) is { } loads ? (loads.LeftN, loads.RightN) : (0, 0);
        var list = new AxleAssumptions(at, assumed, notes);
        var measured = axle.Suspension is null && axle.Readings is { } readings ? MeasuredCorner.From(readings, out _) : null;
        if (axle.Suspension is null && axle.Readings is not null && measured is null) return null;

        var tyreRate = axle.Tyre?.VerticalRateNPerMm ?? list.Add(list.Inputs.TyreRate, TypicalValues.TyreRateNPerMm(axle.Tyre),
            "The tyre's vertical rate stands in series with the springs: it lets the body roll further and lowers the frequencies.");
        var radiusMm = Radius(axle.Tyre, (left + right) / 2, tyreRate, list);
        var steers = at == CarAxle.Front;
        var camber = (axle.Left.CamberDeg, axle.Right.CamberDeg);
        var leftCamber = camber.Item1 ?? measured?.CamberAt(0)?.AngleDeg.Value ?? list.Add(list.Inputs.Camber, TypicalValues.CamberDeg(at), "The camber set is where the inclination starts from.");
        var toe = (axle.Left.ToeDeg, axle.Right.ToeDeg);
        var leftToe = toe.Item1 ?? measured?.ToeAt(0)?.AngleDeg.Value ?? list.Add(list.Inputs.Toe, TypicalValues.ToeDeg(at), "Toe enters each wheel's slip angle.");
        var figures = axle.Suspension is { } points ? Figures(points, leftCamber, leftToe, radiusMm) : null;
        if (axle.Suspension is not null && figures is null) return null;
        var caster = axle.Suspension is not null || !steers
            ? axle.Suspension is null ? axle.Left.CasterDeg ?? 0 : figures?.CasterDeg ?? 0
            : axle.Left.CasterDeg ?? measured?.CasterDeg?.Value ?? list.Add(list.Inputs.Caster, TypicalValues.CasterDeg, "Caster leans the outer wheel into the turn as it steers.");
        var inclination = axle.Suspension is not null || !steers
            ? figures?.InclinationDeg ?? axle.Left.InclinationDeg ?? 0
            : axle.Left.InclinationDeg ?? measured?.InclinationDeg?.Value ?? list.Add(list.Inputs.Inclination, TypicalValues.InclinationDeg(axle.Layout), "Steering-axis inclination leans a steered wheel out.");
        var motionRatio = figures?.SpringMotionRatio ?? axle.Spring.MotionRatio ?? list.Add(list.Inputs.MotionRatio, TypicalValues.MotionRatio(axle.Layout),
            "The spring acts at the wheel with the square of its motion ratio.");
        list.Unused(axle, figures, steers);
        return new HandlingAxle
        {
            Layout = axle.Layout,
            Points = axle.Suspension,
            Measured = measured,
            LeftLoadN = left,
            RightLoadN = right,
            TrackMm = Track(axle, figures, list),
            UnsprungMassKg = axle.UnsprungMassKg ?? list.Add(list.Inputs.UnsprungMass, TypicalValues.UnsprungMassKg(StaticLoads.OfCarKg(vehicle) ?? 0, axle.Layout),
                "The unsprung mass moves its own load across the axle, and what it weighs the springs do not carry."),
            LoadedRadiusMm = radiusMm,
            TyreRateNPerMm = tyreRate,
            CorneringStiffnessNPerDeg = axle.Tyre?.CorneringStiffnessNPerDeg,
            SpringRateNPerMm = axle.Spring.RateNPerMm ?? 0,
            MotionRatio = motionRatio,
            DamperMotionRatio = figures?.DamperMotionRatio ?? axle.Damper.MotionRatio ?? list.Add(list.Inputs.DamperMotionRatio, TypicalValues.DamperMotionRatio(axle.Layout, motionRatio),
                "Damper and bump stop act at the wheel with the square of their motion ratio."),
            BarRollRateNmPerDeg = axle.BarRollRateNmPerDeg ?? list.Add(list.Inputs.BarRollRate, TypicalValues.BarRollRateNmPerDeg(at, axle.Spring.RateNPerMm ?? 0, motionRatio, Track(axle, figures, null)),
                "No anti-roll bar is assumed where none is given; a bar lets the body roll less and moves load transfer to its axle."),
            RollCentreHeightMm = figures?.RollCentreHeightMm ?? axle.RollCentreHeightMm ?? list.Add(list.Inputs.RollCentreHeight, TypicalValues.RollCentreHeightMm(axle.Layout, at),
                "The height of the roll centre decides what crosses the axle through the links and what rolls the body."),
            SwingArmMm = axle.Suspension is null && measured is null
                ? list.Add(list.Inputs.SwingArm, TypicalValues.SwingArmMm(axle.Layout, at), "Without points or readings camber is taken to change evenly with travel, about a front-view swing arm of this length in mm.")
                : TypicalValues.SwingArmMm(axle.Layout, at).Value,
            BumpTravelMm = axle.BumpTravelMm ?? list.NoBumpStop(),
            ReboundTravelMm = axle.ReboundTravelMm ?? list.NoDroopStop(),
            StopRateNPerMm = axle.BumpStop.RateNPerMm ?? list.Add(list.Inputs.StopRate, TypicalValues.StopRateNPerMm, "It counts only where a bump stop is reached."),
            StopLengthMm = axle.BumpStop.LengthMm ?? list.Add(list.Inputs.StopLength, TypicalValues.StopLengthMm, "It counts only where a bump stop is pressed flat."),
            RideHeightChangeMm = axle.RideHeightChangeMm ?? 0,
            LeftCamberDeg = leftCamber,
            RightCamberDeg = camber.Item2 ?? leftCamber,
            LeftToeDeg = leftToe,
            RightToeDeg = toe.Item2 ?? leftToe,
            LeftCasterDeg = caster,
            RightCasterDeg = axle.Suspension is null ? axle.Right.CasterDeg ?? caster : caster,
            InclinationDeg = inclination,
            CamberComplianceDegPerKn = axle.Compliance.CamberDegPerKn ?? list.Add(list.Inputs.CamberCompliance, TypicalValues.CamberComplianceDegPerKn, "Rubber gives: side force leans the outer wheel out. Not known, it is left out."),
            ToeComplianceDegPerKn = axle.Compliance.ToeDegPerKn ?? list.Add(list.Inputs.ToeCompliance, TypicalValues.ToeComplianceDegPerKn(at), "Rubber gives: side force turns the wheels. Not known, it is left out."),
        };
    }

    private static double Radius(Tyre? tyre, double loadN, double rateNPerMm, AxleAssumptions list)
    {
        if (tyre is null) return list.NoTyre(TypicalValues.LoadedRadiusMm);
        return LoadedRadius.FromVerticalRateMm(tyre.Marking.Dimensions.OverallDiameterMm, loadN, rateNPerMm);
    }

    private static double Track(Axle axle, WheelFigures? figures, AxleAssumptions? list)
    {
        if (axle.TrackMm is not { } trackMm) return 2 * figures?.HalfTrackMm ?? 0;
        if (figures is { } stated && Math.Abs((2 * stated.HalfTrackMm) - trackMm) > TrackAgreementMm) list?.TrackDiffers(trackMm, 2 * stated.HalfTrackMm);
        return trackMm;
    }

    private static WheelFigures? Figures(Hardpoints points, double camberDeg, double toeDeg, double radiusMm)
    {
        var corner = MechanismBuilder.Build(new() { Suspension = points, CamberDeg = camberDeg, ToeDeg = toeDeg, LoadedRadiusMm = radiusMm, Motion = AxleMotion.Opposite });
        return PoseContinuation.TryStart(corner, out var state) ? WheelKinematics.Compute(corner, state) : null;
    }
}
