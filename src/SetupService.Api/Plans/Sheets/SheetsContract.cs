using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using FluentValidation;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Wear.BeforeAfter;
using SetupService.Domain.Planning;
using SetupService.Domain.Planning.Sheets;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Plans.Sheets;

/// <summary>A plan's body, the parts chosen of it, and what the workshop knows beside it.</summary>
public sealed record PlanSheetsRequest : PlanRequest
{
    /// <summary>Ids of the parts chosen, with all they require; empty = no parts, only settings. Left out, the plan's recommendation is taken.</summary>
    [StringLength(60)]
    [Count(0, PackageSearch.MostParts)]
    [Sample("top-mounts")]
    public string[]? Chosen { get; set; }

    /// <summary>Torques out of the makers' papers; the sheets tell no others.</summary>
    [Count(0, 40)]
    public TorqueDocument[]? Torques { get; set; }

    /// <summary>From the ground to the front arch lip above the wheel centre, as the car stands now.</summary>
    [Range(300, 1500)]
    [Sample(662.0)]
    public double? FrontArchHeightMm { get; set; }

    /// <summary>The same behind.</summary>
    [Range(300, 1500)]
    [Sample(668.0)]
    public double? RearArchHeightMm { get; set; }

    /// <summary>Temperature of the tyres when the cold pressures in wear were set; this and the next two are as in temperatures.</summary>
    [Range(-40, 250)]
    [Sample(18.0)]
    public double? ColdTemperatureC { get; set; }

    /// <summary>The same before the next session.</summary>
    [Range(-40, 250)]
    [Sample(27.0)]
    public double? NextColdTemperatureC { get; set; }

    /// <summary>Altitude of the place.</summary>
    [Range(-500, 5000)]
    [Sample(240.0)]
    public double? AltitudeM { get; set; }

    /// <summary>Depths read as the clocks ran on, before the change, as before-after takes them: they tell how much driving would show it.</summary>
    public TyreSetDocument? Before { get; set; }

    /// <summary>Ratio of the wear rates, after over before, that is hoped for; by the plan's tread life where left out.</summary>
    [Range(0.01, 10)]
    [Sample(0.8)]
    public double? ExpectedRatio { get; set; }

    /// <summary>Sessions of the test; 4 where left out.</summary>
    [Range(1, 50)]
    [Sample(4)]
    public int? TestSessionCount { get; set; }

    /// <summary>Laps in each session; a quarter of use.lapsPerDay where left out.</summary>
    [Range(1, 500)]
    [Sample(10.0)]
    public double? LapsPerSession { get; set; }
}

/// <summary>A torque out of the makers' papers.</summary>
public sealed record TorqueDocument
{
    /// <summary>What is tightened.</summary>
    [JsonRequired]
    [Sample("wheelFasteners")]
    public Fastener Fastener { get; set; }

    /// <summary>At which axle; at both where left out.</summary>
    [Sample("front")]
    public CarAxle? Axle { get; set; }

    /// <summary>The torque.</summary>
    [JsonRequired]
    [Range(1, 1000)]
    [Sample(110.0)]
    public double TorqueNm { get; set; }
}

/// <summary>What a request for sheets must keep beyond types and ranges: a sound plan, sound depths, each fastener's torque once.</summary>
public sealed class PlanSheetsRules : AbstractValidator<PlanSheetsRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public PlanSheetsRules()
    {
        Include(new PlanRules());
        RuleFor(request => request.Before!).SetValidator(new TyreSetRules()).When(request => request.Before is not null);
        RuleForEach(request => request.Torques)
            .Must(static (request, torque) => torque is null || Array.FindIndex(request.Torques!, other => other?.Fastener == torque.Fastener && other.Axle == torque.Axle) == Array.FindIndex(request.Torques!, other => ReferenceEquals(other, torque)))
            .Says(FaultCodes.Inconsistent, static (_, torque) => $"the torque of {EnumNames<Fastener>.GetName(torque.Fastener)} is given twice for the same axle.");
    }
}
