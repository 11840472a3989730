using SetupService.Api.Http.Contract;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Planning;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Plans;

/// <summary>A package.</summary>
public sealed record PlanPackageResponse
{
    /// <summary>The ids of its parts; empty = no parts.</summary>
    [Sample("top-mounts")]
    public required string[] Parts { get; init; }

    /// <summary>Whether it is the recommended one.</summary>
    [Sample(true)]
    public required bool IsRecommended { get; init; }

    /// <summary>What it costs.</summary>
    public required PlanCostResponse Cost { get; init; }

    /// <summary>The cambers it is judged with; an axle that stays as it is is not among them.</summary>
    public required PlanSettingResponse[] Settings { get; init; }

    /// <summary>What the car with it reaches.</summary>
    public required PlanFiguresResponse After { get; init; }

    /// <summary>How far that is from the car as given.</summary>
    public required PlanFiguresResponse Change { get; init; }

    /// <summary>How far it moves each goal, in percent of the furthest any sound package moves it; negative = the wrong way.</summary>
    public required PlanGoalShareResponse[] Goals { get; init; }

    /// <summary>What it delivers of the goals together, by their weights, in percent.</summary>
    [Sample(84.0)]
    public required double DeliversPct { get; init; }

    /// <summary>Whether its wheels and tyres fit, for each axle whose wheel or tyre it changes.</summary>
    public required PlanCheckResponse[] Checks { get; init; }

    /// <summary>Why it is not recommended although it may be chosen; empty where it may be.</summary>
    public required PlanRejectionResponse[] Doubts { get; init; }

    /// <summary>Wear parts worth renewing while it is apart, with the labour that saves.</summary>
    public required PlanWhileApartResponse[] WhileApart { get; init; }

    /// <summary>What it is and does.</summary>
    [Sample("Fit 'top-mounts' for 410 EUR, and set the front camber to −2.4° (1.7° more negative than now). …")]
    public required string Text { get; init; }
}

/// <summary>What a package costs.</summary>
public sealed record PlanCostResponse
{
    /// <summary>Parts, with labour and the alignment where their prices are given.</summary>
    [Sample(410.0)]
    public required double Amount { get; init; }

    /// <summary>The currency; null where no price was given.</summary>
    [Sample("EUR")]
    public required string? Currency { get; init; }

    /// <summary>Labour, hours, less what is saved.</summary>
    [Sample(2.5)]
    public required double LabourHours { get; init; }

    /// <summary>Hours saved because parts share a strip-down.</summary>
    [Sample(0.0)]
    public required double SavedHours { get; init; }

    /// <summary>The alignment in it; 0 where no angle is moved or set, or its price was not given.</summary>
    [Sample(90.0)]
    public required double Alignment { get; init; }
}

/// <summary>What a state of the car reaches, or how far a package moves it: track, road and tread life.</summary>
public sealed record PlanFiguresResponse
{
    /// <summary>On the track.</summary>
    public required PlanTrackResponse Track { get; init; }

    /// <summary>On the road.</summary>
    public required PlanRoadResponse Road { get; init; }

    /// <summary>By what the life of the tyre that ends first is multiplied over a year of the use stated; null where no treads tell it.</summary>
    [Sample(1.18)]
    public required double? TreadLifeFactor { get; init; }
}

/// <summary>The outcome on the track.</summary>
public sealed record PlanTrackResponse
{
    /// <summary>What the axle that gives up first can hold, g, the mean over the bends by their shares.</summary>
    [Sample(1.08)]
    public required double? LimitG { get; init; }

    /// <summary>The same of the front axle.</summary>
    [Sample(1.08)]
    public required double? FrontLimitG { get; init; }

    /// <summary>The same of the rear axle.</summary>
    [Sample(1.11)]
    public required double? RearLimitG { get; init; }

    /// <summary>Mean inclination of the outer front wheel to the road over the bends, by load times slip times time; positive = top out of the turn.</summary>
    [Sample(0.4)]
    public required double FrontInclinationDeg { get; init; }

    /// <summary>The same of the outer rear wheel.</summary>
    [Sample(0.1)]
    public required double RearInclinationDeg { get; init; }

    /// <summary>How far the treads lean off flat, the larger of both axles: the mean inclination, with what the treads say against it where they were read.</summary>
    [Sample(0.4)]
    public required double OffFlatDeg { get; init; }
}

/// <summary>The outcome on the road.</summary>
public sealed record PlanRoadResponse
{
    /// <summary>Front ride frequency.</summary>
    [Sample(1.41)]
    public required double FrontRideFrequencyHz { get; init; }

    /// <summary>Rear ride frequency.</summary>
    [Sample(1.52)]
    public required double RearRideFrequencyHz { get; init; }

    /// <summary>Mean damping ratio in front; null where the damper is not known.</summary>
    [Sample(0.32)]
    public required double? FrontDampingRatio { get; init; }

    /// <summary>Mean damping ratio behind.</summary>
    [Sample(0.34)]
    public required double? RearDampingRatio { get; init; }

    /// <summary>Front ride height less that of the car as given; null where it is not known.</summary>
    [Sample(-15.0)]
    public required double? FrontRideHeightChangeMm { get; init; }

    /// <summary>The same behind.</summary>
    [Sample(-15.0)]
    public required double? RearRideHeightChangeMm { get; init; }

    /// <summary>Camber in front, standing, mean of both wheels.</summary>
    [Sample(-2.4)]
    public required double FrontCamberDeg { get; init; }

    /// <summary>The same behind.</summary>
    [Sample(-1.4)]
    public required double RearCamberDeg { get; init; }

    /// <summary>Wear of the inner shoulder by the mean of the tread on the straight, the larger of both axles; null where no tyre is known.</summary>
    [Sample(1.24)]
    public required double? InnerShoulderWearRatio { get; init; }

    /// <summary>0 touring and summer tyres, 1 trackDay, 2 semiSlick, 3 slick: the more, the less they hold on a wet road.</summary>
    [Sample(0)]
    public required int DryBias { get; init; }

    /// <summary>How much louder than the car as given: a firm joint 1, a solid one 2, and 1 for each 3 dB on the tyres' label; null where a part's joint or noiseDb was not given.</summary>
    [Sample(0.0)]
    public required double? NoiseSteps { get; init; }
}

/// <summary>How far a package moves a goal.</summary>
public sealed record PlanGoalShareResponse
{
    /// <summary>Which.</summary>
    [Sample("grip")]
    public required PlanGoal Goal { get; init; }

    /// <summary>In percent of the furthest any sound package moves it; null where none moves it noticeably.</summary>
    [Sample(91.0)]
    public required double? SharePct { get; init; }
}

/// <summary>Whether the wheel and tyre of an axle fit.</summary>
public sealed record PlanCheckResponse
{
    /// <summary>Which axle.</summary>
    [Sample("front")]
    public required CarAxle Axle { get; init; }

    /// <summary>The verdict, as the car-check gives it.</summary>
    [Sample("pass")]
    public required CheckStatus Verdict { get; init; }

    /// <summary>The checks it was made by.</summary>
    [Sample("outboardClearance")]
    public required CheckId[] DecidedBy { get; init; }
}

/// <summary>A wear part on the same strip-down.</summary>
public sealed record PlanWhileApartResponse
{
    /// <summary>Its id.</summary>
    [Sample("front-bushes")]
    public required string Part { get; init; }

    /// <summary>What it adds to the cost, labour saved taken off.</summary>
    [Sample(60.0)]
    public required double Amount { get; init; }

    /// <summary>Labour saved, hours.</summary>
    [Sample(1.0)]
    public required double SavedHours { get; init; }
}

/// <summary>Something rejected.</summary>
public sealed record PlanRejectionResponse
{
    /// <summary>The part, where it is out of the question in every package; else those of the package.</summary>
    [Sample("stiff-springs")]
    public required string[] Parts { get; init; }

    /// <summary>The kind of reason.</summary>
    [Sample("damperOverwhelmed")]
    public required RejectionCode Code { get; init; }

    /// <summary>The reason with its numbers.</summary>
    [Sample("The front dampers do not suit these springs: their damping ratio is 0.21, outside 0.25 to 0.70.")]
    public required string Reason { get; init; }
}

/// <summary>The recommended package of a budget.</summary>
public sealed record PlanByBudgetResponse
{
    /// <summary>From this budget on.</summary>
    [Sample(0.0)]
    public required double Amount { get; init; }

    /// <summary>The ids of its parts.</summary>
    [Sample("top-mounts")]
    public required string[] Parts { get; init; }

    /// <summary>What it delivers of the goals, in percent.</summary>
    [Sample(62.0)]
    public required double DeliversPct { get; init; }
}

/// <summary>The recommended package of a kind of use.</summary>
public sealed record PlanByTrackShareResponse
{
    /// <summary>From this share of the track, in steps of five.</summary>
    [Sample(0.0)]
    public required double FromPct { get; init; }

    /// <summary>To this share.</summary>
    [Sample(100.0)]
    public required double ToPct { get; init; }

    /// <summary>The ids of its parts.</summary>
    [Sample("top-mounts")]
    public required string[] Parts { get; init; }
}

/// <summary>What was searched.</summary>
public sealed record PlanSearchedResponse
{
    /// <summary>Packages within the budget that keep what parts need and exclude, all of them evaluated.</summary>
    [Sample(48)]
    public required int PackageCount { get; init; }

    /// <summary>Whether that is every package there is; always true, as more than 2,000 are refused.</summary>
    [Sample(true)]
    public required bool IsExact { get; init; }
}
