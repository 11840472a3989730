using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Api.Geometry.Adjustments;

/// <summary>A car's corner and what is adjusted on it, or the angles wanted and what may be adjusted for them.</summary>
public sealed record AdjustmentRequest : CornerRequest
{
    /// <summary>How both wheels move; only a twist beam tells the difference. Parallel where left out.</summary>
    [Sample("parallel")]
    public AxleMotion? Motion { get; set; }

    /// <summary>What is adjusted, all of it together; this, or <c>target</c>, or <c>change</c>.</summary>
    [Count(1, 10)]
    public AdjustmentDocument[]? Adjustments { get; set; }

    /// <summary>The angles wanted.</summary>
    public AngleTargetDocument? Target { get; set; }

    /// <summary>The same as changes of the present angles.</summary>
    public AngleChangeDocument? Change { get; set; }

    /// <summary>What may be adjusted for <c>target</c> or <c>change</c>, and how far.</summary>
    [Count(1, 4)]
    public AdjusterRangeDocument[]? Adjusters { get; set; }

    /// <summary>How far outboard the tyre's top may move before it meets the arch; only where angles are wanted.</summary>
    [Range(0, 200)]
    [Sample(10.0)]
    public double? ArchGapMm { get; set; }

    /// <summary>Whether the tie rod is then set so that toe is what it was; not so where left out.</summary>
    [Sample(true)]
    public bool? ResetToe { get; set; }
}

/// <summary>What is adjusted, with what only some adjusters need.</summary>
public abstract record AdjusterDocument
{
    /// <summary>What is adjusted.</summary>
    [JsonRequired]
    [Sample("strutTopInboard")]
    [JsonPropertyOrder(-1)]
    public Adjuster Adjuster { get; set; }

    /// <summary>Which of five links, from 1; only with <c>linkLength</c>.</summary>
    [Range(1, 5)]
    [Sample(2)]
    public int? Link { get; set; }

    /// <summary>Distance between the knuckle's two bolts; only with <c>knuckleEccentric</c>.</summary>
    [Range(10, 200)]
    [Sample(58.0)]
    public double? BoltSpacingMm { get; set; }

    /// <summary>Centre of the bolt that stays; only with <c>knuckleEccentric</c>. <c>strutLower</c> where left out.</summary>
    public PointDocument? Pivot { get; set; }
}

/// <summary>One thing adjusted, by how much.</summary>
public sealed record AdjustmentDocument : AdjusterDocument
{
    /// <summary>How far; for every adjuster but the hub shims.</summary>
    [Range(-100, 100)]
    [Sample(5.0)]
    public double? AmountMm { get; set; }

    /// <summary>How far; for the hub shims.</summary>
    [Range(-5, 5)]
    [Sample(-0.5)]
    public double? AmountDeg { get; set; }
}

/// <summary>Something that may be adjusted, and how far.</summary>
public sealed record AdjusterRangeDocument : AdjusterDocument
{
    /// <summary>How far; for every adjuster but the hub shims. −100 to 100 where left out, an eccentric half its bolt spacing.</summary>
    public MovementRangeDocument? RangeMm { get; set; }

    /// <summary>How far, a hub shim. −5 to 5 where left out.</summary>
    public ShimRangeDocument? RangeDeg { get; set; }
}

/// <summary>How far something may be moved from where it stands now, mm.</summary>
public sealed record MovementRangeDocument
{
    /// <summary>The least movement; usually negative or 0.</summary>
    [JsonRequired]
    [Range(-100, 100)]
    [Sample(-6.0)]
    public double From { get; set; }

    /// <summary>The greatest movement.</summary>
    [JsonRequired]
    [Range(-100, 100)]
    [Sample(6.0)]
    public double To { get; set; }
}

/// <summary>How far a hub may be shimmed from where it stands now, degrees.</summary>
public sealed record ShimRangeDocument
{
    /// <summary>The least angle; usually negative or 0.</summary>
    [JsonRequired]
    [Range(-5, 5)]
    [Sample(-1.0)]
    public double From { get; set; }

    /// <summary>The greatest angle.</summary>
    [JsonRequired]
    [Range(-5, 5)]
    [Sample(1.0)]
    public double To { get; set; }
}

/// <summary>The angles wanted; one of them at least.</summary>
public sealed record AngleTargetDocument
{
    /// <summary>Camber wanted; negative = top towards the car's centre.</summary>
    [Range(-15, 15)]
    [Sample(-2.0)]
    public double? CamberDeg { get; set; }

    /// <summary>Caster wanted; positive = steering axis' top rearward.</summary>
    [Range(-5, 20)]
    [Sample(7.0)]
    public double? CasterDeg { get; set; }

    /// <summary>Toe of the wheel wanted; positive = toe-in. Not together with resetToe.</summary>
    [Range(-5, 5)]
    [Sample(0.1)]
    public double? ToeDeg { get; set; }
}

/// <summary>By how much the angles are to change; one of them at least.</summary>
public sealed record AngleChangeDocument
{
    /// <summary>Change of camber; negative = top further towards the car's centre.</summary>
    [Range(-15, 15)]
    [Sample(-1.3)]
    public double? CamberDeg { get; set; }

    /// <summary>Change of caster; positive = top further rearward.</summary>
    [Range(-15, 15)]
    [Sample(0.5)]
    public double? CasterDeg { get; set; }

    /// <summary>Change of the wheel's toe; positive = more toe-in. Not together with resetToe.</summary>
    [Range(-5, 5)]
    [Sample(0.1)]
    public double? ToeDeg { get; set; }
}
