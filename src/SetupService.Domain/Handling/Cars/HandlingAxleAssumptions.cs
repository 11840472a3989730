using SetupService.Domain.Answers;
using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cars;

/// <summary>Collects what is assumed of one axle.</summary>
internal sealed class HandlingAxleAssumptions(CarAxle axle, List<AssumedInput> assumed, List<Assumption> notes, UnitSystem units)
{
    private const string CommonPractice = "common practice, no source";

    private readonly string _place = axle == CarAxle.Front ? "/vehicle/front" : "/vehicle/rear";

    /// <summary>The scalars of this axle.</summary>
    public AxleInputList Inputs { get; } = HandlingInputs.For(axle);

    /// <summary>Lists a scalar and gives the value used.</summary>
    public double Add(HandlingInput input, TypicalValue typical, string reason)
    {
        assumed.Add(new(input, typical.Value, typical.Lower, typical.Upper, typical.Source, reason));
        return typical.Value;
    }

    /// <summary>No bump stop is met where its distance is not given.</summary>
    public double? NoBumpStop() =>
        Note("/bumpTravelMm", null, "no bump stop is met", CommonPractice, "How far the stop is was not given; met, it would take load onto its axle's outer wheel and end the roll there.");

    /// <summary>No droop stop is met where its distance is not given.</summary>
    public double? NoDroopStop() =>
        Note("/reboundTravelMm", null, "no droop stop is met", CommonPractice, "How far full droop is was not given; met, it would lift the inner wheel.");

    /// <summary>A wheel of usual size.</summary>
    public double NoTyre(TypicalValue radius)
    {
        Note("/tyre", radius.Value, null, radius.Source, "No tyre is given: the wheel centre is taken to stand this high, mm. It places the unsprung mass and, with points, the contact.");
        return radius.Value;
    }

    /// <summary>The wheel centre's height follows from tyre and load.</summary>
    public double EstimatedRadius(double radiusMm)
    {
        Note("/loadedRadiusMm", radiusMm, null, StandingRadius.EstimateSource, "The height of the wheel centre above the ground was not measured; it places the unsprung mass and, with points, the contact.");
        return radiusMm;
    }

    /// <summary>The track given is not the points'.</summary>
    public void TrackDiffers(double trackMm, double ofPointsMm) => Note(
        "/trackMm", trackMm, null, "the track given", Prose.Write(units, $"The suspension's points give a track of {ofPointsMm:gap}: loads and roll are computed with the track given, angles with the points."));

    /// <summary>Inputs that are given although the hardpoints determine them.</summary>
    public void Unused(Axle stated, in StatedFigures told, bool steers)
    {
        NotUsed("/rollCentreHeightMm", stated.RollCentreHeightMm, told.RollCentreHeightMm);
        NotUsed("/spring/motionRatio", stated.Spring.MotionRatio, told.SpringMotionRatio);
        NotUsed("/damper/motionRatio", stated.Damper.MotionRatio, told.DamperMotionRatio);
        if (stated.Suspension.PointErrorMm > 0)
        {
            Note("/suspension/points/pointErrorMm", null, "the points as given", "our choice, no source",
                "The car is worked out as if its points were exact; their error widens only the interval of a wanted camber, and the ranges of a travel sweep and of an adjustment.");
        }

        if (!steers || !stated.Suspension.Tells.HasFlag(SuspensionFigures.SteeringAxis)) return;
        NotUsed("/alignment/casterDeg", stated.Left.CasterDeg, told.CasterDeg);
        NotUsed("/alignment/steeringAxisInclinationDeg", stated.Left.SteeringAxisInclinationDeg, told.SteeringAxisInclinationDeg);
    }

    private void NotUsed(string place, double? given, double? used)
    {
        if (given is null || used is not { } value || Math.Abs(given.Value - value) <= 1e-9 * Math.Abs(value)) return;
        Note(place, value, null, "the suspension's points", FormattableString.Invariant($"The points tell it; the {given.Value:0.###} given is not used."));
    }

    private double? Note(string place, double? value, string? text, string source, string reason)
    {
        notes.Add(new(_place + place, value, text, source, reason));
        return null;
    }
}
