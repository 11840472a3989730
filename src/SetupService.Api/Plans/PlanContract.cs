using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Handling.CamberTarget;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles;
using SetupService.Api.Wear;
using SetupService.Api.Wear.Diagnosis;
using SetupService.Domain.Planning;

namespace SetupService.Api.Plans;

/// <summary>A car, what it is used for, what is wanted of it, and the parts on offer.</summary>
public record PlanRequest
{
    /// <summary>The most bends of a plan.</summary>
    public const int MostBends = 12;

    /// <summary>The car. Needed: both axle loads (or all corner weights), wheelbase, and each axle's track (or points) and spring rate.</summary>
    [JsonRequired]
    public VehicleDocument Vehicle { get; set; } = null!;

    /// <summary>What was read of its tyres; without it tread life is not told.</summary>
    public PlanWearDocument? Wear { get; set; }

    /// <summary>The bends it is driven in with their shares of the cornering time.</summary>
    [JsonRequired]
    [Count(1, MostBends)]
    public BendMixEntry[] Bends { get; set; } = [];

    /// <summary>The most lateral acceleration the car was measured to hold as given, in the hardest bend; the grip of all tyres is scaled to it. Left out, it goes by the tyres' category.</summary>
    [Range(0.05, 3)]
    [Sample(1.1)]
    public double? HeldLateralG { get; set; }

    /// <summary>What it is driven in a year.</summary>
    [JsonRequired]
    public PlanUseDocument Use { get; set; } = null!;

    /// <summary>What is wanted, each goal once; grip, wear and comfort alike where left out.</summary>
    [Count(0, 7)]
    public PlanGoalDocument[]? Goals { get; set; }

    /// <summary>What must not be exceeded; the arches stay as they are where nothing is said.</summary>
    public PlanLimitsDocument? Limits { get; set; }

    /// <summary>What an hour of labour costs, in the currency of the parts; left out, labour is told in hours and not in the cost.</summary>
    public MoneyDocument? LabourPerHour { get; set; }

    /// <summary>What setting toe and camber costs; with it a package that moves an angle, or sets its camber, has one alignment in its cost.</summary>
    public MoneyDocument? Alignment { get; set; }

    /// <summary>Noise outside the car on the label of the tyres fitted now, dB; what tyres on offer are compared with.</summary>
    [Range(50, 90)]
    [Sample(71.0)]
    public double? TyreNoiseDb { get; set; }

    /// <summary>The parts on offer, each with its own id; empty to learn what the car's own adjusters give.</summary>
    [JsonRequired]
    [Count(0, PackageSearch.MostParts)]
    public PlanPartDocument[] Parts { get; set; } = [];
}

/// <summary>What was read of a car's tyres: use and tyres as the diagnosis takes them.</summary>
public sealed record PlanWearDocument : ITyreReadings
{
    /// <summary>What the tyres did.</summary>
    public UseDocument? Use { get; set; }

    /// <summary>The tyres, each wheel once.</summary>
    [JsonRequired]
    [Count(0, 4)]
    public TyreReadingDocument[] Tyres { get; set; } = [];

    /// <summary>The day of the readings, year-month-day; the service's day where left out.</summary>
    [StringLength(10)]
    [Sample("2026-11-20")]
    public string? ReadOn { get; set; }
}

/// <summary>What a car is driven in a year.</summary>
public sealed record PlanUseDocument
{
    /// <summary>Kilometres of road.</summary>
    [JsonRequired]
    [Range(0, 500_000)]
    [Sample(6000.0)]
    public double RoadKmPerYear { get; set; }

    /// <summary>Days on a track, or of hill climbs and sprints.</summary>
    [JsonRequired]
    [Range(0, 366)]
    [Sample(6.0)]
    public double TrackDaysPerYear { get; set; }

    /// <summary>Laps, or runs, a day; 40 where left out.</summary>
    [Range(0, 2000)]
    [Sample(45.0)]
    public double? LapsPerDay { get; set; }

    /// <summary>Length of a lap; 3 where left out.</summary>
    [Range(0.05, 100)]
    [Sample(3.2)]
    public double? LapKm { get; set; }
}

/// <summary>Something wanted.</summary>
public sealed record PlanGoalDocument
{
    /// <summary>What.</summary>
    [JsonRequired]
    [Sample("grip")]
    public PlanGoal Goal { get; set; }

    /// <summary>How much it counts beside the others; 1 where left out. Cost and keepReversible decide among packages, whatever their weight.</summary>
    [Range(0.01, 100)]
    [Sample(2.0)]
    public double? Weight { get; set; }
}

/// <summary>What must not be exceeded; what is left out is not limited.</summary>
public sealed record PlanLimitsDocument
{
    /// <summary>The most a package may cost, labour included where its rate is given.</summary>
    public MoneyDocument? Budget { get; set; }

    /// <summary>Whether the arches stay as they are; true where left out. Where not, a tyre that touches them is not rejected, nor recommended.</summary>
    [Sample(true)]
    public bool? ArchesUntouched { get; set; }

    /// <summary>How far the body may come down at most at either axle; negative = lower than now.</summary>
    [Range(-150, 0)]
    [Sample(-25.0)]
    public double? LowestRideHeightChangeMm { get; set; }

    /// <summary>Whether parts must be allowed on the road: those with isRoadLegal false, and slicks, are rejected.</summary>
    [Sample(true)]
    public bool? RoadLegalOnly { get; set; }

    /// <summary>The widest rim the rule book allows.</summary>
    [Range(3, 16)]
    [Sample(8.0)]
    public double? GreatestRimWidthIn { get; set; }

    /// <summary>The most negative camber the rule book allows.</summary>
    [Range(-15, 0)]
    [Sample(-3.0)]
    public double? MostNegativeCamberDeg { get; set; }

    /// <summary>The highest ride frequency wanted at either axle.</summary>
    [Range(0.3, 10)]
    [Sample(2.0)]
    public double? HighestRideFrequencyHz { get; set; }

    /// <summary>What the axle that gives up first must hold on average over the bends.</summary>
    [Range(0, 3)]
    [Sample(1.1)]
    public double? LeastLimitG { get; set; }
}

/// <summary>A part on offer.</summary>
public sealed record PlanPartDocument
{
    /// <summary>What the caller calls it.</summary>
    [JsonRequired]
    [StringLength(60)]
    [Sample("top-mounts")]
    public string Id { get; set; } = null!;

    /// <summary>What it is.</summary>
    [JsonRequired]
    [Sample("topMount")]
    public PartKind Kind { get; set; }

    /// <summary>What it costs.</summary>
    [JsonRequired]
    public MoneyDocument Price { get; set; } = null!;

    /// <summary>Hours to fit it; 0 where left out.</summary>
    [Range(0, 200)]
    [Sample(2.5)]
    public double? LabourHours { get; set; }

    /// <summary>Its change of the car, as in what-if; what it makes adjustable in the axle's adjustable. A bush, ballJoint, pad, disc or tyre that only renews needs none.</summary>
    public CarChangeDocument? Change { get; set; }

    /// <summary>Ids of the parts it comes in a pair with: neither without the other.</summary>
    [StringLength(60)]
    [Count(0, PackageSearch.MostParts)]
    [Sample("rear-springs")]
    public string[]? PairsWith { get; set; }

    /// <summary>Ids of the parts it cannot be fitted without.</summary>
    [StringLength(60)]
    [Count(0, PackageSearch.MostParts)]
    [Sample("dampers")]
    public string[]? Requires { get; set; }

    /// <summary>Ids of the parts it cannot be fitted beside. Parts that set one member differently exclude each other anyway, unless one requires the other.</summary>
    [StringLength(60)]
    [Count(0, PackageSearch.MostParts)]
    [Sample("eccentric-bolts")]
    public string[]? Excludes { get; set; }

    /// <summary>Parts on the same strip-down, with the labour that fitting both at once saves.</summary>
    [Count(0, PackageSearch.MostParts)]
    public ApartWithDocument[]? ApartWith { get; set; }

    /// <summary>What takes up movement at the ends of a topMount, bush or arm; how loud it is is not told where left out.</summary>
    [Sample("rubber")]
    public PartJoint? Joint { get; set; }

    /// <summary>Noise outside the car on the label of a tyre, dB; not told where left out.</summary>
    [Range(50, 90)]
    [Sample(72.0)]
    public double? NoiseDb { get; set; }

    /// <summary>Whether it may be used on the road; not told where left out.</summary>
    [Sample(true)]
    public bool? IsRoadLegal { get; set; }

    /// <summary>Whether the car can be put back as it was; not told where left out.</summary>
    [Sample(true)]
    public bool? IsReversible { get; set; }
}

/// <summary>A part on the same strip-down.</summary>
public sealed record ApartWithDocument
{
    /// <summary>Its id.</summary>
    [JsonRequired]
    [StringLength(60)]
    [Sample("front-springs")]
    public string Part { get; set; } = null!;

    /// <summary>Hours saved by fitting both at once; all of a part's savings are at most its own hours.</summary>
    [JsonRequired]
    [Range(0, 200)]
    [Sample(1.5)]
    public double SavedHours { get; set; }
}
