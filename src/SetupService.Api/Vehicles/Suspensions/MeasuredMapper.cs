using SetupService.Api.Http;
using SetupService.Api.Http.Faults;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Vehicles.Suspensions;

/// <summary>Reads what was measured of a suspension into the domain's corner.</summary>
internal static class MeasuredMapper
{
    /// <summary>The corner; null, with the fault, where its readings make none.</summary>
    public static MeasuredCorner? Read(MeasuredSuspensionDocument document, AlignmentAnglesDocument? alignment, out CornerReadingsFault? fault) =>
        MeasuredCorner.From(Readings(document, alignment), out fault);

    /// <summary>What was read, with caster and inclination where they are known.</summary>
    public static CornerReadings Readings(MeasuredSuspensionDocument document, AlignmentAnglesDocument? alignment) => new()
    {
        Travel = document.Table is { } table ? TravelTable.Read(table, out _) : [.. There(document.Readings).Select(one => new TravelReading(one.TravelMm, one.CamberDeg, one.ToeDeg))],
        IsTable = document.Table is not null,
        Steer = [.. There(document.SteerReadings).Select(one => new SteerReading(one.SteerDeg, one.CamberDeg))],
        TopMount = [.. There(document.TopMountReadings).Select(one => new TopMountReading(one.InboardMm, one.CamberDeg))],
        CasterDeg = alignment?.CasterDeg,
        SteeringAxisInclinationDeg = alignment?.SteeringAxisInclinationDeg,
        StatedCamberDeg = alignment?.CamberDeg,
        GaugeErrorDeg = document.GaugeErrorDeg ?? CasterReadings.DefaultGaugeErrorDeg,
        IsGaugeErrorAssumed = document.GaugeErrorDeg is null,
    };

    /// <summary>Why what was measured makes no list of readings; null where it does, or is not measured.</summary>
    public static Refusal? Refuse(SuspensionDocument? document)
    {
        if (document is not MeasuredSuspensionDocument measured) return null;
        if (measured is { Readings: not null, Table: not null })
            return new Refusal(Fault.At("/table", FaultCodes.Inconsistent, "readings and table exclude each other: give the readings in one form."));
        if (measured.Table is { } table)
        {
            _ = TravelTable.Read(table, out var faults);
            return Refusal.From([.. faults.Select(static fault => Fault.At("/table", FaultCodes.Unreadable, fault))]);
        }

        return measured.Readings is null ? new Refusal(Fault.At("/readings", FaultCodes.Required, "readings is missing; this or table is needed here.")) : null;
    }

    // A reading that could not be bound is null here, and its fault is known already.
    private static IEnumerable<T> There<T>(T?[]? readings)
        where T : class => (readings ?? []).OfType<T>();
}
