using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;
using SetupService.Api.Tyres;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Api.Wheels;

namespace SetupService.Api.Vehicles;

/// <summary>One axle: its wheels, tyres, hubs, gaps, angles, springs. The left corner stands for both unless said otherwise.</summary>
public sealed record AxleDocument
{
    /// <summary>Distance between the contact centres of left and right.</summary>
    [Range(900, 2200)]
    [Sample(1510.0)]
    public double? TrackMm { get; set; }

    /// <summary>Unsprung mass per wheel, wheel and tyre included.</summary>
    [Range(5, 500)]
    [Sample(38.0)]
    public double? UnsprungMassKg { get; set; }

    /// <summary>Largest load the axle may carry, as the car's plate states it.</summary>
    [Range(50, 5000)]
    [Sample(870.0)]
    public double? MaximumAxleLoadKg { get; set; }

    /// <summary>Cold tyre pressure the car's plate states for this axle, for the load it is mostly driven with.</summary>
    [Range(80, 500)]
    [Sample(230.0)]
    public double? PlacardPressureKpa { get; set; }

    /// <summary>Lowest tyre load index the car's papers allow.</summary>
    [Range(0, 200)]
    [Sample(87)]
    public int? MinimumLoadIndex { get; set; }

    /// <summary>Height of the wheel centre above the ground, measured with the car as driven; estimated from tyre and load where left out.</summary>
    [Range(100, 600)]
    [Sample(302.0)]
    public double? LoadedRadiusMm { get; set; }

    /// <summary>The wheel fitted now.</summary>
    public WheelDocument? Wheel { get; set; }

    /// <summary>The tyre fitted now.</summary>
    public TyreDocument? Tyre { get; set; }

    /// <summary>The hub and its fasteners.</summary>
    public HubDocument? Hub { get; set; }

    /// <summary>The gaps around the wheel and tyre fitted now.</summary>
    public ClearanceDocument? Clearance { get; set; }

    /// <summary>Wheel and steering-axis angles.</summary>
    public AlignmentDocument? Alignment { get; set; }

    /// <summary>The suspension's geometry, by kind.</summary>
    public SuspensionDocument? Suspension { get; set; }

    /// <summary>The main spring.</summary>
    public SpringDocument? Spring { get; set; }

    /// <summary>The damper.</summary>
    public DamperDocument? Damper { get; set; }

    /// <summary>The bump stop.</summary>
    public BumpStopDocument? BumpStop { get; set; }

    /// <summary>The anti-roll bar.</summary>
    public AntiRollBarDocument? AntiRollBar { get; set; }

    /// <summary>How far the wheel gives under side force.</summary>
    public ComplianceDocument? Compliance { get; set; }

    /// <summary>Height of the roll centre above the ground at ride height.</summary>
    [Range(-500, 1000)]
    [Sample(55.0)]
    public double? RollCentreHeightMm { get; set; }

    /// <summary>Wheel travel from ride height to the first touch of the bump stop.</summary>
    [Range(0, 500)]
    [Sample(68.0)]
    public double? BumpTravelMm { get; set; }

    /// <summary>Wheel travel from ride height to full droop.</summary>
    [Range(0, 500)]
    [Sample(85.0)]
    public double? ReboundTravelMm { get; set; }

    /// <summary>How much higher the body stands at this axle than where points, angles and travels are stated; negative = lowered.</summary>
    [Range(-150, 150)]
    [Sample(-15.0)]
    public double? RideHeightChangeMm { get; set; }

    /// <summary>How far the wheel angles can be set with the parts fitted.</summary>
    public AdjustableDocument? Adjustable { get; set; }
}
