using SetupService.Api.Fitment;
using SetupService.Api.Geometry;
using SetupService.Api.Geometry.Adjusting;
using SetupService.Api.Geometry.Alignment;
using SetupService.Api.Geometry.Sweeps;
using SetupService.Api.Handling.Cornering;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Parts;
using SetupService.Api.Tyres;
using SetupService.Api.Vehicles;
using SetupService.Api.Wear;
using SetupService.Api.Wear.Diagnosis;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Geometry.Alignment;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Search;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Cautions;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Tests.Architecture;

/// <summary>The words of the contract are cast from and to the domain's: same names, same numbers, same order.</summary>
public sealed class WordsMirrorTests
{
    public static TheoryData<Type, Type> Mirrors() => new()
    {
        { typeof(CheckName), typeof(CheckId) },
        { typeof(StatusWord), typeof(CheckStatus) },
        { typeof(WindowStatusWord), typeof(WindowStatus) },
        { typeof(CamberChangeAt), typeof(CamberChangePlace) },
        { typeof(Api.Vehicles.Axle), typeof(CarAxle) },
        { typeof(Api.Vehicles.DrivenAxle), typeof(Domain.Vehicles.DrivenAxle) },
        { typeof(Api.Vehicles.FastenerKind), typeof(Domain.Vehicles.FastenerKind) },
        { typeof(MeasuredAt), typeof(ClearanceMeasuredAt) },
        { typeof(Api.Vehicles.InboardPart), typeof(Domain.Vehicles.InboardPart) },
        { typeof(ConstructionWord), typeof(TyreConstruction) },
        { typeof(AdjusterWord), typeof(Adjuster) },
        { typeof(ObstacleWord), typeof(Obstacle) },
        { typeof(AxleMotionWord), typeof(AxleMotion) },
        { typeof(WheelSideWord), typeof(WheelSide) },
        { typeof(TurnWord), typeof(TurnDirection) },
        { typeof(IncludedAngleHintWord), typeof(IncludedAngleHint) },
        { typeof(PositionWord), typeof(WheelPosition) },
        { typeof(PatternWord), typeof(TreadPattern) },
        { typeof(DamageWord), typeof(TyreDamage) },
        { typeof(CauseWord), typeof(WearCause) },
        { typeof(CheckWord), typeof(WearCheck) },
        { typeof(Api.Vehicles.SuspensionPart), typeof(Domain.Suspension.Points.SuspensionPart) },
    };

    [Theory]
    [MemberData(nameof(Mirrors))]
    public void The_contract_has_the_domain_s_words_in_its_order(Type word, Type domain)
    {
        Assert.Equal(Enum.GetNames(domain), Enum.GetNames(word));
        Assert.Equal(Values(domain), Values(word));
    }

    // Ids, seats and statuses as the contract writes them: callers rely on them, so a change here breaks them.
    [Fact]
    public void The_words_are_those_callers_were_given()
    {
        Assert.Equal(
            [
                "inboardClearance", "outboardClearance", "radialClearance", "fullLockClearance", "springSeatClearance", "rimDiameter", "rimWidth",
                "loadCapacity", "speedRating", "wheelLoadRating", "boltCircle", "centreBore", "fastener", "brakeClearance", "axleDiameterMatch",
                "overallDiameter", "archCover",
            ],
            Words<CheckName>.List);
        Assert.Equal(["pass", "caution", "fail", "unknown"], Words<StatusWord>.List);
        Assert.Equal(["fits", "nothingFits", "unknown"], Words<WindowStatusWord>.List);
        Assert.Equal(["strutTop", "strutToKnuckle", "lowerJoint"], Words<CamberChangeAt>.List);
        Assert.Equal(["left", "right"], Words<WheelSideWord>.List);
        Assert.Equal(["noDifference", "uprightOrStrut", "towerOrArm", "both"], Words<IncludedAngleHintWord>.List);
        Assert.Equal(["front", "rear"], Words<Api.Vehicles.Axle>.List);
        Assert.Equal(["front", "rear", "both"], Words<Api.Vehicles.DrivenAxle>.List);
        Assert.Equal(["worstTravel", "rideHeight"], Words<MeasuredAt>.List);
        Assert.Equal(["cone60", "ball12", "ball13", "ball14", "flat"], Words<FastenerSeat>.List);
        Assert.Equal(
            [
                "lowNegativeCamber", "highNegativeCamber", "toeIn", "toeOut", "underInflation", "overInflation", "weakDamping", "imbalance", "wheelLocking",
                "wheelspin", "frontOverdriven", "mixedTyres", "sideDifference", "axleMisaligned", "belowTemperatureWindow", "aboveTemperatureWindow",
                "rimWidthMismatch", "normal",
            ],
            Words<CauseWord>.List);
        Assert.Equal(
            [
                "featheredSharpInboard", "featheredSharpOutboard", "cupping", "heelAndToe", "flatSpot", "shoulderGraining", "blistering", "chunking",
                "wornPastShoulder", "diagonalScallop",
            ],
            Words<PatternWord>.List);
        Assert.Equal(["bolt", "nut"], Words<Api.Vehicles.FastenerKind>.List);
    }

    private static int[] Values(Type type) => [.. Enum.GetValuesAsUnderlyingType(type).Cast<object>().Select(value => Convert.ToInt32(value, System.Globalization.CultureInfo.InvariantCulture))];
}
