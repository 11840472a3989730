using System.Text.Json;
using System.Text.Json.Serialization;
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
using SetupService.Api.Http.Contract;
using SetupService.Api.Plans;
using SetupService.Api.Plans.Ranking;
using SetupService.Api.Plans.Sheets;
using SetupService.Api.Tyres;
using SetupService.Api.Vehicles;
using SetupService.Api.Wear.BeforeAfter;
using SetupService.Api.Wear.Diagnosis;
using SetupService.Api.Wear.Forecast;
using SetupService.Api.Wear.Temperatures;
using SetupService.Api.Wheels;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Geometry.Alignment;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Envelope;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Planning;
using SetupService.Domain.Planning.Ranking;
using SetupService.Domain.Planning.Sheets;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Search;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.BeforeAfter;
using SetupService.Domain.Wear.Cautions;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Forecast;
using SetupService.Domain.Wear.Pressures;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.Temperatures;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Host;

/// <summary>
/// Every JSON type this service reads and writes, generated at build time. Add each request and each answer type
/// here; what a type contains comes with it. Each enum is written by its names: give it a converter here.
/// </summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    PropertyNameCaseInsensitive = false,
    NumberHandling = JsonNumberHandling.Strict,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    ReadCommentHandling = JsonCommentHandling.Disallow,
    AllowTrailingCommas = false,
    AllowDuplicateProperties = false,
    AllowOutOfOrderMetadataProperties = true,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    MaxDepth = Http.ServiceLimits.JsonDepth,
    Converters =
    [
        typeof(EnumNameConverter<CheckId>),
        typeof(EnumNameConverter<CheckStatus>),
        typeof(EnumNameConverter<WindowStatus>),
        typeof(EnumNameConverter<CamberChangePlace>),
        typeof(EnumNameConverter<CarAxle>),
        typeof(EnumNameConverter<DrivenAxle>),
        typeof(EnumNameConverter<DifferentialKind>),
        typeof(EnumNameConverter<CarBody>),
        typeof(EnumNameConverter<FastenerKind>),
        typeof(EnumNameConverter<ClearanceMeasuredAt>),
        typeof(EnumNameConverter<InboardNeighbour>),
        typeof(EnumNameConverter<FastenerSeat>),
        typeof(EnumNameConverter<TyreConstruction>),
        typeof(EnumNameConverter<Adjuster>),
        typeof(EnumNameConverter<Obstacle>),
        typeof(EnumNameConverter<AxleMotion>),
        typeof(EnumNameConverter<WheelSide>),
        typeof(EnumNameConverter<SuspensionMember>),
        typeof(EnumNameConverter<IncludedAngleHint>),
        typeof(EnumNameConverter<TurnDirection>),
        typeof(EnumNameConverter<FirstAxle>),
        typeof(EnumNameConverter<EnvelopeEnd>),
        typeof(EnumNameConverter<TyreCategory>),
        typeof(EnumNameConverter<TyreCriterion>),
        typeof(EnumNameConverter<TractionGrade>),
        typeof(EnumNameConverter<TemperatureGrade>),
        typeof(EnumNameConverter<LabelClass>),
        typeof(EnumNameConverter<NoiseClass>),
        typeof(EnumNameConverter<DamperVerdict>),
        typeof(EnumNameConverter<WheelPosition>),
        typeof(EnumNameConverter<Thermometer>),
        typeof(EnumNameConverter<TreadPattern>),
        typeof(EnumNameConverter<TyreDamage>),
        typeof(EnumNameConverter<WearCause>),
        typeof(EnumNameConverter<WearCheck>),
        typeof(EnumNameConverter<ComparedClock>),
        typeof(EnumNameConverter<TreadAspect>),
        typeof(EnumNameConverter<RangeVerdict>),
        typeof(EnumNameConverter<WheelPairs>),
        typeof(EnumNameConverter<ReadingOrder>),
        typeof(EnumNameConverter<PressureContradiction>),
        typeof(EnumNameConverter<TreadPlace>),
        typeof(EnumNameConverter<ForecastStatus>),
        typeof(EnumNameConverter<HeatActionKind>),
        typeof(EnumNameConverter<ChangeOutcome>),
        typeof(EnumNameConverter<PartKind>),
        typeof(EnumNameConverter<PartJoint>),
        typeof(EnumNameConverter<PlanGoal>),
        typeof(EnumNameConverter<RejectionCode>),
        typeof(EnumNameConverter<Fastener>),
        typeof(EnumNameConverter<WorkStage>),
        typeof(EnumNameConverter<AlignmentAngle>),
        typeof(EnumNameConverter<AlignmentTask>),
    ])]
[JsonSerializable(typeof(HealthAnswer))]
[JsonSerializable(typeof(VersionAnswer))]
[JsonSerializable(typeof(TyreAnswer))]
[JsonSerializable(typeof(LoadIndexTableAnswer))]
[JsonSerializable(typeof(SpeedSymbolTableAnswer))]
[JsonSerializable(typeof(WheelAnswer))]
[JsonSerializable(typeof(VehicleDocument))]
[JsonSerializable(typeof(ComparisonRequest))]
[JsonSerializable(typeof(ComparisonAnswer))]
[JsonSerializable(typeof(CheckRequest))]
[JsonSerializable(typeof(CheckAnswer))]
[JsonSerializable(typeof(CarCheckRequest))]
[JsonSerializable(typeof(CarCheckAnswer))]
[JsonSerializable(typeof(WindowRequest))]
[JsonSerializable(typeof(WindowAnswer))]
[JsonSerializable(typeof(TravelSweepRequest))]
[JsonSerializable(typeof(TravelSweepAnswer))]
[JsonSerializable(typeof(AdjustmentRequest))]
[JsonSerializable(typeof(AdjustmentAnswer))]
[JsonSerializable(typeof(SteeringAxisRequest))]
[JsonSerializable(typeof(SteeringAxisAnswer))]
[JsonSerializable(typeof(SteerSweepRequest))]
[JsonSerializable(typeof(SteerSweepAnswer))]
[JsonSerializable(typeof(CasterFromReadingsRequest))]
[JsonSerializable(typeof(CasterFromReadingsAnswer))]
[JsonSerializable(typeof(AlignmentRequest))]
[JsonSerializable(typeof(AlignmentAnswer))]
[JsonSerializable(typeof(DrawingRequest))]
[JsonSerializable(typeof(TyreRankingRequest))]
[JsonSerializable(typeof(TyreRankingAnswer))]
[JsonSerializable(typeof(RideRequest))]
[JsonSerializable(typeof(RideAnswer))]
[JsonSerializable(typeof(WhatIfRequest))]
[JsonSerializable(typeof(WhatIfAnswer))]
[JsonSerializable(typeof(DiagnosisRequest))]
[JsonSerializable(typeof(DiagnosisAnswer))]
[JsonSerializable(typeof(CamberTargetRequest))]
[JsonSerializable(typeof(CamberTargetAnswer))]
[JsonSerializable(typeof(CorneringRequest))]
[JsonSerializable(typeof(CorneringAnswer))]
[JsonSerializable(typeof(CorneringSweepRequest))]
[JsonSerializable(typeof(CorneringSweepAnswer))]
[JsonSerializable(typeof(EnvelopeRequest))]
[JsonSerializable(typeof(EnvelopeAnswer))]
[JsonSerializable(typeof(TemperaturesRequest))]
[JsonSerializable(typeof(TemperaturesAnswer))]
[JsonSerializable(typeof(ForecastRequest))]
[JsonSerializable(typeof(ForecastAnswer))]
[JsonSerializable(typeof(BeforeAfterRequest))]
[JsonSerializable(typeof(BeforeAfterAnswer))]
[JsonSerializable(typeof(PlanRequest))]
[JsonSerializable(typeof(PlanAnswer))]
[JsonSerializable(typeof(PlanSheetsRequest))]
[JsonSerializable(typeof(PlanSheetsAnswer))]
[JsonSerializable(typeof(BatchCarLine))]
[JsonSerializable(typeof(BatchCandidateLine))]
[JsonSerializable(typeof(BatchAnswerLine))]
[JsonSerializable(typeof(CatalogueCarLine))]
[JsonSerializable(typeof(CatalogueAnswerLine))]
internal sealed partial class ContractJsonContext : JsonSerializerContext;
