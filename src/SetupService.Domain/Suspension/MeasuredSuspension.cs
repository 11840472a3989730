using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Readings;

namespace SetupService.Domain.Suspension;

/// <summary>
/// A suspension known by readings: camber, and toe where it was read, over travel; steering axis and top mount as far as they were read. The
/// curves are made once, when they are first asked for.
/// </summary>
public sealed class MeasuredSuspension : SuspensionModel
{
    /// <summary>How far the curves are carried on beyond the first and last reading, mm (a stated assumption, no source).</summary>
    public const double ExtensionMm = TravelCurve.ExtensionMm;

    // Readings of camber do not tell how far the wheel centre moves sideways.
    private static readonly SuspensionGap SidewaysNeedsPoints = new(SuspensionGapKind.NeedsPoints, ["/suspension/points"]);

    private readonly Lazy<(MeasuredCorner? Corner, CornerReadingsFault? Fault)> _made;
    private readonly Lazy<IReadOnlyList<SuspectInput>> _suspects;

    internal MeasuredSuspension(CornerReadings readings)
    {
        Readings = readings;
        _made = new(() => (MeasuredCorner.From(readings, out var fault), fault), LazyThreadSafetyMode.PublicationOnly);
        _suspects = new(() => Corner is { } corner ? SuspectInputs.Find(readings, corner) : [], LazyThreadSafetyMode.PublicationOnly);
    }

    /// <summary>What was read.</summary>
    public CornerReadings Readings { get; }

    /// <summary>The corner they make; null where <see cref="Fault"/> says why they make none.</summary>
    public MeasuredCorner? Corner => _made.Value.Corner;

    /// <summary>Why the readings make no corner; null where they do.</summary>
    public CornerReadingsFault? Fault => _made.Value.Fault;

    /// <inheritdoc />
    public override SuspensionLayout? Layout => SuspensionLayout.Measured;

    /// <inheritdoc />
    public override SuspensionFigures Tells => SuspensionFigures.CamberOverTravel;

    /// <inheritdoc />
    public override IReadOnlyList<Contradiction> Contradictions
    {
        get
        {
            if (Fault is not { } fault) return [];
            var (member, message) = MeasuredWords.Fault(fault);
            return [new(member == "readings" ? Readings.TravelMember : member, message)];
        }
    }

    /// <summary>Inputs that can hardly both be right; empty where nothing contradicts.</summary>
    public IReadOnlyList<SuspectInput> Suspects => _suspects.Value;

    /// <inheritdoc />
    public override IReadOnlyList<Caution> Cautions(string axle, UnitSystem units = UnitSystem.Metric) =>
        [.. Suspects.Select(input => SuspectInputCautions.Describe(input, Readings, axle, units))];

    /// <inheritdoc />
    public override IReadOnlyList<Assumption> Assumptions(string axle, WheelSetup setup) =>
        Corner is { } corner ? SuspensionAssumptions.Find(corner, Readings, axle, setup) : [];

    /// <inheritdoc />
    public override RideHeightGap WhyNotAtRide(WheelSetup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        return Corner is { } corner
            ? new(SuspensionGapKind.BeyondReadings, MeasuredWords.BeyondReadings(-setup.RideHeightChangeMm, corner.FirstMm, corner.LastMm), ReadingsPointer)
            : new(SuspensionGapKind.Contradicts, Contradictions[0].Message, "/suspension/" + Contradictions[0].Member);
    }

    /// <inheritdoc />
    public override bool TellsToe => Corner is { ToeGap: null };

    /// <inheritdoc />
    public override string ReadingsPointer => "/suspension/" + Readings.TravelMember;

    /// <inheritdoc />
    public override string SweepMethod => "measured-corner";

    /// <inheritdoc />
    public override SuspensionModel WithWheelMoved(double outboardMm, WheelSetup setup)
    {
        if (Corner?.CamberDegAt(0) is not { } statedDeg) return this;

        // A place further out along the spin axis stands lower by its share of the axis' slope, the sine of camber.
        var stated = Math.Sin(double.DegreesToRadians(statedDeg));
        return From(Readings with
        {
            Travel = [.. Readings.Travel.Select(one => one with { TravelMm = one.TravelMm - (outboardMm * (Math.Sin(double.DegreesToRadians(one.CamberDeg)) - stated)) })],
        });
    }

    /// <inheritdoc />
    public override SuspensionModel WithCamberSet(double changeDeg) => From(Readings with
    {
        Travel = [.. Readings.Travel.Select(one => one with { CamberDeg = one.CamberDeg + changeDeg })],
        Steer = [.. Readings.Steer.Select(one => one with { CamberDeg = one.CamberDeg + changeDeg })],
        TopMount = [.. Readings.TopMount.Select(one => one with { CamberDeg = one.CamberDeg + changeDeg })],
    });

    /// <inheritdoc />
    public override double? ReadCamberDeg => Corner?.CamberDegAt(0);

    /// <inheritdoc />
    public override double? ReadToeDeg => Corner?.ToeDegAt(0);

    /// <inheritdoc />
    public override StatedFigures? AtStated(WheelSetup setup) => Corner is null ? null : new StatedFigures
    {
        CasterDeg = Corner.CasterDeg?.Value,
        SteeringAxisInclinationDeg = Corner.SteeringAxisInclinationDeg?.Value,
    };

    /// <inheritdoc />
    public override WheelMotion? MotionOf(WheelSetup setup) => Corner is null ? null : new TabulatedMotion(setup, Corner);

    /// <inheritdoc />
    public override WheelPath PathOver(WheelSetup setup, double fromMm, double toMm, WorkBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(setup);
        if (Corner is null) return Unknown(setup, ContradictionGap());
        if (Corner.CamberAt(0) is not { } stated) return Unknown(setup, BeyondReadings);
        var camberShiftDeg = (setup.CamberDeg - stated.AngleDeg.Value) ?? 0;
        var (places, errorDeg, isExtended) = (new List<WheelPathPoint>(), 0.0, false);
        SuspensionGap? gap = null;
        foreach (var travelMm in PathTravels.Between(fromMm, toMm))
        {
            if (Corner.CamberAt(travelMm) is not { } camber)
            {
                gap = BeyondReadings with { ReachedMm = places.Count > 0 ? places[^1].TravelMm : null };
                break;
            }

            errorDeg = Math.Max(errorDeg, camber.AngleDeg.StandardError);
            isExtended |= camber.IsExtended;
            places.Add(new(travelMm, camber.AngleDeg.Value + camberShiftDeg, null));
        }

        return new()
        {
            Points = places,
            StatedCamberDeg = stated.AngleDeg.Value + camberShiftDeg,
            Gap = gap,
            SidewaysGap = SidewaysNeedsPoints,
            CamberErrorDeg = errorDeg,
            IsExtrapolated = isExtended || stated.IsExtended,
        };
    }

    private static WheelPath Unknown(WheelSetup setup, SuspensionGap gap) =>
        new() { Points = [], StatedCamberDeg = setup.CamberDeg ?? 0, Gap = gap, SidewaysGap = SidewaysNeedsPoints };

    private SuspensionGap BeyondReadings => new(SuspensionGapKind.BeyondReadings, [ReadingsPointer]);

    private SuspensionGap ContradictionGap()
    {
        var first = Contradictions[0];
        var kind = Fault is CornerReadingsFault.TooFewHeights ? SuspensionGapKind.TooFewReadings : SuspensionGapKind.Contradicts;
        return new(kind, ["/suspension/" + first.Member]) { Member = first.Member };
    }
}
