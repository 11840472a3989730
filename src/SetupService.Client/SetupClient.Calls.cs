namespace SetupService.Client;

/// <content>The calls, each by the name it has in the contract.</content>
public sealed partial class SetupClient
{
    /// <summary>What does a problem mean?</summary>
    public Task<string> ProblemPageAsync(string name, CancellationToken cancellation = default) =>
        TextAsync($"docs/problems/{Uri.EscapeDataString(name)}", cancellation);

    /// <summary>How is it computed?</summary>
    public Task<string> MethodPageAsync(string name, CancellationToken cancellation = default) =>
        TextAsync($"docs/methods/{Uri.EscapeDataString(name)}", cancellation);

    /// <summary>What does this tyre marking say?</summary>
    public Task<TyreAnswer> TyreDecodeAsync(string marking, double? rimWidthIn = null, double? pressureKpa = null, double? topSpeedKmh = null, double? loadKg = null, double? verticalRateNPerMm = null, Units? units = null, CancellationToken cancellation = default) =>
        GetAsync<TyreAnswer>("v1/tyres/decode" + Query(("marking", marking), ("rimWidthIn", rimWidthIn), ("pressureKpa", pressureKpa), ("topSpeedKmh", topSpeedKmh), ("loadKg", loadKg), ("verticalRateNPerMm", verticalRateNPerMm), ("units", units)), cancellation);

    /// <summary>Which of these tyres suits this use best?</summary>
    public Task<TyreRankingAnswer> TyreRankingAsync(TyreRankingRequest request, Units? units = null, CancellationToken cancellation = default) =>
        SendAsync<TyreRankingAnswer>("v1/tyres/ranking" + Query(("units", units)), request, cancellation);

    /// <summary>What does this wheel marking say?</summary>
    public Task<WheelAnswer> WheelDecodeAsync(string marking, Units? units = null, CancellationToken cancellation = default) =>
        GetAsync<WheelAnswer>("v1/wheels/decode" + Query(("marking", marking), ("units", units)), cancellation);

    /// <summary>Is the process alive?</summary>
    public Task<HealthAnswer> HealthLiveAsync(CancellationToken cancellation = default) =>
        GetAsync<HealthAnswer>("health/live", cancellation);

    /// <summary>Is the service ready for requests?</summary>
    public Task<HealthAnswer> HealthReadyAsync(CancellationToken cancellation = default) =>
        GetAsync<HealthAnswer>("health/ready", cancellation);

    /// <summary>Which edition and build runs?</summary>
    public Task<VersionAnswer> VersionAsync(CancellationToken cancellation = default) =>
        GetAsync<VersionAnswer>("version", cancellation);

    /// <summary>The load index table</summary>
    public Task<LoadIndexTableAnswer> LoadIndicesAsync(CancellationToken cancellation = default) =>
        GetAsync<LoadIndexTableAnswer>("v1/reference/load-indices", cancellation);

    /// <summary>The speed symbol table</summary>
    public Task<SpeedSymbolTableAnswer> SpeedSymbolsAsync(CancellationToken cancellation = default) =>
        GetAsync<SpeedSymbolTableAnswer>("v1/reference/speed-symbols", cancellation);

    /// <summary>What changes with another wheel and tyre?</summary>
    public Task<ComparisonAnswer> FitmentComparisonAsync(ComparisonRequest request, Units? units = null, CancellationToken cancellation = default) =>
        SendAsync<ComparisonAnswer>("v1/fitment/comparison" + Query(("units", units)), request, cancellation);

    /// <summary>Does this wheel and tyre fit this axle, and carry it?</summary>
    public Task<CheckAnswer> FitmentCheckAsync(CheckRequest request, Units? units = null, Detail? detail = null, CancellationToken cancellation = default) =>
        SendAsync<CheckAnswer>("v1/fitment/check" + Query(("units", units), ("detail", detail)), request, cancellation);

    /// <summary>The corner as a picture</summary>
    public Task<string> FitmentDrawingAsync(CheckRequest request, Units? units = null, CancellationToken cancellation = default) =>
        TextAsync("v1/fitment/drawing" + Query(("units", units)), request, cancellation);

    /// <summary>The corner as a picture for a page</summary>
    public Task<string> FitmentPictureAsync(CompactQuery query, CancellationToken cancellation = default) =>
        TextAsync("v1/fitment/drawing" + Query(query), cancellation);

    /// <summary>The fit report: a check as a page to print</summary>
    public Task<string> FitmentReportAsync(CheckRequest request, Units? units = null, CancellationToken cancellation = default) =>
        TextAsync("v1/fitment/check/report" + Query(("units", units)), request, cancellation);

    /// <summary>Do these wheels and tyres fit the whole car?</summary>
    public Task<CarCheckAnswer> FitmentCarCheckAsync(CarCheckRequest request, Units? units = null, Detail? detail = null, CancellationToken cancellation = default) =>
        SendAsync<CarCheckAnswer>("v1/fitment/car-check" + Query(("units", units), ("detail", detail)), request, cancellation);

    /// <summary>Whether it fits, as a small card for a page</summary>
    public Task<string> FitmentBadgeAsync(CompactQuery query, CancellationToken cancellation = default) =>
        TextAsync("v1/fitment/badge" + Query(query), cancellation);

    /// <summary>Which offsets fit at each rim width?</summary>
    public Task<WindowAnswer> FitmentWindowAsync(WindowRequest request, Units? units = null, CancellationToken cancellation = default) =>
        SendAsync<WindowAnswer>("v1/fitment/window" + Query(("units", units)), request, cancellation);

    /// <summary>What does the wheel do over its travel and lock?</summary>
    public Task<TravelSweepAnswer> TravelSweepAsync(TravelSweepRequest request, Units? units = null, CancellationToken cancellation = default) =>
        SendAsync<TravelSweepAnswer>("v1/geometry/travel-sweep" + Query(("units", units)), request, cancellation);

    /// <summary>The travel sweep as charts</summary>
    public Task<string> TravelSweepChartAsync(TravelSweepRequest request, Units? units = null, double? widthPx = null, CancellationToken cancellation = default) =>
        TextAsync("v1/geometry/travel-sweep/chart" + Query(("units", units), ("widthPx", widthPx)), request, cancellation);

    /// <summary>What does an adjustment do, or which one gives the angles wanted?</summary>
    public Task<AdjustmentAnswer> AdjustmentAsync(AdjustmentRequest request, Units? units = null, CancellationToken cancellation = default) =>
        SendAsync<AdjustmentAnswer>("v1/geometry/adjustment" + Query(("units", units)), request, cancellation);

    /// <summary>Where is the steering axis relative to the wheel?</summary>
    public Task<SteeringAxisAnswer> SteeringAxisAsync(SteeringAxisRequest request, CancellationToken cancellation = default) =>
        SendAsync<SteeringAxisAnswer>("v1/geometry/steering-axis", request, cancellation);

    /// <summary>How does camber change with steer?</summary>
    public Task<SteerSweepAnswer> SteerSweepAsync(SteerSweepRequest request, CancellationToken cancellation = default) =>
        SendAsync<SteerSweepAnswer>("v1/geometry/steer-sweep", request, cancellation);

    /// <summary>The steer sweep as a chart</summary>
    public Task<string> SteerSweepChartAsync(SteerSweepRequest request, Units? units = null, double? widthPx = null, CancellationToken cancellation = default) =>
        TextAsync("v1/geometry/steer-sweep/chart" + Query(("units", units), ("widthPx", widthPx)), request, cancellation);

    /// <summary>Which caster and inclination follow from camber readings on turn plates?</summary>
    public Task<CasterFromReadingsAnswer> CasterFromReadingsAsync(CasterFromReadingsRequest request, CancellationToken cancellation = default) =>
        SendAsync<CasterFromReadingsAnswer>("v1/geometry/caster-from-readings", request, cancellation);

    /// <summary>What do the angles of four wheels add up to?</summary>
    public Task<AlignmentAnswer> AlignmentAsync(AlignmentRequest request, CancellationToken cancellation = default) =>
        SendAsync<AlignmentAnswer>("v1/geometry/alignment", request, cancellation);

    /// <summary>The corner as a picture, from behind and from its side</summary>
    public Task<string> GeometryDrawingAsync(DrawingRequest request, Units? units = null, CancellationToken cancellation = default) =>
        TextAsync("v1/geometry/drawing" + Query(("units", units)), request, cancellation);

    /// <summary>How stiff is the ride, and do the dampers suit the springs?</summary>
    public Task<RideAnswer> RideAsync(RideRequest request, Units? units = null, RideDetail? detail = null, CancellationToken cancellation = default) =>
        SendAsync<RideAnswer>("v1/handling/ride" + Query(("units", units), ("detail", detail)), request, cancellation);

    /// <summary>Each end pushed down and let go, before and after the change</summary>
    public Task<string> RideChartAsync(RideRequest request, Units? units = null, double? widthPx = null, CancellationToken cancellation = default) =>
        TextAsync("v1/handling/ride/chart" + Query(("units", units), ("widthPx", widthPx)), request, cancellation);

    /// <summary>What do the body and each wheel do in this turn?</summary>
    public Task<CorneringAnswer> CorneringAsync(CorneringRequest request, Units? units = null, CorneringDetail? detail = null, CancellationToken cancellation = default) =>
        SendAsync<CorneringAnswer>("v1/handling/cornering" + Query(("units", units), ("detail", detail)), request, cancellation);

    /// <summary>How do roll, wheel loads and balance change with lateral acceleration?</summary>
    public Task<CorneringSweepAnswer> CorneringSweepAsync(CorneringSweepRequest request, Units? units = null, CorneringDetail? detail = null, CancellationToken cancellation = default) =>
        SendAsync<CorneringSweepAnswer>("v1/handling/cornering-sweep" + Query(("units", units), ("detail", detail)), request, cancellation);

    /// <summary>The cornering sweep as charts</summary>
    public Task<string> CorneringSweepChartAsync(CorneringSweepRequest request, Units? units = null, double? widthPx = null, CancellationToken cancellation = default) =>
        TextAsync("v1/handling/cornering-sweep/chart" + Query(("units", units), ("widthPx", widthPx)), request, cancellation);

    /// <summary>How hard does it corner while it brakes or drives?</summary>
    public Task<EnvelopeAnswer> EnvelopeAsync(EnvelopeRequest request, Units? units = null, CancellationToken cancellation = default) =>
        SendAsync<EnvelopeAnswer>("v1/handling/envelope" + Query(("units", units)), request, cancellation);

    /// <summary>The grip envelope as charts</summary>
    public Task<string> EnvelopeChartAsync(EnvelopeRequest request, Units? units = null, double? widthPx = null, CancellationToken cancellation = default) =>
        TextAsync("v1/handling/envelope/chart" + Query(("units", units), ("widthPx", widthPx)), request, cancellation);

    /// <summary>How much static camber should I run?</summary>
    public Task<CamberTargetAnswer> CamberTargetAsync(CamberTargetRequest request, Units? units = null, CancellationToken cancellation = default) =>
        SendAsync<CamberTargetAnswer>("v1/handling/camber-target" + Query(("units", units)), request, cancellation);

    /// <summary>Grip and braking over static camber as a chart</summary>
    public Task<string> CamberTargetChartAsync(CamberTargetRequest request, Units? units = null, double? widthPx = null, CancellationToken cancellation = default) =>
        TextAsync("v1/handling/camber-target/chart" + Query(("units", units), ("widthPx", widthPx)), request, cancellation);

    /// <summary>What would each of these changes do, alone and together?</summary>
    public Task<WhatIfAnswer> WhatIfAsync(WhatIfRequest request, Units? units = null, CancellationToken cancellation = default) =>
        SendAsync<WhatIfAnswer>("v1/handling/what-if" + Query(("units", units)), request, cancellation);

    /// <summary>What each change does, as a picture</summary>
    public Task<string> WhatIfChartAsync(WhatIfRequest request, Units? units = null, double? widthPx = null, CancellationToken cancellation = default) =>
        TextAsync("v1/handling/what-if/chart" + Query(("units", units), ("widthPx", widthPx)), request, cancellation);

    /// <summary>Why do the tyres wear as they do?</summary>
    public Task<DiagnosisAnswer> WearDiagnosisAsync(DiagnosisRequest request, Units? units = null, CancellationToken cancellation = default) =>
        SendAsync<DiagnosisAnswer>("v1/wear/diagnosis" + Query(("units", units)), request, cancellation);

    /// <summary>The treads as a picture</summary>
    public Task<string> WearDiagnosisChartAsync(DiagnosisRequest request, Units? units = null, double? widthPx = null, CancellationToken cancellation = default) =>
        TextAsync("v1/wear/diagnosis/chart" + Query(("units", units), ("widthPx", widthPx)), request, cancellation);

    /// <summary>What do tread temperatures and hot pressures say, and which cold pressure to set?</summary>
    public Task<TemperaturesAnswer> WearTemperaturesAsync(TemperaturesRequest request, Units? units = null, CancellationToken cancellation = default) =>
        SendAsync<TemperaturesAnswer>("v1/wear/temperatures" + Query(("units", units)), request, cancellation);

    /// <summary>How fast do these tyres wear, and how long do they last?</summary>
    public Task<ForecastAnswer> WearForecastAsync(ForecastRequest request, Units? units = null, CancellationToken cancellation = default) =>
        SendAsync<ForecastAnswer>("v1/wear/forecast" + Query(("units", units)), request, cancellation);

    /// <summary>The forecast as charts</summary>
    public Task<string> WearForecastChartAsync(ForecastRequest request, Units? units = null, double? widthPx = null, CancellationToken cancellation = default) =>
        TextAsync("v1/wear/forecast/chart" + Query(("units", units), ("widthPx", widthPx)), request, cancellation);

    /// <summary>Did the change alter how the tread wears?</summary>
    public Task<BeforeAfterAnswer> WearBeforeAfterAsync(BeforeAfterRequest request, Units? units = null, CancellationToken cancellation = default) =>
        SendAsync<BeforeAfterAnswer>("v1/wear/before-after" + Query(("units", units)), request, cancellation);

    /// <summary>Wear before and after as charts</summary>
    public Task<string> WearBeforeAfterChartAsync(BeforeAfterRequest request, Units? units = null, double? widthPx = null, CancellationToken cancellation = default) =>
        TextAsync("v1/wear/before-after/chart" + Query(("units", units), ("widthPx", widthPx)), request, cancellation);

    /// <summary>Which parts should I buy, if any?</summary>
    public Task<PlanAnswer> PlanAsync(PlanRequest request, Units? units = null, CancellationToken cancellation = default) =>
        SendAsync<PlanAnswer>("v1/plans" + Query(("units", units)), request, cancellation);

    /// <summary>How is the package fitted, set and proven?</summary>
    public Task<PlanSheetsAnswer> PlanSheetsAsync(PlanSheetsRequest request, Units? units = null, CancellationToken cancellation = default) =>
        SendAsync<PlanSheetsAnswer>("v1/plans/sheets" + Query(("units", units)), request, cancellation);

    /// <summary>The sheets as a page to print</summary>
    public Task<string> PlanSheetsPageAsync(PlanSheetsRequest request, Units? units = null, CancellationToken cancellation = default) =>
        TextAsync("v1/plans/sheets/page" + Query(("units", units)), request, cancellation);

    private static string Query(CompactQuery query)
    {
        ArgumentNullException.ThrowIfNull(query);
        return Query(
            ("new", query.New), ("now", query.Now), ("axle", query.Axle), ("in", query.InMm), ("out", query.OutMm), ("over", query.OverMm), ("maximumAxleLoadKg", query.MaximumAxleLoadKg),
            ("minimumLoadIndex", query.MinimumLoadIndex), ("topSpeedKmh", query.TopSpeedKmh), ("centreBoreMm", query.CentreBoreMm), ("units", query.Units));
    }
}
