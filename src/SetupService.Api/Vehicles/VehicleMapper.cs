using System.Diagnostics.CodeAnalysis;
using SetupService.Api.Http;
using SetupService.Api.Tyres;
using SetupService.Api.Wheels;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;
using DomainAxle = SetupService.Domain.Vehicles.Axle;

namespace SetupService.Api.Vehicles;

/// <summary>
/// Reads a vehicle document into the domain's car: units and signs are the same, texts are read, what is missing
/// stays missing.
/// </summary>
internal static class VehicleMapper
{
    private static readonly ParseCache<FastenerThread> Threads = new(FastenerThreadReader.Read);

    /// <summary>False where a marking, bolt circle or thread cannot be read.</summary>
    public static bool TryRead(VehicleDocument document, [NotNullWhen(true)] out Vehicle? vehicle)
    {
        vehicle = null;
        if (!TryReadAxle(document.Front, document.FrontAxleLoadKg, out var front)
            || !TryReadAxle(document.Rear, document.RearAxleLoadKg, out var rear))
        {
            return false;
        }

        vehicle = new Vehicle
        {
            DrivenAxle = document.DrivenAxle,
            TopSpeedKmh = document.TopSpeedKmh,
            WheelbaseMm = document.WheelbaseMm,
            CentreOfGravityHeightMm = document.CentreOfGravityHeightMm,
            CornerWeights = document.CornerWeightsKg is { } weights
                ? new CornerWeights(weights.FrontLeft, weights.FrontRight, weights.RearLeft, weights.RearRight)
                : null,
            BrakeShareFrontPct = document.BrakeShareFrontPct,
            SteeringRatio = document.SteeringRatio,
            Front = front,
            Rear = rear,
        };
        return true;
    }

    private static bool TryReadAxle(AxleDocument? document, double? loadKg, [NotNullWhen(true)] out DomainAxle? axle)
    {
        axle = null;
        document ??= new AxleDocument();
        if (!WheelMapper.TryReadOptional(document.Wheel, out var wheel)
            || !TyreMapper.TryReadOptional(document.Tyre, out var tyre)
            || !TryReadHub(document.Hub, out var hub)
            || !IsConsistent(document.Suspension))
        {
            return false;
        }

        axle = new DomainAxle
        {
            Wheel = wheel,
            Tyre = tyre,
            LoadedRadiusMm = document.LoadedRadiusMm,
            LoadKg = loadKg,
            MaximumLoadKg = document.MaximumAxleLoadKg,
            MinimumLoadIndex = document.MinimumLoadIndex,
            Hub = hub,
            Clearance = Gaps(document.Clearance),
            Suspension = SuspensionMapper.Model(document.Suspension, document.Alignment),
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
        };
        return true;
    }

    private static bool TryReadHub(HubDocument? document, [NotNullWhen(true)] out Hub? hub)
    {
        hub = null;
        document ??= new HubDocument();
        if (!WheelMapper.TryReadCircle(document.BoltCircle, out var circle))
            return false;

        var thread = document.FastenerThread is { } text ? Threads.Find(text) : null;
        if (document.FastenerThread is not null && thread is null)
            return false;

        hub = new Hub
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
        return true;
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

    private static BumpStop BumpStop(BumpStopDocument? document) => new()
    {
        RateNPerMm = document?.RateNPerMm,
        LengthMm = document?.LengthMm,
        CompressedLengthMm = document?.CompressedLengthMm,
        MotionRatio = document?.MotionRatio,
    };

    private static Compliance Compliance(ComplianceDocument? document) =>
        new() { CamberDegPerKn = document?.CamberDegPerKn, ToeDegPerKn = document?.ToeDegPerKn };

    /// <summary>Whether measured readings do not contradict each other; a suspension that is not measured has none.</summary>
    internal static bool IsConsistent(SuspensionDocument? document)
    {
        if (document is not MeasuredSuspensionDocument measured) return true;
        var readings = MeasuredMapper.Readings(measured, null);
        return TravelCurve.AreConsistent(readings.Travel.Select(static reading => (reading.TravelMm, reading.CamberDeg)), readings.GaugeErrorDeg);
    }
}
