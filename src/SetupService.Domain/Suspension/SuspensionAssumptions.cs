using SetupService.Domain.Answers;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Readings;

namespace SetupService.Domain.Suspension;

/// <summary>What a corner that is worked out takes although nobody said so.</summary>
public static class SuspensionAssumptions
{
    private const string CommonPractice = "common practice, no source";

    /// <summary>The tyre as a disc; of every call that works out a contact centre.</summary>
    public static Assumption ThinTyre { get; } = new(
        "/loadedRadiusMm", null, "a disc of this radius in the wheel's plane", "ISO 8855 as to the contact centre; the disc is a model",
        "A tyre has width and gives: at camber its true contact centre moves a little across, which no figure here contains.");

    /// <summary>Of a corner with points.</summary>
    internal static IReadOnlyList<Assumption> Find(Hardpoints points, string axle, WheelSetup setup, StatedFigures? ofPoints)
    {
        ArgumentNullException.ThrowIfNull(setup);
        var list = new List<Assumption> { ThinTyre with { Input = axle + "/loadedRadiusMm" } };
        AddCarrier("spring", points.Spring);
        AddCarrier("damper", points.Damper);
        if (points is MacPhersonStrut { Spring: null } or MacPhersonStrut { Damper: null })
            list.Add(new(axle + "/suspension/points/springMoving", null, "along strutTop–strutLower", "the contract's default", "Spring or damper has no points of its own, so it acts along the strut."));
        if (setup.StatedAxis?.CasterDeg is { } casterDeg) list.Add(OwnAxis("casterDeg", casterDeg, ofPoints?.CasterDeg, " An adjustment begins with the angle stated and adds what the points change."));
        if (setup.StatedAxis?.InclinationDeg is { } inclinationDeg) list.Add(OwnAxis("steeringAxisInclinationDeg", inclinationDeg, ofPoints?.SteeringAxisInclinationDeg, ""));
        return list;

        void AddCarrier(string name, SpringLine? line)
        {
            if (line is not { IsCarrierAssumed: true }) return;
            var carrier = line.On.ToString();
            list.Add(new($"{axle}/suspension/points/{name}On", null, char.ToLowerInvariant(carrier[0]) + carrier[1..], CommonPractice, $"The part that carries the {name} decides its motion ratio."));
        }

        Assumption OwnAxis(string member, double statedDeg, double? pointsDeg, string further) => new(
            $"{axle}/alignment/{member}", null, "that of the points", "the points given",
            Prose.Write(UnitSystem.Metric, $"The steering axis over travel and steer follows from the points, which put it at {pointsDeg ?? statedDeg:deg} where {statedDeg:deg} is stated; where that is more than the points' error, measure both again.{further}"));
    }

    /// <summary>Of a corner known by readings.</summary>
    internal static IReadOnlyList<Assumption> Find(MeasuredCorner corner, CornerReadings readings, string axle, WheelSetup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        var list = new List<Assumption>
        {
            new($"{axle}/suspension/{readings.TravelMember}", null, "a smooth curve within the gauge's error", "judgement on how suspensions bend: docs/methods/measured-corner", "Between the readings, and a little way beyond them with growing ranges, the curve is our choice; a kink between two readings would not show."),
        };
        if (readings.IsGaugeErrorAssumed)
            list.Add(new(axle + "/suspension/gaugeErrorDeg", readings.GaugeErrorDeg, null, CommonPractice, "The gauge's standard error decides how closely the curve follows the readings, and the ranges."));
        if (corner.StatedCamber is { IsContradiction: false } stated)
            list.Add(new(axle + "/alignment/camberDeg", stated.StatedDeg, null, "the alignment given", "The camber stated for ride height counts as one more reading there, with the same gauge error."));
        if (corner.StatedCamber is { IsContradiction: true } apart)
            list.Add(new(axle + "/alignment/camberDeg", apart.StatedDeg, "not used", "the readings given", Prose.Write(UnitSystem.Metric, $"The readings give {apart.ReadDeg.Value:deg} at ride height, {Math.Abs(apart.DifferenceDeg):deg} from the camber stated; more than {apart.AllowedDeg:deg} cannot be the gauge's error, and the curve keeps to the readings.")));
        if (setup.ToeDeg is not null && corner.ToeAt(0) is not null)
            list.Add(new(axle + "/alignment/toeDeg", setup.ToeDeg, null, "the alignment given", "The curve keeps its shape and goes through the toe stated for ride height."));
        return list;
    }
}
