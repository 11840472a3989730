using System.Globalization;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Planning;

/// <summary>A car, what it is used for, and what is wanted of it: all that packages are judged by.</summary>
public sealed record PlanCase
{
    /// <summary>The car as given, standing.</summary>
    public required StandingCar Given { get; init; }

    /// <summary>The bends it is driven in; at least one with lateral acceleration and share above nothing.</summary>
    public required IReadOnlyList<BendShare> Bends { get; init; }

    /// <summary>The scale of grip, found on the car as given and kept for every package.</summary>
    public required GripScale Scale { get; init; }

    /// <summary>What it is driven in a year.</summary>
    public required PlanUse Use { get; init; }

    /// <summary>What is wanted, each goal once with its weight.</summary>
    public required IReadOnlyList<WeightedGoal> Goals { get; init; }

    /// <summary>What must not be exceeded.</summary>
    public required PlanLimits Limits { get; init; }

    /// <summary>What is paid beside the parts.</summary>
    public PackagePrices Prices { get; init; }

    /// <summary>The currency of all prices; null = there are none.</summary>
    public string? Currency { get; init; }

    /// <summary>Noise outside the car on the label of the tyres fitted now, dB; null = nobody said.</summary>
    public double? TyreNoiseDb { get; init; }

    /// <summary>A sum of money, cents only where there are any.</summary>
    public string Money(double amount) => Currency is null ? "nothing" : $"{amount.ToString(amount == Math.Round(amount) ? "0" : "0.00", CultureInfo.InvariantCulture)} {Currency}";

    /// <summary>What the treads say, where they were read.</summary>
    public WearStudy? Wear { get; init; }

    /// <summary>What the tyres of today ask for before anything is bought or set.</summary>
    public TreadsFirst First { get; init; } = TreadsFirst.None;

    /// <summary>The axle of whose treads the wear model says the opposite of what was read, so that no life is told by it; null where there is none.</summary>
    public CarAxle? ContradictedAt => Wear is not { } study ? null
        : TreadLifeVoice.ModelContradictsShoulders(study, CarAxle.Front) ? CarAxle.Front
        : TreadLifeVoice.ModelContradictsShoulders(study, CarAxle.Rear) ? CarAxle.Rear
        : null;

    /// <summary>True where a car has another tyre than the one given, whose wear its treads do not tell.</summary>
    public bool HasOtherTyre(StandingCar car)
    {
        ArgumentNullException.ThrowIfNull(car);
        return IsOther(CarAxle.Front) || IsOther(CarAxle.Rear);

        bool IsOther(CarAxle at) => (car.Stated.At(at).Tyre, Given.Stated.At(at).Tyre) is var (tyre, before) && (!Equals(tyre?.Marking, before?.Marking) || tyre?.Category != before?.Category);
    }

    /// <summary>True where the road itself, not the rule book, ends how far camber is set.</summary>
    public bool IsCamberEndedByRoad => Use.RoadKm > 0 && !(Limits.MostNegativeCamberDeg >= CamberAdvice.MostOnRoadDeg);

    /// <summary>The most negative camber a package sets, degrees: the rule book's, and on a car for the road where its inner shoulders would wear out unseen.</summary>
    public double MostCamberDeg => Math.Max(Limits.MostNegativeCamberDeg ?? double.NegativeInfinity, Use.RoadKm > 0 ? CamberAdvice.MostOnRoadDeg : double.NegativeInfinity);
}

/// <summary>What a car is driven in a year.</summary>
/// <param name="RoadKm">Kilometres of road.</param>
/// <param name="TrackDays">Days on a track.</param>
/// <param name="LapsPerDay">Laps a day.</param>
/// <param name="LapKm">Length of a lap, km.</param>
public readonly record struct PlanUse(double RoadKm, double TrackDays, double LapsPerDay, double LapKm)
{
    /// <summary>Laps a day where nobody says; common practice, no source: four sessions of 20 minutes.</summary>
    public const double UsualLapsPerDay = 40;

    /// <summary>Kilometres of track.</summary>
    public double TrackKm => TrackDays * LapsPerDay * LapKm;

    /// <summary>The track's share of the use, from 0 to 1, by what it takes of the treads: a kilometre of track counts as ten of road.</summary>
    public double TrackShare => Wear.Diagnosis.TrackShare.Compute(new WearUse(RoadKm, TrackDays * LapsPerDay, LapKm)).Value;
}

/// <summary>Something wanted.</summary>
/// <param name="Goal">What.</param>
/// <param name="Weight">How much it counts beside the others, above 0.</param>
public readonly record struct WeightedGoal(PlanGoal Goal, double Weight);

/// <summary>What a driver may want.</summary>
public enum PlanGoal
{
    /// <summary>More grip in the bends.</summary>
    Grip,

    /// <summary>Treads that last longer.</summary>
    Wear,

    /// <summary>A ride no harder than now.</summary>
    Comfort,

    /// <summary>A car no louder than now.</summary>
    Noise,

    /// <summary>Grip on a wet road.</summary>
    Wet,

    /// <summary>Little money.</summary>
    Cost,

    /// <summary>That everything can be undone.</summary>
    KeepReversible,
}

/// <summary>What must not be exceeded; null = not limited.</summary>
public sealed record PlanLimits
{
    /// <summary>The most a package may cost, labour included where its rate is known.</summary>
    public double? Budget { get; init; }

    /// <summary>Whether the arches stay as they are: a tyre that touches them does not fit.</summary>
    public bool ArchesUntouched { get; init; } = true;

    /// <summary>How far the body may come down at most, mm; negative = lower than now.</summary>
    public double? LowestRideHeightChangeMm { get; init; }

    /// <summary>Whether parts must be allowed on the road.</summary>
    public bool RoadLegalOnly { get; init; }

    /// <summary>The widest rim the rule book allows, in.</summary>
    public double? GreatestRimWidthIn { get; init; }

    /// <summary>The most negative camber the rule book allows, degrees.</summary>
    public double? MostNegativeCamberDeg { get; init; }

    /// <summary>The highest ride frequency wanted at either axle, Hz.</summary>
    public double? HighestRideFrequencyHz { get; init; }

    /// <summary>What the axle that gives up first must hold on average over the bends, g.</summary>
    public double? LeastLimitG { get; init; }
}

/// <summary>A limit a package may break.</summary>
public enum PlanLimit
{
    /// <summary>The budget.</summary>
    Budget,

    /// <summary>How far the body may come down.</summary>
    LowestRideHeight,

    /// <summary>Only parts allowed on the road.</summary>
    RoadLegalOnly,

    /// <summary>The widest rim.</summary>
    GreatestRimWidth,

    /// <summary>The most negative camber.</summary>
    MostNegativeCamber,

    /// <summary>The highest ride frequency.</summary>
    HighestRideFrequency,

    /// <summary>What the car must hold.</summary>
    LeastLimit,
}
