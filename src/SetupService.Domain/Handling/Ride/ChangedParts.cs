using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Ride;

/// <summary>
/// Lets a changed car's figures follow its parts: track, unsprung mass and axle load the wheels and tyres, readings a new camber, travel a bump stop taken off. What the change names itself
/// holds. What the car as given left open keeps the value assumed for it, so that a change is not judged by another assumption.
/// </summary>
internal sealed class ChangedParts(StandingCar given, Vehicle merged, CarChange change)
{
    private const string Follows = "the parts fitted, before and after";

    // A smaller change, kg or mm, is rounding.
    private const double Least = 1e-9;

    private readonly List<Assumption> _followed = [];
    private readonly List<ChangeGap> _unknown = [];

    /// <summary>What followed, as it stands in an answer, its places within the request's change.</summary>
    public IReadOnlyList<Assumption> Followed => _followed;

    /// <summary>What could not be told.</summary>
    public IReadOnlyList<ChangeGap> Unknown => _unknown;

    /// <summary>How much further out the wheels of an axle are mounted, mm.</summary>
    public static double OutboardMm(Axle before, Axle after) => after.Wheel?.CentrePlaneMm - before.Wheel?.CentrePlaneMm ?? 0;

    /// <summary>The car with all that follows.</summary>
    public Vehicle Follow()
    {
        var (front, frontKg) = Follow(CarAxle.Front);
        var (rear, rearKg) = Follow(CarAxle.Rear);
        return merged with
        {
            Front = front,
            Rear = rear,
            CornerWeights = merged.CornerWeights is { } scales
                ? new(scales.FrontLeftKg + frontKg, scales.FrontRightKg + frontKg, scales.RearLeftKg + rearKg, scales.RearRightKg + rearKg)
                : null,
            CentreOfGravityHeightMm = merged.CentreOfGravityHeightMm ?? given.Reading.Car.CentreOfGravityHeightMm,
        };
    }

    /// <summary>One axle, and what each of its wheels weighs more.</summary>
    private (Axle Axle, double MoreKg) Follow(CarAxle at)
    {
        var (before, after, known, place) = (given.Stated.At(at), merged.At(at), given.Reading.Car.At(at), CarChange.PlaceOf(at));
        after = WithTyre(before, after, place);
        if (IsOtherWheel(before, after) && !change.States(place + "/wheel/massKg")) after = after with { Wheel = after.Wheel! with { MassKg = null } };
        after = WithTrack(before, after, at, place);
        after = WithMass(before, after, known, at, place, out var moreKg);
        after = WithRadius(before, after, known, at, place);
        after = WithReadings(before, after, place);
        after = WithoutBumpStop(after, known, place);
        if (after.Spring != before.Spring && !change.States(place + "/spring/installedLengthMm")) after = after with { Spring = after.Spring with { InstalledLengthMm = null } };
        return (after with { BarRollRateNmPerDeg = after.BarRollRateNmPerDeg ?? known.BarRollRateNmPerDeg }, moreKg);
    }

    private static bool IsOtherWheel(Axle before, Axle after) => after.Wheel is { } wheel && before.Wheel is { } old
        ? (wheel.RimDiameterIn, wheel.RimWidthIn, wheel.OffsetMm) != (old.RimDiameterIn, old.RimWidthIn, old.OffsetMm)
        : after.Wheel is not null;

    private static bool IsOtherTyre(Axle before, Axle after) => after.Tyre is { } tyre && (before.Tyre is not { } old || !tyre.Marking.Equals(old.Marking));

    // What was measured of the tyre before is not the new one's: its rate and stiffness go as those of its size and pressure, its mass is not known.
    private Axle WithTyre(Axle before, Axle after, string place)
    {
        if (after.Tyre is not { } tyre || before.Tyre is not { } old) return after;
        var isOther = IsOtherTyre(before, after);
        if (isOther && !change.States(place + "/tyre/massKg")) tyre = tyre with { MassKg = null };
        if (tyre.VerticalRateNPerMm is { } rate && (isOther || tyre.PressureKpa != old.PressureKpa) && !change.States(place + "/tyre/verticalRateNPerMm"))
        {
            rate *= TypicalValues.TyreRateNPerMm(tyre).Value / TypicalValues.TyreRateNPerMm(old).Value;
            tyre = tyre with { VerticalRateNPerMm = rate };
            Note(place + "/tyre/verticalRateNPerMm", rate, "The rate given is that of the tyre and pressure before; it is taken to change as that of a usual tyre.");
        }

        if (tyre.CorneringStiffnessNPerDeg is { } stiffness && isOther && !change.States(place + "/tyre/corneringStiffnessNPerDeg"))
        {
            stiffness *= Softening(old.Marking) / Softening(tyre.Marking);
            tyre = tyre with { CorneringStiffnessNPerDeg = stiffness };
            Note(place + "/tyre/corneringStiffnessNPerDeg", stiffness, "The stiffness given is that of the tyre before; it is taken to change as that of a usual tyre of the two sizes.");
        }

        return after with { Tyre = tyre };

        // k N (p² + 1)/(p² + n²), at the load the wheel carries.
        double Softening(TyreMarking marking)
        {
            var axle = place == CarChange.PlaceOf(CarAxle.Front) ? CarAxle.Front : CarAxle.Rear;
            var share = given.Reading.Car.At(axle).LoadN / 2 / TyreTypicals.NominalLoadN(marking).Value;
            return (TyreTypicals.StiffestLoads.Value * TyreTypicals.StiffestLoads.Value) + (share * share);
        }
    }

    private Axle WithTrack(Axle before, Axle after, CarAxle at, string place)
    {
        if (after.Wheel is not null && before.Wheel is null)
        {
            if (!change.States(place + "/trackMm"))
                _unknown.Add(new(at, FollowingFigure.Track, "the wheel fitted before is not given, so how far the new one stands out is not known; the track is taken as before", [place + "/wheel/offsetMm"]));
            return after;
        }

        var outMm = OutboardMm(before, after);
        if (Math.Abs(outMm) < Least) return after;
        var setup = given.Reading.Car.At(at).SetupOf(at, Suspension.Steering.WheelSide.Left);
        if (!change.States(place + "/suspension/points/wheelCentre")) after = after with { Suspension = after.Suspension.WithWheelMoved(outMm, setup) };
        if (after.TrackMm is not { } trackMm || change.States(place + "/trackMm")) return after;
        trackMm += 2 * outMm;
        Note(place + "/trackMm", trackMm, "Offset and spacer move both wheels, and the track follows.");
        return after with { TrackMm = trackMm };
    }

    private Axle WithMass(Axle before, Axle after, HandlingAxle known, CarAxle at, string place, out double moreKg)
    {
        var massKg = after.UnsprungMassKg ?? known.UnsprungMassKg;
        if (!change.States(place + "/unsprungMassKg"))
        {
            var partsKg = Change(IsOtherWheel(before, after), before.Wheel?.MassKg, after.Wheel?.MassKg, "wheel") + Change(IsOtherTyre(before, after), before.Tyre?.MassKg, after.Tyre?.MassKg, "tyre");
            massKg += partsKg;
            if (Math.Abs(partsKg) > Least) Note(place + "/unsprungMassKg", massKg, "It follows the masses of wheel and tyre.");
        }

        moreKg = massKg - known.UnsprungMassKg;
        if (Math.Abs(moreKg) <= Least) moreKg = 0;
        var loadPlace = at == CarAxle.Front ? "/frontAxleLoadKg" : "/rearAxleLoadKg";
        if (change.States(loadPlace) || change.States("/cornerWeightsKg")) moreKg = 0;
        else if (moreKg != 0 && after.LoadKg is { } loadKg) Note(loadPlace, loadKg + (2 * moreKg), "What the wheels weigh more or less is on the road with them; the body weighs what it did.");
        return after with { UnsprungMassKg = massKg, LoadKg = after.LoadKg + (2 * moreKg) };

        double Change(bool isOther, double? beforeKg, double? afterKg, string part)
        {
            if (!isOther && !change.States($"{place}/{part}/massKg")) return 0;
            if (afterKg - beforeKg is { } kg) return kg;
            var missing = (beforeKg, afterKg) switch
            {
                (null, null) => $"massKg of the {part} before and after is not given",
                (null, _) => $"massKg of the {part} before is not given",
                _ => $"massKg of the new {part} is not given",
            };
            _unknown.Add(new(at, FollowingFigure.UnsprungMass, missing + ", so what it weighs more or less is not known; the unsprung mass is taken without it", [$"{place}/{part}/massKg"]));
            return 0;
        }
    }

    private Axle WithRadius(Axle before, Axle after, HandlingAxle known, CarAxle at, string place)
    {
        if (change.States(place + "/loadedRadiusMm") || after.Tyre is not { } tyre) return after;
        if (before.Tyre is null)
        {
            _unknown.Add(new(at, FollowingFigure.RideHeight, "the tyre fitted before is not given, so how much higher or lower the new one stands the car is not known; it is taken to stand as before", [place + "/tyre/marking"]));
            return after with { LoadedRadiusMm = known.LoadedRadiusMm };
        }

        if (after.LoadedRadiusMm is not { } measuredMm) return after;
        var changeMm = StandingRadius.Compute(Estimating(merged, after with { Tyre = tyre }), at)?.Mm - StandingRadius.Compute(Estimating(given.Stated, before), at)?.Mm ?? 0;
        if (Math.Abs(changeMm) <= Least) return after;
        Note(place + "/loadedRadiusMm", measuredMm + changeMm, "The height measured is that of the tyre, pressure and load before; it is taken to change as by a usual tyre's size and rate.");
        return after with { LoadedRadiusMm = measuredMm + changeMm };

        Vehicle Estimating(Vehicle car, Axle axle) => car.With(at, axle with { LoadedRadiusMm = null });
    }

    private Axle WithReadings(Axle before, Axle after, string place)
    {
        if (!change.States(place + "/alignment/camberDeg") || change.States(place + "/suspension/readings") || change.States(place + "/suspension/table")) return after;
        var changeDeg = after.Left.CamberDeg - (before.Left.CamberDeg ?? before.Suspension.ReadCamberDeg) ?? 0;
        return changeDeg == 0 ? after : after with { Suspension = after.Suspension.WithCamberSet(changeDeg) };
    }

    // Where the stop was, the wheel travels on by the stop's own length until metal meets metal.
    private Axle WithoutBumpStop(Axle after, HandlingAxle known, string place)
    {
        if (!change.Removed.Contains(place + "/bumpStop")) return after;
        after = after with { BumpStop = new BumpStop { RateNPerMm = known.StopRateNPerMm, LengthMm = 0 } };
        if (after.BumpTravelMm is not { } travelMm || change.States(place + "/bumpTravelMm")) return after;
        travelMm += known.StopLengthMm / known.DamperMotionRatio;
        Note(place + "/bumpTravelMm", travelMm, "Without its bump stop the wheel travels further by the stop's length, and then metal meets metal.");
        return after with { BumpTravelMm = travelMm };
    }

    private void Note(string place, double value, string reason) => _followed.Add(new("/vehicle" + place, value, null, Follows, reason));
}
