using SetupService.Api.Vehicles;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Geometry.Sweeps;

/// <summary>Reads a travel sweep's request into domain values.</summary>
internal static class SweepInputs
{
    /// <summary>The corner; only of a suspension with points.</summary>
    public static CornerSetting Setting(Hardpoints suspension, AlignmentAnglesDocument alignment, double loadedRadiusMm, AxleMotion? motion = null) => new()
    {
        Suspension = suspension,
        CamberDeg = alignment.CamberDeg!.Value,
        ToeDeg = alignment.ToeDeg!.Value,
        LoadedRadiusMm = loadedRadiusMm,
        Motion = motion ?? AxleMotion.Parallel,
    };

    /// <summary>How the wheel is set: by the angles stated, but camber as it was read where it was.</summary>
    public static WheelSetup Setup(TravelSweepRequest request, SuspensionModel suspension) =>
        Setup(suspension, request.Alignment, request.LoadedRadiusMm, request.Motion) with { TrackMm = request.TrackMm ?? 0 };

    /// <summary>The same of a request without a track.</summary>
    public static WheelSetup Setup(SuspensionModel suspension, AlignmentAnglesDocument alignment, double loadedRadiusMm, AxleMotion? motion = null) => new()
    {
        CamberDeg = suspension.ReadCamberDeg ?? alignment.CamberDeg,
        ToeDeg = alignment.ToeDeg,
        LoadedRadiusMm = loadedRadiusMm,
        Motion = motion ?? AxleMotion.Parallel,
    };

    /// <summary>What the axle's figures need.</summary>
    public static AxleInputs Axle(TravelSweepRequest request) => new()
    {
        IsFront = request.Axle is { } axle ? axle == CarAxle.Front : null,
        WheelbaseMm = request.WheelbaseMm,
        CentreOfGravityHeightMm = request.CentreOfGravityHeightMm,
        BrakeShareFrontPct = request.BrakeShareFrontPct,
        Drive = Drive(request.Axle, request.DrivenAxle),
        MovesOppositely = request is { Suspension: TwistBeamDocument, Motion: AxleMotion.Opposite },
        MeasuringDiameterMm = request.MeasuringDiameterMm ?? AxleInputs.DefaultMeasuringDiameterMm,
    };

    private static AxleDrive? Drive(CarAxle? axle, DrivenAxle? driven) => (axle, driven) switch
    {
        (null, _) or (_, null) => null,
        (_, DrivenAxle.Both) => AxleDrive.Shared,
        (CarAxle.Front, DrivenAxle.Front) or (CarAxle.Rear, DrivenAxle.Rear) => AxleDrive.Alone,
        _ => AxleDrive.None,
    };
}
