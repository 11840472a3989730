using SetupService.Api.Vehicles;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Geometry.Sweeps;

/// <summary>Reads a travel sweep's request into domain values.</summary>
internal static class SweepInputs
{
    /// <summary>The corner; only of a suspension with points.</summary>
    public static CornerSetting Setting(Hardpoints suspension, AlignmentAnglesDocument alignment, double loadedRadiusMm, AxleMotionWord? motion = null) => new()
    {
        Suspension = suspension,
        CamberDeg = alignment.CamberDeg!.Value,
        ToeDeg = alignment.ToeDeg!.Value,
        LoadedRadiusMm = loadedRadiusMm,
        Motion = (AxleMotion)(motion ?? AxleMotionWord.Parallel),
    };

    /// <summary>What the axle's figures need.</summary>
    public static AxleInputs Axle(TravelSweepRequest request) => new()
    {
        IsFront = request.Axle is { } axle ? axle == Vehicles.Axle.Front : null,
        WheelbaseMm = request.WheelbaseMm,
        CentreOfGravityHeightMm = request.CentreOfGravityHeightMm,
        BrakeShareFrontPct = request.BrakeShareFrontPct,
        Drive = Drive(request.Axle, request.DrivenAxle),
        MovesOppositely = request is { Suspension: TwistBeamDocument, Motion: AxleMotionWord.Opposite },
        MeasuringDiameterMm = request.MeasuringDiameterMm ?? AxleInputs.DefaultMeasuringDiameterMm,
    };

    private static AxleDrive? Drive(Axle? axle, DrivenAxle? driven) => (axle, driven) switch
    {
        (null, _) or (_, null) => null,
        (_, DrivenAxle.Both) => AxleDrive.Shared,
        (Vehicles.Axle.Front, DrivenAxle.Front) or (Vehicles.Axle.Rear, DrivenAxle.Rear) => AxleDrive.Alone,
        _ => AxleDrive.None,
    };
}
