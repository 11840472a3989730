using System.Text.Json;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Oracle;

/// <summary>Builds the domain's car, wheels and tyres from a case's request.</summary>
internal static class OracleCar
{
    public static Vehicle Vehicle(JsonElement vehicle) => new()
    {
        DrivenAxle = Word<DrivenAxle>(vehicle, "drivenAxle"),
        TopSpeedKmh = Number(vehicle, "topSpeedKmh"),
        Front = (Part(vehicle, "front") is { } front ? Axle(front) : new Axle()) with { LoadKg = Number(vehicle, "frontAxleLoadKg") },
        Rear = (Part(vehicle, "rear") is { } rear ? Axle(rear) : new Axle()) with { LoadKg = Number(vehicle, "rearAxleLoadKg") },
    };

    public static Fitting Fitting(JsonElement fitting) =>
        new(Wheel(fitting.GetProperty("wheel")), Tyre(fitting.GetProperty("tyre")));

    public static CheckSettings Settings(JsonElement request) => new()
    {
        MinimumMarginMm = Part(request, "tolerances") is { } tolerances ? Number(tolerances, "minimumMarginMm") : null,
        Required = Part(request, "required") is { } required ? Ids(required) : null,
        CamberChange = Part(request, "camberChange") is { } change
            ? new CamberChange(
                change.GetProperty("changeDeg").GetDouble(),
                Word<CamberChangePlace>(change, "at")!.Value,
                Number(change, "pivotHeightMm"),
                Number(change, "narrowestHeightMm"))
            : null,
    };

    public static CheckIdSet Ids(JsonElement ids) =>
        ids.EnumerateArray().Aggregate(default(CheckIdSet), (set, id) => set.With(Enum.Parse<CheckId>(id.GetString()!, ignoreCase: true)));

    public static double? Number(JsonElement parent, string name) => Part(parent, name)?.GetDouble();

    public static JsonElement? Part(JsonElement parent, string name) =>
        parent.TryGetProperty(name, out var part) ? part : null;

    public static T? Word<T>(JsonElement parent, string name)
        where T : struct, Enum =>
        Part(parent, name) is { } word ? Enum.Parse<T>(word.GetString()!, ignoreCase: true) : null;

    private static Axle Axle(JsonElement axle) => new()
    {
        Wheel = Part(axle, "wheel") is { } wheel ? Wheel(wheel) : null,
        Tyre = Part(axle, "tyre") is { } tyre ? Tyre(tyre) : null,
        MaximumLoadKg = Number(axle, "maximumAxleLoadKg"),
        MinimumLoadIndex = Part(axle, "minimumLoadIndex")?.GetInt32(),
        Hub = Part(axle, "hub") is { } hub ? Hub(hub) : new Hub(),
        Clearance = Part(axle, "clearance") is { } clearance ? Clearance(clearance) : new Clearance(),
        LoadedRadiusMm = Number(axle, "loadedRadiusMm"),
        BumpTravelMm = Number(axle, "bumpTravelMm"),
        BumpStop = Part(axle, "bumpStop") is { } stop
            ? new BumpStop { LengthMm = Number(stop, "lengthMm"), CompressedLengthMm = Number(stop, "compressedLengthMm"), MotionRatio = Number(stop, "motionRatio") }
            : new BumpStop(),
        Damper = new Damper { MotionRatio = Part(axle, "damper") is { } damper ? Number(damper, "motionRatio") : null },
        Suspension = Part(axle, "suspension") is { } suspension ? Suspension(suspension) : SuspensionModel.FromFigures,
    };

    private static SuspensionModel Suspension(JsonElement suspension) => Part(suspension, "readings") is { } readings
        ? SuspensionModel.From(new CornerReadings
        {
            GaugeErrorDeg = Number(suspension, "gaugeErrorDeg") ?? CasterReadings.DefaultGaugeErrorDeg,
            Travel = [.. readings.EnumerateArray().Select(reading => new TravelReading(reading.GetProperty("travelMm").GetDouble(), reading.GetProperty("camberDeg").GetDouble(), null))],
        })
        : SuspensionModel.FromFiguresOf(Word<SuspensionLayout>(suspension, "kind"));

    private static Clearance Clearance(JsonElement clearance) => new()
    {
        InboardMm = Number(clearance, "inboardMm"),
        OutboardMm = Number(clearance, "outboardMm"),
        RadialMm = Number(clearance, "radialMm"),
        InboardAtFullLockMm = Number(clearance, "inboardAtFullLockMm"),
        SpringSeatMm = Number(clearance, "springSeatMm"),
        MeasuredAt = Word<ClearanceMeasuredAt>(clearance, "measuredAt"),
        UncertaintyMm = Number(clearance, "uncertaintyMm"),
        InboardTo = Word<InboardNeighbour>(clearance, "inboardTo"),
        InboardHeightMm = Number(clearance, "inboardHeightMm"),
    };

    private static Hub Hub(JsonElement hub) => new()
    {
        BoltCircle = Part(hub, "boltCircle") is { } circle ? Read(BoltCircleReader.Read(circle.GetString()!)) : null,
        CentreBoreMm = Number(hub, "centreBoreMm"),
        FastenerThread = Part(hub, "fastenerThread") is { } thread ? Read(FastenerThreadReader.Read(thread.GetString()!)) : null,
        FastenerKind = Word<FastenerKind>(hub, "fastenerKind"),
        FastenerLengthMm = Number(hub, "fastenerLengthMm"),
        FastenerSeat = Word<FastenerSeat>(hub, "fastenerSeat"),
        MinimumRimDiameterIn = Number(hub, "minimumRimDiameterIn"),
        CaliperProfile = Profile(hub, "caliperProfile", "fromHubFaceMm"),
    };

    private static Wheel Wheel(JsonElement wheel) => new()
    {
        RimDiameterIn = wheel.GetProperty("rimDiameterIn").GetDouble(),
        RimWidthIn = wheel.GetProperty("rimWidthIn").GetDouble(),
        OffsetMm = wheel.GetProperty("offsetMm").GetDouble(),
        SpacerMm = Number(wheel, "spacerMm") ?? 0,
        SpacerPilotBoreMm = Number(wheel, "spacerPilotBoreMm"),
        SpacerPilotDiameterMm = Number(wheel, "spacerPilotDiameterMm"),
        SpacerHasOwnFasteners = Part(wheel, "spacerHasOwnFasteners")?.GetBoolean(),
        MassKg = Number(wheel, "massKg"),
        BoltCircle = Part(wheel, "boltCircle") is { } circle ? Read(BoltCircleReader.Read(circle.GetString()!)) : null,
        CentreBoreMm = Number(wheel, "centreBoreMm"),
        LoadRatingKg = Number(wheel, "loadRatingKg"),
        FastenerSeat = Word<FastenerSeat>(wheel, "fastenerSeat"),
        PadThicknessMm = Number(wheel, "padThicknessMm"),
        InnerProfile = Profile(wheel, "innerProfile", "fromMountingFaceMm"),
    };

    private static Tyre Tyre(JsonElement tyre) => new(Read(TyreMarkingReader.Read(tyre.GetProperty("marking").GetString()!)))
    {
        MassKg = Number(tyre, "massKg"),
        PressureKpa = Number(tyre, "pressureKpa"),
        RimProtectorMm = Number(tyre, "rimProtectorMm"),
    };

    private static ProfilePoint[] Profile(JsonElement parent, string name, string station) =>
        Part(parent, name) is not { } points
            ? []
            : [.. points.EnumerateArray().Select(point =>
                new ProfilePoint(point.GetProperty(station).GetDouble(), point.GetProperty("radiusMm").GetDouble()))];

    private static T Read<T>(ParseResult<T> reading)
        where T : class =>
        reading.TryGet(out var value, out var fault) ? value : throw new InvalidOperationException(fault.Message);
}
