using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry.Steering;

/// <summary>Whatever is sent, an answer or a refusal of the described form comes back: never a failure, never half an answer.</summary>
public sealed class GeneratedSteeringTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // Inside the ranges mostly, on their ends often, beyond them sometimes.
    private static Gen<double> Near(double minimum, double maximum) => Gen.Frequency(
        (6, Gen.Double[minimum, maximum]),
        (2, Gen.OneOf(Gen.Const(minimum), Gen.Const(maximum), Gen.Const(0.0))),
        (1, Gen.Double[minimum - 1, maximum + 1]));

    private static readonly Gen<JsonObject> Point = Gen.Select(Near(-5000, 5000), Near(-5000, 5000), Near(-5000, 5000))
        .Select((x, y, z) => new JsonObject { ["xMm"] = x, ["yMm"] = y, ["zMm"] = z });

    private static readonly Gen<JsonObject> Wheel = Gen.Select(Near(-15, 15), Near(-5, 20), Near(-5, 5), Near(-10, 40)).Select((camber, caster, toe, inclination) =>
        new JsonObject { ["camberDeg"] = camber, ["casterDeg"] = caster, ["toeDeg"] = toe, ["steeringAxisInclinationDeg"] = inclination });

    [Fact]
    public async Task Any_points_have_an_axis_or_a_contradiction() =>
        await Holds(SteeringRequests.AxisPath, Gen.Select(Point, Point, Point, Near(150, 600), Near(-15, 15)).Select((lower, upper, centre, radius, camber) =>
            SteeringRequests.Axis().With("/lower", lower).With("/upper", upper).With("/wheelCentre", centre).With("/loadedRadiusMm", radius).With("/camberDeg", camber)));

    [Fact]
    public async Task Any_steer_has_rows_or_a_reason() =>
        await Holds(SteeringRequests.SweepPath, Gen.Select(Wheel, Near(-60, 60), Near(-60, 60), Near(-20, 20), Near(-500, 500), Gen.Bool).Select((wheel, from, to, step, place, isRight) =>
        {
            var body = SteeringRequests.Sweep().With("/steerDeg/from", from).With("/steerDeg/to", to).With("/steerDeg/step", step)
                .With("/spindleOffsetMm", place).With("/wheelCentreTrailMm", -place).With("/side", isRight ? "right" : "left");
            foreach (var (name, value) in wheel) body[name] = value!.DeepClone();
            return body;
        }));

    [Fact]
    public async Task Any_readings_have_an_axis_or_a_reason() =>
        await Holds(SteeringRequests.ReadingsPath, Gen.Select(Gen.Select(Near(-60, 60), Near(-15, 15)).Array[2, 12], Near(0.001, 2), Gen.Bool).Select((readings, gauge, isRight) =>
            SteeringRequests.Readings().With("/readings", SteeringRequests.Of(readings)).With("/gaugeErrorDeg", gauge).With("/side", isRight ? "right" : "left")));

    [Fact]
    public async Task Any_alignment_has_figures() =>
        await Holds(SteeringRequests.AlignmentPath, Gen.Select(Wheel, Wheel, Wheel, Near(-200, 200), Near(200, 1000)).Select((one, other, third, setback, diameter) =>
            SteeringRequests.Alignment().With("/vehicle/front/alignment", one).With("/vehicle/front/alignment/right", other).With("/vehicle/rear/alignment/right", third).With("/setbackMm", setback).With("/measuringDiameterMm", diameter)));

    private async Task Holds(string path, Gen<JsonObject> bodies)
    {
        var schemas = await DescribedSchemas.ReadAsync(fixture.Client);
        var answered = 0;
        await bodies.SampleAsync(
            async body =>
            {
                using var response = await fixture.Client.PostAsync(path, body.ToJsonString());
                var status = (int)response.StatusCode;
                var text = await response.Content.ReadAsStringAsync();

                Assert.True(status is 200 or 400 or 422, $"{status}: {text}");
                Assert.Null(schemas.FaultOf("post", path, status, text));
                if (status == 200) Interlocked.Increment(ref answered);
            },
            iter: 150);

        Assert.True(answered > 5, $"only {answered} of 150 were answered");
    }
}
