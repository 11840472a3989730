using SetupService.Domain.Fitment.Checks;
using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment;

/// <summary>
/// What a check knows of one axle of a car before it sees a candidate: everything that does not depend on the candidate is
/// computed here, once for many candidates.
/// </summary>
public sealed class FitmentContext
{
    private readonly Envelope _presentEnvelope;
    private readonly PresentPlace[] _presentPlaces = [];
    private readonly Wheels.ProfilePoint[] _caliper;

    private FitmentContext(Vehicle vehicle, CarAxle position, CheckSettings settings)
    {
        Vehicle = vehicle;
        Position = position;
        Settings = settings;
        Axle = vehicle.At(position);
        MinimumMarginMm = settings.MinimumMarginMm ?? CheckSettings.DefaultMinimumMarginMm;
        MeasuringErrorMm = Axle.Clearance.UncertaintyMm ?? DefaultMeasuringErrorMm;
        _caliper = [.. Axle.Hub.CaliperProfile];
        LoadedRadius = StandingRadius.Compute(vehicle, position);
        Travel = TravelAllowance.Compute(Axle, LoadedRadius?.Mm);
        LoadPerWheelKg = Axle.MaximumLoadKg is { } plateKg ? Math.Max(plateKg, Axle.LoadKg ?? 0) / 2 : null;
        if (Axle.RideHeightChangeMm is { } higherMm && higherMm != 0) Standing = WheelTravelPath.At(Axle, -higherMm);
        if (Axle is { Wheel: { } wheel, Tyre: { Marking.HasDimensions: true } tyre })
        {
            Present = new Fitting(wheel, tyre);
            _presentEnvelope = Envelope.Compute(Present.Value);
            _presentPlaces = new PresentPlace[CheckIdSet.ClearanceCount];
            for (var place = CheckId.InboardClearance; place <= CheckId.SpringSeatClearance; place++) _presentPlaces[(int)place] = ClearanceChecks.AtPresent(this, _presentEnvelope, place);
            Contradicting = ContradictingGaps();
        }

        OppositeTyre = vehicle.Opposite(position).Tyre;
        OtherCircumferenceMm = Circumference(OppositeTyre);
        PresentDifferencePct = 100 * ((Circumference(Axle.Tyre) / OtherCircumferenceMm) - 1);
        HubBoltCircle = HubCircle(Axle);
        PresentEngagementMm = Axle.Wheel?.SpacerHasOwnFasteners == true ? null : Axle.Hub.FastenerLengthMm - Axle.Wheel?.PadThicknessMm - Axle.Wheel?.SpacerMm;
        Applicable = ApplicableChecks();
    }

    /// <summary>Measuring error taken where nobody states one, mm: a ruler's, common practice, no source.</summary>
    public const double DefaultMeasuringErrorMm = 1;

    /// <summary>The car.</summary>
    public Vehicle Vehicle { get; }

    /// <summary>Which axle of it.</summary>
    public CarAxle Position { get; }

    /// <summary>What the caller set.</summary>
    public CheckSettings Settings { get; }

    /// <summary>The axle under check.</summary>
    public Axle Axle { get; }

    /// <summary>Worst-case room below which a clearance is a caution, mm.</summary>
    public double MinimumMarginMm { get; }

    /// <summary>Half-width of the measuring error, mm.</summary>
    public double MeasuringErrorMm { get; }

    /// <summary>
    /// The greatest load one wheel must carry, kg: half the axle's maximum, or of what it carries as driven where that is
    /// more; null where the maximum is not known.
    /// </summary>
    public double? LoadPerWheelKg { get; }

    /// <summary>Wheel and tyre fitted now; null where either is not described, or the tyre's size has no rule for its height.</summary>
    public Fitting? Present { get; }

    /// <summary>The checks that apply to this axle.</summary>
    public CheckIdSet Applicable { get; }

    /// <summary>
    /// The places whose gap cannot have been measured with the wheel and tyre fitted now: even with the measuring error added, the gap is
    /// smaller than what suspension travel uses of it, although the car drives.
    /// </summary>
    public CheckIdSet Contradicting { get; }

    /// <summary>Height of the wheel centre above the ground and how it is known; null where it is not.</summary>
    public StandingRadius? LoadedRadius { get; }

    /// <summary>Position of the wheel after the body was lowered or raised, relative to where the gaps were measured; null where the body was not moved, or the wheel's path is not known.</summary>
    internal PathPlace? Standing { get; }

    /// <summary>The outline of the caliper, ascending in station; empty where it was not measured.</summary>
    internal ReadOnlySpan<Wheels.ProfilePoint> Caliper => _caliper;

    internal ref readonly Envelope PresentEnvelope => ref _presentEnvelope;

    /// <summary>What the wheel and tyre fitted now use at a clearance; only where they are described.</summary>
    internal ref readonly PresentPlace PresentAt(CheckId place) => ref _presentPlaces[(int)place];

    internal TravelAllowance Travel { get; }

    /// <summary>The tyre on the other axle, which this one is held against; null where it is not described.</summary>
    public Tyres.Tyre? OppositeTyre { get; private set; }

    internal double? OtherCircumferenceMm { get; private set; }

    internal double? PresentDifferencePct { get; }

    internal Wheels.BoltCircle? HubBoltCircle { get; }

    internal double? PresentEngagementMm { get; }

    /// <summary>Computes for one axle of a car what its checks share.</summary>
    public static FitmentContext Prepare(Vehicle vehicle, CarAxle position, CheckSettings settings) => new(vehicle, position, settings);

    /// <summary>The same axle of the car after the tyre on the other axle is changed; how far front and rear differ today stays as it is.</summary>
    public FitmentContext WithOpposite(Tyres.Tyre tyre)
    {
        var changed = (FitmentContext)MemberwiseClone();
        changed.OppositeTyre = tyre;
        changed.OtherCircumferenceMm = Circumference(tyre);
        return changed;
    }

    /// <summary>The bolt circle of an axle's hub, else that of the wheel fitted now.</summary>
    internal static Wheels.BoltCircle? HubCircle(Axle axle) => axle.Hub.BoltCircle ?? axle.Wheel?.BoltCircle;

    /// <summary>
    /// The checks that must be known for a verdict: the caller's, else the usual ones, and the brake where the candidate's rim is smaller than
    /// the one fitted now.
    /// </summary>
    public CheckIdSet RequiredFor(in Fitting candidate)
    {
        if (Settings.Required is { } asked) return asked;
        var isSmaller = candidate.Wheel.RimDiameterIn < Axle.Wheel?.RimDiameterIn;
        return isSmaller ? CheckIdSet.RequiredByDefault.With(CheckId.BrakeClearance) : CheckIdSet.RequiredByDefault;
    }

    private static double? Circumference(Tyres.Tyre? tyre) =>
        tyre is { Marking: { HasDimensions: true } marking } ? marking.RollingCircumferenceMm : null;

    private CheckIdSet ContradictingGaps()
    {
        var places = default(CheckIdSet);
        for (var place = CheckId.InboardClearance; place <= CheckId.SpringSeatClearance; place++)
        {
            var leftMm = ClearanceChecks.Gap(Axle.Clearance, place) + MeasuringErrorMm - _presentPlaces[(int)place].TravelMm;
            if (leftMm < 0) places = places.With(place);
        }

        return places;
    }

    private CheckIdSet ApplicableChecks()
    {
        var checks = CheckIdSet.All;
        if (Position == CarAxle.Rear) checks = checks.Without(CheckId.FullLockClearance);

        // A strut has its spring seat above the tyre; other suspensions only have one where it was measured.
        var mayHaveSeat = Axle.Suspension.Layout is null or SuspensionLayout.MacPhersonStrut or SuspensionLayout.Measured;
        if (!mayHaveSeat && Axle.Clearance.SpringSeatMm is null) checks = checks.Without(CheckId.SpringSeatClearance);
        return checks;
    }
}
