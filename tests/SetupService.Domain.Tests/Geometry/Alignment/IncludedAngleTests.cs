using SetupService.Domain.Answers;
using SetupService.Domain.Geometry.Alignment;

namespace SetupService.Domain.Tests.Geometry.Alignment;

public sealed class IncludedAngleTests
{
    // The rule is derived from rigid bodies: an upright bent by 2° changes camber alone; a tower moved in by 2° leans both.
    [Theory]
    [InlineData(13, -1, 13, -1, IncludedAngleHint.NoDifference)]
    [InlineData(13, -1, 13.2, -1.2, IncludedAngleHint.NoDifference)]
    [InlineData(13, -1, 13, -3, IncludedAngleHint.UprightOrStrut)]
    [InlineData(13, -1, 15, -3, IncludedAngleHint.TowerOrArm)]
    [InlineData(13, -1, 15, -1, IncludedAngleHint.Both)]
    public void Inclination_and_included_angle_tell_where_to_look_first(
        double leftInclinationDeg, double leftCamberDeg, double rightInclinationDeg, double rightCamberDeg, IncludedAngleHint expected)
    {
        var left = new WheelAngles { SteeringAxisInclinationDeg = leftInclinationDeg, CamberDeg = leftCamberDeg };
        var right = new WheelAngles { SteeringAxisInclinationDeg = rightInclinationDeg, CamberDeg = rightCamberDeg };

        Assert.Equal(expected, new AxleAngles(left, right).Hint);
        Assert.Equal(expected, new AxleAngles(right, left).Hint);
    }

    // Half a degree still agrees, on either side; more does not.
    [Theory]
    [InlineData(0.5, 0.5, IncludedAngleHint.NoDifference)]
    [InlineData(-0.5, -0.5, IncludedAngleHint.NoDifference)]
    [InlineData(0.5, 0.51, IncludedAngleHint.UprightOrStrut)]
    [InlineData(-0.51, 0.5, IncludedAngleHint.TowerOrArm)]
    [InlineData(0.51, -0.51, IncludedAngleHint.Both)]
    public void Sides_agree_up_to_half_a_degree(double inclinationDeg, double includedDeg, IncludedAngleHint expected)
    {
        Assert.Equal(expected, IncludedAngleHints.From(inclinationDeg, includedDeg));
        Assert.Null(IncludedAngleHints.From(null, includedDeg));
        Assert.Null(IncludedAngleHints.From(inclinationDeg, null));
    }

    [Fact]
    public void The_hint_quotes_its_numbers_and_leaves_the_finding_to_an_inspection()
    {
        var axle = new AxleAngles(new() { SteeringAxisInclinationDeg = 13, CamberDeg = -1 }, new() { SteeringAxisInclinationDeg = 13.25, CamberDeg = -3 });
        var text = IncludedAngleWords.Explain(axle, UnitSystem.Metric)!;

        Assert.Contains("0.25°", text, StringComparison.Ordinal);
        Assert.Contains("1.75°", text, StringComparison.Ordinal);
        Assert.Contains("may be bent", text, StringComparison.Ordinal);
        Assert.Contains("inspection", text, StringComparison.Ordinal);
        Assert.Null(IncludedAngleWords.Explain(default, UnitSystem.Metric));
    }

    [Fact]
    public void Every_hint_has_its_own_sentence()
    {
        (double SteeringAxisInclinationDeg, double CamberDeg)[] rights = [(13, -1), (13, -3), (15, -3), (15, -1)];
        var left = new WheelAngles { SteeringAxisInclinationDeg = 13, CamberDeg = -1 };
        var texts = rights.Select(right => IncludedAngleWords.Explain(
            new(left, new() { SteeringAxisInclinationDeg = right.SteeringAxisInclinationDeg, CamberDeg = right.CamberDeg }), UnitSystem.Us)!);

        Assert.Equal(4, texts.Distinct().Count());
    }

    [Fact]
    public void A_hint_at_bent_parts_brings_its_caution()
    {
        var sound = new AlignmentFigures(new(new() { SteeringAxisInclinationDeg = 13, CamberDeg = -1 }, new() { SteeringAxisInclinationDeg = 13, CamberDeg = -1 }), default);
        var bent = sound with { Front = sound.Front with { Right = new() { SteeringAxisInclinationDeg = 13, CamberDeg = -3 } } };

        Assert.Equal(["steeringWork"], AlignmentCautions.For(sound).Select(caution => caution.Code));
        Assert.Equal(["bentParts", "steeringWork"], AlignmentCautions.For(bent).Select(caution => caution.Code));
    }
}
