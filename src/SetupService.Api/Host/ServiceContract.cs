using SetupService.Api.Fitment.Batch;
using SetupService.Api.Fitment.CarCheck;
using SetupService.Api.Fitment.Catalogue;
using SetupService.Api.Fitment.Check;
using SetupService.Api.Fitment.Compare;
using SetupService.Api.Fitment.Window;
using SetupService.Api.Geometry.Adjustments;
using SetupService.Api.Geometry.Alignment;
using SetupService.Api.Geometry.Drawing;
using SetupService.Api.Geometry.Steering;
using SetupService.Api.Geometry.TravelSweeps;
using SetupService.Api.Handling.CamberTarget;
using SetupService.Api.Handling.Cornering;
using SetupService.Api.Handling.CorneringSweep;
using SetupService.Api.Handling.Envelope;
using SetupService.Api.Handling.Ride;
using SetupService.Api.Handling.WhatIf;
using SetupService.Api.Http.Documents;
using SetupService.Api.Plans;
using SetupService.Api.Plans.Ranking;
using SetupService.Api.Plans.Sheets;
using SetupService.Api.Vehicles;
using SetupService.Api.Wear.BeforeAfter;
using SetupService.Api.Wear.Diagnosis;
using SetupService.Api.Wear.Forecast;
using SetupService.Api.Wear.Temperatures;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Cars;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Host;

/// <summary>The contract this service keeps: all its JSON types, and the rules beyond one member's type and range.</summary>
public static class ServiceContract
{
    /// <summary>The contract; one for the whole process, usable without a host.</summary>
    public static JsonContract Instance { get; } = new(ContractJsonContext.Default, Rules(), Mappings());

    // At most one validator a request type: rules between members.
    private static IReadOnlyList<DocumentRules> Rules() =>
    [
        DocumentRules.Create(static () => new TravelSweepRules()),
        DocumentRules.Create(static () => new AdjustmentRules()),
        DocumentRules.Create(static () => new SteeringAxisRules()),
        DocumentRules.Create(static () => new SteerSweepRules()),
        DocumentRules.Create(static () => new DrawingRules()),
        DocumentRules.Create(static () => new AlignmentRules()),
        DocumentRules.Create(static () => new RideRules()),
        DocumentRules.Create(static () => new WhatIfRules()),
        DocumentRules.Create(static () => new CamberTargetRules()),
        DocumentRules.Create(static () => new CorneringRules()),
        DocumentRules.Create(static () => new CorneringSweepRules()),
        DocumentRules.Create(static () => new EnvelopeRules()),
        DocumentRules.Create(static () => new DiagnosisRules()),
        DocumentRules.Create(static () => new TemperaturesRules()),
        DocumentRules.Create(static () => new ForecastRules()),
        DocumentRules.Create(static () => new TyreRankingRules()),
        DocumentRules.Create(static () => new BeforeAfterRules()),
        DocumentRules.Create(static () => new PlanRules()),
        DocumentRules.Create(static () => new PlanSheetsRules()),
    ];

    // What the mapping of a request to domain values refuses is told together with every other fault.
    private static IReadOnlyList<DocumentMapping> Mappings() =>
    [
        DocumentMapping.Create<VehicleDocument, Vehicle>(VehicleMapper.Map),
        DocumentMapping.Create<ComparisonRequest, (Fitting, Fitting)>(CompareMapper.Map),
        DocumentMapping.Create<CheckRequest, (Vehicle, Fitting)>(CheckMapper.Map),
        DocumentMapping.Create<CarCheckRequest, (Vehicle, Fitting?, Fitting?)>(CarCheckMapper.Map),
        DocumentMapping.Create<WindowRequest, (Vehicle, Tyre)>(WindowMapper.Map),
        DocumentMapping.Create<TyreRankingRequest, (Tyre[], Vehicle?, Wheel?)>(TyreRankingMapper.Read),
        DocumentMapping.OfMember<BatchCarLine, VehicleDocument, Vehicle>("vehicle", static one => one.Vehicle, VehicleMapper.MapForFitment),
        DocumentMapping.Create<BatchCandidateLine, CarCandidate>(CandidateMapper.Map),
        DocumentMapping.Create<CatalogueCarLine, FitmentCar>(CatalogueMapper.Map),
        OfCar<TravelSweepRequest>(static one => one.Vehicle),
        OfCar<AdjustmentRequest>(static one => one.Vehicle),
        OfCar<DrawingRequest>(static one => one.Vehicle),
        OfCar<AlignmentRequest>(static one => one.Vehicle),
        OfCar<RideRequest>(static one => one.Vehicle),
        OfCar<WhatIfRequest>(static one => one.Vehicle),
        OfCar<CamberTargetRequest>(static one => one.Vehicle),
        OfCar<CorneringRequest>(static one => one.Vehicle),
        OfCar<CorneringSweepRequest>(static one => one.Vehicle),
        OfCar<EnvelopeRequest>(static one => one.Vehicle),
        OfCar<DiagnosisRequest>(static one => one.Vehicle),
        OfCar<TemperaturesRequest>(static one => one.Vehicle),
        DocumentMapping.Create<PlanRequest, PlanInputs>(PlanMapper.Map),
        DocumentMapping.Create<PlanSheetsRequest, PlanInputs>(SheetsMapper.Map),
    ];

    private static DocumentMapping OfCar<T>(Func<T, VehicleDocument?> car)
        where T : class => DocumentMapping.OfMember<T, VehicleDocument, Vehicle>("vehicle", car, VehicleMapper.Map);
}
