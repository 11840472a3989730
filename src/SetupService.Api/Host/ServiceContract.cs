using FluentValidation;
using SetupService.Api.Fitment;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Geometry.Adjusting;
using SetupService.Api.Geometry.Steering;
using SetupService.Api.Geometry.Sweeps;
using SetupService.Api.Geometry.Views;
using SetupService.Api.Handling.CamberTarget;
using SetupService.Api.Handling.Cornering;
using SetupService.Api.Handling.Ride;
using SetupService.Api.Handling.WhatIf;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;
using SetupService.Api.Wear.BeforeAfter;
using SetupService.Api.Wear.Diagnosis;
using SetupService.Api.Wear.Forecast;
using SetupService.Api.Wear.Temperatures;

namespace SetupService.Api.Host;

/// <summary>The contract this service keeps: all its JSON types, and the rules beyond one member's type and range.</summary>
public static class ServiceContract
{
    /// <summary>The contract; one for the whole process, usable without a host.</summary>
    public static JsonContract Instance { get; } = new(ContractJsonContext.Default, Rules());

    // One validator a request type; documents inside it are checked by its child validators.
    private static IReadOnlyList<IValidator> Rules() =>
    [
        new VehicleDocumentRules(),
        new ComparisonRequestRules(),
        new CheckRequestRules(),
        new WindowRequestRules(),
        new TravelSweepRules(),
        new TopMountMoveRules(),
        new AdjustmentRules(),
        new SteeringAxisRules(),
        new SteerSweepRules(),
        new CornerDrawingRules(),
        new RideRules(),
        new WhatIfRules(),
        new CamberTargetRules(),
        new CorneringRules(),
        new CorneringSweepRules(),
        new DiagnosisRules(),
        new TemperaturesRules(),
        new ForecastRules(),
        new BeforeAfterRules(),
        new BatchCarLineRules(),
        new BatchCandidateLineRules(),
    ];
}
