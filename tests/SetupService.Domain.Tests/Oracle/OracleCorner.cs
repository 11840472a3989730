using System.Text.Json;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Oracle;

/// <summary>Builds the domain's corner, and what it needs to know of the car, from a request.</summary>
internal static class OracleCorner
{
    public static CornerSetting Setting(JsonElement request) => new()
    {
        Suspension = OracleSuspension.Of(request.GetProperty("suspension")),
        CamberDeg = request.GetProperty("alignment").GetProperty("camberDeg").GetDouble(),
        ToeDeg = request.GetProperty("alignment").GetProperty("toeDeg").GetDouble(),
        LoadedRadiusMm = request.GetProperty("loadedRadiusMm").GetDouble(),
        Motion = OracleCar.Word<AxleMotion>(request, "motion") ?? AxleMotion.Parallel,
    };

    public static AxleInputs Axle(JsonElement request) => new()
    {
        IsFront = OracleCar.Word<CarAxle>(request, "axle") is { } axle ? axle == CarAxle.Front : null,
        WheelbaseMm = OracleCar.Number(request, "wheelbaseMm"),
        CentreOfGravityHeightMm = OracleCar.Number(request, "centreOfGravityHeightMm"),
        BrakeShareFrontPct = OracleCar.Number(request, "brakeShareFrontPct"),
        Drive = Drive(OracleCar.Word<CarAxle>(request, "axle"), OracleCar.Word<DrivenAxle>(request, "drivenAxle")),
        MeasuringDiameterMm = OracleCar.Number(request, "measuringDiameterMm") ?? AxleInputs.DefaultMeasuringDiameterMm,
    };

    /// <summary>One place of a corner: its row where it is reached, else why it is not.</summary>
    public static (SweepRow? Row, UnreachablePosition? Unreachable) At(JsonElement request, double travelMm, double rackMm)
    {
        var sweep = TravelSweep.Start(
            MechanismBuilder.Build(Setting(request)), SweepRange.Only(travelMm), SweepRange.Only(rackMm), Axle(request));
        Assert.True(sweep!.TryNext(out var row, out var unreachable));
        Assert.False(sweep.TryNext(out _, out _));
        return (row, unreachable);
    }

    private static AxleDrive? Drive(CarAxle? axle, DrivenAxle? driven) => (axle, driven) switch
    {
        (null, _) or (_, null) => null,
        (_, DrivenAxle.Both) => AxleDrive.Shared,
        (CarAxle.Front, DrivenAxle.Front) or (CarAxle.Rear, DrivenAxle.Rear) => AxleDrive.Alone,
        _ => AxleDrive.None,
    };
}
