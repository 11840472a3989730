using SetupService.Api.Http;
using SetupService.Api.Http.Faults;
using SetupService.Api.Tyres;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Api.Wheels;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;
using DomainAxle = SetupService.Domain.Vehicles.Axle;

namespace SetupService.Api.Vehicles;

/// <summary>
/// Maps a vehicle document to the domain's car: units and signs are the same, texts are read, what is missing
/// stays missing.
/// </summary>
internal static class VehicleMapper
{
    private static readonly ParseCache<FastenerThread> Threads = new(FastenerThreadReader.Read);

    private static readonly Refusal Contradicting = new(Fault.At(
        "/suspension", FaultCodes.Inconsistent, MeasuredWords.Fault(CornerReadingsFault.CamberContradicts).Message));

    /// <summary>The car; refused where a marking, bolt circle or thread cannot be read, no rule gives the dimensions of a tyre's size, or what was measured contradicts itself.</summary>
    public static MapResult<Vehicle> Map(VehicleDocument? document) => Map(document, needsDimensions: true);

    /// <summary>The same of a car after a change, which shares with the car before what the documents of both share.</summary>
    /// <param name="document">The car after the change.</param>
    /// <param name="before">The car before it.</param>
    /// <param name="known">That car mapped.</param>
    public static MapResult<Vehicle> MapChanged(VehicleDocument document, VehicleDocument before, Vehicle known) => Map(document, needsDimensions: true, before, known);

    /// <summary>The car for the calls of fitment, which answer what goes by the dimensions of a tyre as unknown where its size has no rule for them.</summary>
    public static MapResult<Vehicle> MapForFitment(VehicleDocument? document) => Map(document, needsDimensions: false);

    private static MapResult<Vehicle> Map(VehicleDocument? document, bool needsDimensions, VehicleDocument? before = null, Vehicle? known = null)
    {
        if (document is null)
            return Refusal.Missing();
        Refusal? refusal = null;
        var front = MapAxle(document.Front, document.FrontAxleLoadKg, needsDimensions, before?.Front, known?.Front).Take("front", ref refusal);
        var rear = MapAxle(document.Rear, document.RearAxleLoadKg, needsDimensions, before?.Rear, known?.Rear).Take("rear", ref refusal);
        if (refusal is not null)
            return refusal;

        return new Vehicle
        {
            Body = document.Body,
            DrivenAxle = document.DrivenAxle,
            TopSpeedKmh = document.TopSpeedKmh,
            WheelbaseMm = document.WheelbaseMm,
            CentreOfGravityHeightMm = document.CentreOfGravityHeightMm,
            CornerWeights = document.CornerWeightsKg is { } weights
                ? new CornerWeights(weights.FrontLeft, weights.FrontRight, weights.RearLeft, weights.RearRight)
                : null,
            BrakeShareFrontPct = document.BrakeShareFrontPct,
            DriveShareFrontPct = document.DriveShareFrontPct,
            Differential = document.Differential is { } differential ? Drive(differential) : null,
            Aero = document.Aero is { } aero ? new Aero(aero.ReferenceSpeedKmh, aero.FrontDownforceN ?? 0, aero.RearDownforceN ?? 0, aero.DragN ?? 0) : null,
            SteeringRatio = document.SteeringRatio,
            Front = front!,
            Rear = rear!,
        };
    }

    private static MapResult<DomainAxle> MapAxle(AxleDocument? document, double? loadKg, bool needsDimensions, AxleDocument? before, DomainAxle? known)
    {
        if (known is not null && document is not null && ReferenceEquals(document, before))
            return known.LoadKg == loadKg ? known : known with { LoadKg = loadKg };
        document ??= new AxleDocument();
        Refusal? refusal = null;
        var wheel = document.Wheel is null ? null : WheelMapper.Map(document.Wheel).Take("wheel", ref refusal);
        var tyre = document.Tyre is null ? null : TyreMapper.Map(document.Tyre, needsDimensions).Take("tyre", ref refusal);
        if (MeasuredMapper.Refuse(document.Suspension)?.Under("suspension") is { } unread)
            refusal = refusal?.And(unread) ?? unread;
        else if (!IsConsistent(document.Suspension))
            refusal = refusal?.And(Contradicting) ?? Contradicting;
        var hub = MapHub(document.Hub).Take("hub", ref refusal);
        if (refusal is not null)
            return refusal;

        return new DomainAxle
        {
            Wheel = wheel,
            Tyre = tyre,
            LoadedRadiusMm = document.LoadedRadiusMm,
            LoadKg = loadKg,
            MaximumLoadKg = document.MaximumAxleLoadKg,
            PlacardPressureKpa = document.PlacardPressureKpa,
            MinimumLoadIndex = document.MinimumLoadIndex,
            Hub = hub!,
            Clearance = Gaps(document.Clearance),
            Suspension = known is not null && before is not null && ReferenceEquals(document.Suspension, before.Suspension) && ReferenceEquals(document.Alignment, before.Alignment)
                ? known.Suspension
                : SuspensionMapper.Model(document.Suspension, document.Alignment),
            Left = Angles(document.Alignment, null),
            Right = Angles(document.Alignment?.Right, document.Alignment),
            TrackMm = document.TrackMm,
            UnsprungMassKg = document.UnsprungMassKg,
            Spring = Spring(document.Spring),
            Damper = Damper(document.Damper),
            BumpStop = BumpStop(document.BumpStop),
            BarRollRateNmPerDeg = document.AntiRollBar?.RollRateNmPerDeg,
            Compliance = Compliance(document.Compliance),
            RollCentreHeightMm = document.RollCentreHeightMm,
            BumpTravelMm = document.BumpTravelMm,
            ReboundTravelMm = document.ReboundTravelMm,
            RideHeightChangeMm = document.RideHeightChangeMm,
            AdjustableAsStated = Adjustable(document.Adjustable),
        };
    }

    // A range whose ends are the wrong way round is refused by the calls that use it.
    private static AdjustableAngles Adjustable(AdjustableDocument? document) => document is null ? new AdjustableAngles() : new AdjustableAngles
    {
        Camber = document.CamberDeg is { } camber ? AngleReach.Between(camber.From, Math.Max(camber.From, camber.To)) : document.IsCamberSaid ? AngleReach.None : null,
        Toe = document.ToeDeg is { } toe ? AngleReach.Between(toe.From, Math.Max(toe.From, toe.To)) : document.IsToeSaid ? AngleReach.None : null,
        Caster = document.CasterDeg is { } caster ? AngleReach.Between(caster.From, Math.Max(caster.From, caster.To)) : document.IsCasterSaid ? AngleReach.None : null,
    };

    private static MapResult<Hub> MapHub(HubDocument? document)
    {
        document ??= new HubDocument();
        Refusal? refusal = null;
        var circle = WheelMapper.MapCircle(document.BoltCircle, ref refusal);
        var thread = document.FastenerThread is { } text ? Threads.Map(text).Take("fastenerThread", ref refusal) : null;
        if (refusal is not null)
            return refusal;

        return new Hub
        {
            BoltCircle = circle,
            CentreBoreMm = document.CentreBoreMm,
            FastenerThread = thread,
            FastenerKind = document.FastenerKind,
            FastenerLengthMm = document.FastenerLengthMm,
            FastenerSeat = document.FastenerSeat,
            MinimumRimDiameterIn = document.MinimumRimDiameterIn,
            CaliperProfile = document.CaliperProfile is { } profile
                ? ProfileMapper.Ascending(profile, static point => new ProfilePoint(point.FromHubFaceMm, point.RadiusMm))
                : [],
        };
    }

    private static Clearance Gaps(ClearanceDocument? document) => document is null ? new Clearance() : new Clearance
    {
        InboardMm = document.InboardMm,
        OutboardMm = document.OutboardMm,
        RadialMm = document.RadialMm,
        InboardAtFullLockMm = document.InboardAtFullLockMm,
        SpringSeatMm = document.SpringSeatMm,
        MeasuredAt = document.MeasuredAt,
        UncertaintyMm = document.UncertaintyMm,
        InboardTo = document.InboardTo,
        InboardHeightMm = document.InboardHeightMm,
    };

    /// <summary>Angles of one wheel; what is not given for the right is as on the left.</summary>
    private static WheelAlignment Angles(AlignmentAnglesDocument? document, AlignmentAnglesDocument? otherwise) => new()
    {
        CamberDeg = document?.CamberDeg ?? otherwise?.CamberDeg,
        CasterDeg = document?.CasterDeg ?? otherwise?.CasterDeg,
        ToeDeg = document?.ToeDeg ?? otherwise?.ToeDeg,
        SteeringAxisInclinationDeg = document?.SteeringAxisInclinationDeg ?? otherwise?.SteeringAxisInclinationDeg,
    };

    private static Spring Spring(SpringDocument? document) => document is null ? new Spring() : new Spring
    {
        RateNPerMm = document.RateNPerMm,
        MotionRatio = document.MotionRatio,
        FreeLengthMm = document.FreeLengthMm,
        SolidLengthMm = document.SolidLengthMm,
        InstalledLengthMm = document.InstalledLengthMm,
        PreloadMm = document.PreloadMm,
    };

    private static Damper Damper(DamperDocument? document) => document is null ? new Damper() : new Damper
    {
        BumpNsPerM = document.BumpNsPerM,
        ReboundNsPerM = document.ReboundNsPerM,
        MotionRatio = document.MotionRatio,
    };

    private static Differential Drive(DifferentialDocument document) => document.Kind switch
    {
        DifferentialKind.Locked => Differential.Locked,
        DifferentialKind.LimitedSlip => Differential.LimitedSlip(document.BiasRatio ?? 1),
        _ => Differential.Open,
    };

    private static BumpStop BumpStop(BumpStopDocument? document) => new()
    {
        ForceCurve = document?.ForceCurve is { } curve ? [.. curve.Where(static point => point is not null).Select(static point => new StopForce(point.CompressionMm, point.ForceN))] : [],
        RateNPerMm = document?.RateNPerMm,
        LengthMm = document?.LengthMm,
        CompressedLengthMm = document?.CompressedLengthMm,
        MotionRatio = document?.MotionRatio,
    };

    private static Compliance Compliance(ComplianceDocument? document) =>
        new() { CamberDegPerKn = document?.CamberDegPerKn, ToeDegPerKn = document?.ToeDegPerKn };

    /// <summary>Whether measured readings do not contradict each other; a suspension that is not measured has none.</summary>
    private static bool IsConsistent(SuspensionDocument? document)
    {
        if (document is not MeasuredSuspensionDocument measured) return true;
        var readings = MeasuredMapper.Readings(measured, null);
        return TravelCurve.AreConsistent(readings.Travel.Select(static reading => (reading.TravelMm, reading.CamberDeg)), readings.GaugeErrorDeg);
    }
}
