using SetupService.Api.Fitment.Check;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Planning.Sheets;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Plans.Sheets;

/// <summary>The workshop's sheets of a package.</summary>
public sealed record PlanSheetsAnswer
{
    /// <summary>What to fit, what to set, what is missing, in at most five sentences.</summary>
    [Sample("Fit 'top-mounts' (3 h of labour). Set the front camber to −2.2° (1.5° more negative than now), then toe back to what it was.")]
    public required string Summary { get; init; }

    /// <summary>The package.</summary>
    public required SheetPackageResponse Package { get; init; }

    /// <summary>The work, step by step.</summary>
    public required WorkOrderResponse WorkOrder { get; init; }

    /// <summary>The alignment to leave.</summary>
    public required AlignmentSheetResponse Alignment { get; init; }

    /// <summary>The pressures to set, each wheel.</summary>
    public required PressureSheetResponse[] Pressures { get; init; }

    /// <summary>The check of each axle whose wheel or tyre changes.</summary>
    public required SheetFitResponse[] Fit { get; init; }

    /// <summary>Which fit was checked and drawn, and what nobody checked.</summary>
    [Sample("Wheels and tyres stay, so no fit is checked or drawn. Camber and ride height still move them: turn each by hand over full travel and lock before driving.")]
    public required string FitText { get; init; }

    /// <summary>The tyres the car then has, each wheel; what is null is read and filled in.</summary>
    public required TyreRecordResponse[] Tyres { get; init; }

    /// <summary>How to find out whether it worked.</summary>
    public required TestPlanResponse Test { get; init; }

    /// <summary>What is not told, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("plan-sheets")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>The calls that usually follow.</summary>
    public required NextCallResponse[] Next { get; init; }

    /// <summary>What was used although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody, what can kill first.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

/// <summary>The package the sheets are of.</summary>
public sealed record SheetPackageResponse
{
    /// <summary>The ids of its parts; empty = no parts.</summary>
    [Sample("top-mounts")]
    public required string[] Parts { get; init; }

    /// <summary>Whether it is the plan's recommendation, taken because nothing was chosen.</summary>
    [Sample(false)]
    public required bool IsRecommendation { get; init; }

    /// <summary>What it costs.</summary>
    public required PlanCostResponse Cost { get; init; }

    /// <summary>The cambers it is judged with, as in the plan.</summary>
    public required PlanSettingResponse[] Settings { get; init; }

    /// <summary>What is against it although it may be chosen.</summary>
    public required PlanRejectionResponse[] Doubts { get; init; }
}

/// <summary>A work order.</summary>
public sealed record WorkOrderResponse
{
    /// <summary>The steps, in order.</summary>
    public required WorkStepResponse[] Steps { get; init; }

    /// <summary>What the job needs beside sockets and spanners.</summary>
    [Sample("spring compressor made for these springs, checked before use, or a workshop that has one")]
    public required string[] Tools { get; init; }

    /// <summary>Labour, less what shared strip-downs save; the alignment's is not in it.</summary>
    [Sample(3.0)]
    public required double LabourHours { get; init; }

    /// <summary>What shared strip-downs save.</summary>
    [Sample(1.5)]
    public required double SavedHours { get; init; }
}

/// <summary>A step of the work.</summary>
public sealed record WorkStepResponse
{
    /// <summary>The part of the job it belongs to.</summary>
    [Sample("strip")]
    public required WorkStage Stage { get; init; }

    /// <summary>At which axle; null = at the whole car, or wherever the part belongs.</summary>
    [Sample("front")]
    public required CarAxle? Axle { get; init; }

    /// <summary>What to do.</summary>
    [Sample("Support the wheel carrier, undo the strut at the carrier, hold it and undo the top mount at the body last. …")]
    public required string Text { get; init; }

    /// <summary>The parts it is about.</summary>
    [Sample("top-mounts")]
    public required string[] Parts { get; init; }

    /// <summary>What is tightened.</summary>
    public required FastenerTorqueResponse[] Torques { get; init; }

    /// <summary>Codes of the cautions to read before it.</summary>
    [Sample("springsUnderLoad")]
    public required string[] CautionCodes { get; init; }
}

/// <summary>A torque to tighten with.</summary>
public sealed record FastenerTorqueResponse
{
    /// <summary>What is tightened.</summary>
    [Sample("topMountToBody")]
    public required Fastener Fastener { get; init; }

    /// <summary>At which axle; null = at both alike, or wherever the part belongs.</summary>
    [Sample("front")]
    public required CarAxle? Axle { get; init; }

    /// <summary>The caller's own figure; null = see the maker's figure.</summary>
    [Sample(25.0)]
    public required double? TorqueNm { get; init; }

    /// <summary>The same to read.</summary>
    [Sample("25 N m")]
    public required string Text { get; init; }
}

/// <summary>An alignment sheet.</summary>
public sealed record AlignmentSheetResponse
{
    /// <summary>How the car is loaded and stands.</summary>
    [Sample("Load the car as its axle loads are stated, 690 kg in front and 640 kg behind: …")]
    public required string Loaded { get; init; }

    /// <summary>The order of setting.</summary>
    [Sample("rear camber, then rear toe, each wheel by itself, so that the rear heads straight")]
    public required string[] Order { get; init; }

    /// <summary>The angles, in that order, as a gauge reads them with the car standing.</summary>
    public required AlignmentLineResponse[] Lines { get; init; }

    /// <summary>The ride heights.</summary>
    public required RideHeightResponse[] RideHeights { get; init; }
}

/// <summary>An angle to leave.</summary>
public sealed record AlignmentLineResponse
{
    /// <summary>Which axle.</summary>
    [Sample("front")]
    public required CarAxle Axle { get; init; }

    /// <summary>Which wheel; null = both together.</summary>
    [Sample("left")]
    public required WheelSide? Side { get; init; }

    /// <summary>Which angle.</summary>
    [Sample("camber")]
    public required AlignmentAngle Angle { get; init; }

    /// <summary>Set to another value, restored to what it was, or only read.</summary>
    [Sample("set")]
    public required AlignmentTask Task { get; init; }

    /// <summary>What it is now, by what the car was stated with.</summary>
    [Sample(-0.7)]
    public required double? NowDeg { get; init; }

    /// <summary>What to leave it at.</summary>
    [Sample(-2.2)]
    public required double? TargetDeg { get; init; }

    /// <summary>How far that is from now.</summary>
    [Sample(-1.5)]
    public required double? ChangeDeg { get; init; }

    /// <summary>Where a later step goes, if the treads then still ask for it; as targetDeg where there is none.</summary>
    [Sample(-2.6)]
    public required double? AimDeg { get; init; }

    /// <summary>How far off the target it may be left.</summary>
    [Sample(0.1)]
    public required double ToleranceDeg { get; init; }

    /// <summary>The target to read; toe in minutes and over 400 mm too. Null with targetDeg.</summary>
    [Sample("−2.2°")]
    public required string? Text { get; init; }
}

/// <summary>A ride height to find or set, ground to arch lip above the wheel centre.</summary>
public sealed record RideHeightResponse
{
    /// <summary>Which axle.</summary>
    [Sample("front")]
    public required CarAxle Axle { get; init; }

    /// <summary>Now.</summary>
    [Sample(662.0)]
    public required double? NowMm { get; init; }

    /// <summary>How much higher it stands with the package; negative = lower.</summary>
    [Sample(-15.0)]
    public required double? ChangeMm { get; init; }

    /// <summary>Then.</summary>
    [Sample(647.0)]
    public required double? TargetMm { get; init; }

    /// <summary>How far off it may be, and left from right.</summary>
    [Sample(5.0)]
    public required double ToleranceMm { get; init; }
}

/// <summary>The pressures of a wheel; gauge.</summary>
public sealed record PressureSheetResponse
{
    /// <summary>Which wheel.</summary>
    [Sample("frontLeft")]
    public required WheelPosition Position { get; init; }

    /// <summary>What to set cold: the step that temperatures advises, else what is set, else the plate's.</summary>
    [Sample(210.0)]
    public required double? ColdKpa { get; init; }

    /// <summary>What that comes to hot.</summary>
    [Sample(262.0)]
    public required double? HotKpa { get; init; }

    /// <summary>The hot pressure wanted; null where none was stated.</summary>
    [Sample(245.0)]
    public required double? AimHotKpa { get; init; }

    /// <summary>What to set cold for every drive on the road: the plate's, where it carries the load.</summary>
    [Sample(230.0)]
    public required double? RoadColdKpa { get; init; }

    /// <summary>The least cold pressure the load needs, as in temperatures.</summary>
    [Sample(193.0)]
    public required double? LeastColdKpa { get; init; }

    /// <summary>What the car's plate states, for the size it names.</summary>
    [Sample(230.0)]
    public required double? PlateKpa { get; init; }

    /// <summary>The same in sentences.</summary>
    [Sample("On a day like this set 197 kPa (193 kPa to 201 kPa) for 245 kPa hot.")]
    public required string Text { get; init; }
}

/// <summary>The check of the wheel and tyre of an axle.</summary>
public sealed record SheetFitResponse
{
    /// <summary>Which axle.</summary>
    [Sample("front")]
    public required CarAxle Axle { get; init; }

    /// <summary>The check, as the call of that name answers it.</summary>
    public required CheckAnswer Check { get; init; }
}
