using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Tests.Suspension.Points;

namespace SetupService.Domain.Tests.Suspension;

/// <summary>Everything a corner takes although nobody said so is listed at the input that would replace it, and nothing else is.</summary>
public sealed class SuspensionAssumptionsTests
{
    private static readonly WheelSetup Bare = new() { CamberDeg = null, ToeDeg = null };

    private static readonly CornerReadings Read = new() { Travel = [new(-40, -0.2), new(0, -1), new(40, -1.8)] };

    [Theory]
    [InlineData(null, null, false, null, "")]
    [InlineData(null, null, true, null, "/suspension/gaugeErrorDeg")]
    [InlineData(-1.05, null, false, null, "/alignment/camberDeg")]
    [InlineData(1.0, null, false, null, "/alignment/camberDeg not used")]
    [InlineData(null, 0.1, false, 0.2, "/alignment/toeDeg")]
    [InlineData(null, 0.1, false, null, "")]
    [InlineData(null, null, false, 0.2, "")]
    public void Of_readings_the_curve_and_what_was_stated_beside_it(double? statedCamberDeg, double? readToeDeg, bool isGaugeErrorAssumed, double? statedToeDeg, string more)
    {
        var readings = Read with
        {
            Travel = [.. Read.Travel.Select(one => one with { ToeDeg = readToeDeg })],
            StatedCamberDeg = statedCamberDeg,
            IsGaugeErrorAssumed = isGaugeErrorAssumed,
        };

        var listed = SuspensionModel.From(readings).Assumptions("/front", Bare with { ToeDeg = statedToeDeg });

        string[] expected = more.Length == 0 ? [] : ["/front" + more];
        Assert.Equal(["/front/suspension/readings", .. expected], listed.Select((one, i) => i > 0 && one.Text is { } text ? $"{one.Input} {text}" : one.Input));
        Assert.Equal("/front/suspension/table", SuspensionModel.From(readings with { IsTable = true }).Assumptions("/front", Bare)[0].Input);
        if (isGaugeErrorAssumed) Assert.Equal(readings.GaugeErrorDeg, listed[1].Value);
        if (statedCamberDeg is { } stated) Assert.Equal(stated, listed[1].Value);
        if (more.EndsWith("toeDeg", StringComparison.Ordinal)) Assert.Equal(statedToeDeg, listed[1].Value);
    }

    [Fact]
    public void Of_points_the_tyre_the_strut_the_carrier_and_the_axis_of_their_own()
    {
        var strut = DrawnSuspensions.Strut with { Spring = null, Damper = null };
        var line = new SpringLine(new(0, 500, 600), new(0, 620, 250), SuspensionMember.LowerArm);
        var guessed = line with { IsCarrierAssumed = true };
        var axis = Bare with { StatedAxis = (6, null) };

        Assert.Equal(["/loadedRadiusMm", "/suspension/points/springMoving"], Inputs(strut, Bare));
        Assert.Equal(["/loadedRadiusMm", "/suspension/points/springMoving"], Inputs(strut with { Spring = line }, Bare));
        Assert.Equal(["/loadedRadiusMm", "/suspension/points/springMoving"], Inputs(strut with { Damper = line }, Bare));
        Assert.Equal(["/loadedRadiusMm"], Inputs(strut with { Spring = line, Damper = line }, Bare));
        Assert.Equal(["/loadedRadiusMm", "/suspension/points/springOn"], Inputs(strut with { Spring = guessed, Damper = line }, Bare));
        Assert.Equal(["/loadedRadiusMm", "/suspension/points/damperOn"], Inputs(DrawnSuspensions.Wishbone with { Spring = line, Damper = guessed }, Bare));
        Assert.Equal(["/loadedRadiusMm", "/alignment/casterDeg"], Inputs(DrawnSuspensions.Wishbone with { Spring = null, Damper = null }, axis));
        Assert.Equal(
            ["/loadedRadiusMm", "/alignment/steeringAxisInclinationDeg"], Inputs(DrawnSuspensions.Wishbone with { Spring = null, Damper = null }, Bare with { StatedAxis = (null, 13) }));
        Assert.Equal("lowerArm", SuspensionModel.From(strut with { Spring = guessed }).Assumptions("", Bare)[1].Text);
        Assert.Empty(SuspensionModel.FromFigures.Assumptions("", axis));

        static IEnumerable<string> Inputs(Hardpoints points, WheelSetup setup) => SuspensionModel.From(points).Assumptions("", setup).Select(one => one.Input);
    }
}
