using System.ComponentModel.DataAnnotations;
using FluentValidation;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Api.Geometry.Drawing;

/// <summary>A car's corner to be drawn at one position of its wheel. Only a suspension with points can be drawn; without a tyre its width is made up, and the picture says so.</summary>
public sealed record DrawingRequest : CornerRequest
{
    /// <summary>Wheel travel it is drawn at; ride height where left out.</summary>
    [Range(-500, 500)]
    [Sample(0.0)]
    public double? TravelMm { get; set; }

    /// <summary>Rack travel it is drawn at; the middle where left out.</summary>
    [Range(-200, 200)]
    [Sample(0.0)]
    public double? RackMm { get; set; }

    /// <summary>How both wheels move; only a twist beam tells the difference. Parallel where left out.</summary>
    [Sample("parallel")]
    public AxleMotion? Motion { get; set; }
}

/// <summary>What a corner to be drawn must keep beyond types and ranges.</summary>
public sealed class DrawingRules : AbstractValidator<DrawingRequest>
{
    private static readonly InlineValidator<AxleDocument> HasPoints = new()
    {
        rules => rules.RuleFor(axle => axle.Suspension).Must(static suspension => suspension is not MeasuredSuspensionDocument)
            .Says(FaultCodes.Inconsistent, "a measured suspension has no points to be drawn.").OverridePropertyName("Suspension.Kind"),
    };

    /// <summary>Makes the rules; they hold no state.</summary>
    public DrawingRules()
    {
        this.CornerIsWhole();
        this.OfAxleAsked(static _ => HasPoints);
        RuleFor(request => request.RackMm).Must(rackMm => rackMm is null or 0).When(request => request.Suspension is SemiTrailingArmDocument or TwistBeamDocument)
            .Says(FaultCodes.Inconsistent, "this kind of suspension has no rack; leave rackMm out.");
    }
}
