using System.Text;
using SetupService.Api.Host;
using SetupService.Api.Http.Documents;
using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Tests.Vehicles;

public class VehicleDocumentTests
{
    private const string Point = """{ "xMm": 1, "yMm": 2, "zMm": 3 }""";
    private const string Link = $$"""{ "chassis": {{Point}}, "upright": {{Point}} }""";

    private static readonly ContractReader<VehicleDocument> Reader = ServiceContract.Instance.ReaderOf<VehicleDocument>();

    [Fact]
    public void The_whole_demo_car_is_read()
    {
        var car = Read(DemoCar.Car);

        Assert.Equal("Aldermoor Tarn, road trim", car.Label);
        Assert.Equal(DrivenAxle.Rear, car.DrivenAxle);
        Assert.Equal(345, car.CornerWeightsKg!.FrontLeft);
        var front = car.Front!;
        Assert.Equal(87, front.MinimumLoadIndex);
        Assert.Equal((17, 7.5, 45), (front.Wheel!.RimDiameterIn, front.Wheel.RimWidthIn, front.Wheel.OffsetMm));
        Assert.Equal(FastenerSeat.Cone60, front.Wheel.FastenerSeat);
        Assert.Equal(178, Assert.Single(front.Wheel.InnerProfile!).RadiusMm);
        Assert.Equal(FastenerKind.Bolt, front.Hub!.FastenerKind);
        Assert.Equal(9, front.Clearance!.SpringSeatMm);
        Assert.Equal(ClearanceMeasuredAt.WorstTravel, front.Clearance.MeasuredAt);
        Assert.Equal(-0.8, front.Alignment!.Right!.CamberDeg);
        Assert.Equal(790, Assert.IsType<MacPhersonStrutDocument>(front.Suspension).Points.StrutTop.ZMm);
    }

    public static TheoryData<string, Type> Kinds => new()
    {
        { DemoCar.Strut, typeof(MacPhersonStrutDocument) },
        {
            $$"""
            { "kind": "doubleWishbone", "points": { "lowerArmFront": {{Point}}, "lowerArmRear": {{Point}}, "lowerBallJoint": {{Point}},
              "upperArmFront": {{Point}}, "upperArmRear": {{Point}}, "upperBallJoint": {{Point}}, "tieRodInner": {{Point}},
              "tieRodOuter": {{Point}}, "wheelCentre": {{Point}}, "springChassis": {{Point}}, "springMoving": {{Point}}, "springOn": "lowerArm" } }
            """,
            typeof(DoubleWishboneDocument)
        },
        { $$"""{ "points": { "links": [ {{Link}}, {{Link}}, {{Link}}, {{Link}}, {{Link}} ], "wheelCentre": {{Point}} }, "kind": "fiveLink" }""", typeof(FiveLinkDocument) },
        { $$"""{ "points": { "pivotInner": {{Point}}, "pivotOuter": {{Point}}, "wheelCentre": {{Point}} }, "kind": "semiTrailingArm" }""", typeof(SemiTrailingArmDocument) },
        { $$"""{ "kind": "twistBeam", "points": { "pivotLeft": {{Point}}, "beamShearCentre": {{Point}}, "wheelCentre": {{Point}}, "damperOn": "beam" } }""", typeof(TwistBeamDocument) },
        {
            """
            { "readings": [ { "travelMm": -20, "camberDeg": -0.2 }, { "travelMm": 20, "camberDeg": -1.1, "toeDeg": 0.05 } ],
              "kind": "measured", "steerReadings": [ { "steerDeg": 20, "camberDeg": -1.9 } ] }
            """,
            typeof(MeasuredSuspensionDocument)
        },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Each_kind_of_suspension_is_read_wherever_kind_stands(string suspension, Type kind) =>
        Assert.IsType(kind, Read(DemoCar.WithSuspension(suspension)).Front!.Suspension);

    [Fact]
    public void Null_for_an_optional_member_means_absent()
    {
        var car = Read(DemoCar.WithWheel("\"massKg\": null, \"boltCircle\": null, \"innerProfile\": null, \"fastenerSeat\": null"));

        Assert.Equal(Read(DemoCar.WithWheel("")), car);
    }

    private static VehicleDocument Read(string json)
    {
        var isRead = Reader.Read(Encoding.UTF8.GetBytes(json), out var car, out var faults);
        Assert.True(isRead, string.Join('\n', ((IEnumerable<SetupService.Api.Http.Faults.Fault>?)faults ?? []).Select(fault => $"{fault.Pointer}: {fault.Message}")));
        return car!;
    }
}
