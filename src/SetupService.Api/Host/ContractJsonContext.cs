using System.Text.Json;
using System.Text.Json.Serialization;
using SetupService.Api.Fitment;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Geometry.Adjusting;
using SetupService.Api.Geometry.Alignment;
using SetupService.Api.Geometry.Steering;
using SetupService.Api.Geometry.Sweeps;
using SetupService.Api.Geometry.Views;
using SetupService.Api.Handling.CamberTarget;
using SetupService.Api.Handling.Cornering;
using SetupService.Api.Handling.Ride;
using SetupService.Api.Handling.WhatIf;
using SetupService.Api.Tyres;
using SetupService.Api.Vehicles;
using SetupService.Api.Wear.BeforeAfter;
using SetupService.Api.Wear.Diagnosis;
using SetupService.Api.Wear.Forecast;
using SetupService.Api.Wear.Temperatures;
using SetupService.Api.Wheels;

namespace SetupService.Api.Host;

/// <summary>
/// Every JSON type this service reads and writes, generated at build time. Add each request and each answer type
/// here; what a type contains comes with it.
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
    MaxDepth = Http.ServiceLimits.JsonDepth)]
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
[JsonSerializable(typeof(WindowRequest))]
[JsonSerializable(typeof(WindowAnswer))]
[JsonSerializable(typeof(TravelSweepRequest))]
[JsonSerializable(typeof(TravelSweepAnswer))]
[JsonSerializable(typeof(TopMountMoveRequest))]
[JsonSerializable(typeof(TopMountMoveAnswer))]
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
[JsonSerializable(typeof(CornerDrawingRequest))]
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
[JsonSerializable(typeof(TemperaturesRequest))]
[JsonSerializable(typeof(TemperaturesAnswer))]
[JsonSerializable(typeof(ForecastRequest))]
[JsonSerializable(typeof(ForecastAnswer))]
[JsonSerializable(typeof(BeforeAfterRequest))]
[JsonSerializable(typeof(BeforeAfterAnswer))]
[JsonSerializable(typeof(BatchCarLine))]
[JsonSerializable(typeof(BatchCandidateLine))]
[JsonSerializable(typeof(BatchAnswerLine))]
internal sealed partial class ContractJsonContext : JsonSerializerContext;
