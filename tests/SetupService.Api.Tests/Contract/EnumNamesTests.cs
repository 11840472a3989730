using System.Text.Json.Serialization.Metadata;
using SetupService.Api.Host;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Geometry.Alignment;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Tests.Contract;

/// <summary>The domain's enums are written by their names, and callers rely on those: a name changed here breaks them.</summary>
public sealed class EnumNamesTests
{
    [Fact]
    public void The_names_are_those_callers_were_given()
    {
        Assert.Equal(
            [
                "inboardClearance", "outboardClearance", "radialClearance", "fullLockClearance", "springSeatClearance", "rimDiameter", "rimWidth",
                "loadCapacity", "speedRating", "wheelLoadRating", "boltCircle", "centreBore", "fastener", "brakeClearance", "axleDiameterMatch",
                "overallDiameter", "archCover",
            ],
            EnumNames<CheckId>.List);
        Assert.Equal(["pass", "caution", "fail", "unknown"], EnumNames<CheckStatus>.List);
        Assert.Equal(["pass", "fail", "unknown"], EnumNames<WindowStatus>.List);
        Assert.Equal(["strutTop", "strutToKnuckle", "lowerJoint"], EnumNames<CamberChangePlace>.List);
        Assert.Equal(["left", "right"], EnumNames<WheelSide>.List);
        Assert.Equal(["left", "right"], EnumNames<TurnDirection>.List);
        Assert.Equal(["noDifference", "uprightOrStrut", "towerOrArm", "both"], EnumNames<IncludedAngleHint>.List);
        Assert.Equal(["front", "rear"], EnumNames<CarAxle>.List);
        Assert.Equal(["front", "rear", "unclear"], EnumNames<FirstAxle>.List);
        Assert.Equal(["touring", "summer", "trackDay", "semiSlick", "slick"], EnumNames<TyreCategory>.List);
        Assert.Equal(["sedan", "coupe", "hatchback", "wagon", "convertible", "suv", "pickup", "van"], EnumNames<CarBody>.List);
        Assert.Equal(["front", "rear", "both"], EnumNames<DrivenAxle>.List);
        Assert.Equal(["frontLeft", "frontRight", "rearLeft", "rearRight"], EnumNames<WheelPosition>.List);
        Assert.Equal(["worstTravel", "rideHeight"], EnumNames<ClearanceMeasuredAt>.List);
        Assert.Equal(["cone60", "ball12", "ball13", "ball14", "flat"], EnumNames<FastenerSeat>.List);
        Assert.Equal(["bolt", "nut"], EnumNames<FastenerKind>.List);
        Assert.Equal(["radial", "diagonal", "biasBelted"], EnumNames<TyreConstruction>.List);
        Assert.Equal(["keep", "borderline", "replace", "unknown"], EnumNames<DamperVerdict>.List);
        Assert.Equal(
            [
                "lowNegativeCamber", "highNegativeCamber", "toeIn", "toeOut", "underInflation", "overInflation", "weakDamping", "imbalance", "wheelLocking",
                "wheelspin", "frontOverdriven", "mixedTyres", "sideDifference", "axleMisaligned", "belowTemperatureWindow", "aboveTemperatureWindow",
                "rimWidthMismatch", "normal",
            ],
            EnumNames<WearCause>.List);
        Assert.Equal(
            [
                "featheredSharpInboard", "featheredSharpOutboard", "cupping", "heelAndToe", "flatSpot", "shoulderGraining", "blistering", "chunking",
                "wornPastShoulder", "diagonalScallop",
            ],
            EnumNames<TreadPattern>.List);
    }

    /// <summary>An enum without a converter would be written as a number. Every one that any request or answer holds must have one.</summary>
    [Fact]
    public void Every_enum_of_the_contract_is_written_by_name()
    {
        var options = ContractJsonContext.Default.Options;
        HashSet<Type> seen = [];
        List<Type> enums = [];
        Queue<Type> toLook = new(typeof(ContractJsonContext).GetProperties()
            .Where(property => property.PropertyType.IsGenericType && property.PropertyType.GetGenericTypeDefinition() == typeof(JsonTypeInfo<>))
            .Select(property => property.PropertyType.GetGenericArguments()[0]));
        while (toLook.TryDequeue(out var next))
        {
            var type = Nullable.GetUnderlyingType(next) ?? next;
            if (!seen.Add(type))
                continue;
            if (type.IsEnum)
                enums.Add(type);
            var info = options.GetTypeInfo(type);
            if (info.ElementType is { } element)
                toLook.Enqueue(element);
            foreach (var property in info.Properties)
                toLook.Enqueue(property.PropertyType);
        }

        Assert.Contains(typeof(CheckStatus), enums);
        Assert.All(enums, type => Assert.Equal(typeof(EnumNameConverter<>).MakeGenericType(type), options.GetTypeInfo(type).Converter.GetType()));
    }
}
