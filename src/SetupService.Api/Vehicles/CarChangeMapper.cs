using System.Text.Json;
using SetupService.Api.Http;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Faults;
using SetupService.Domain.Handling.Ride;

namespace SetupService.Api.Vehicles;

/// <summary>Makes one change of a car: sets its values, takes its parts off, and says what it names.</summary>
internal static class CarChangeMapper
{
    private static readonly RemovablePart[] Parts =
    [
        .. ((string[])["front", "rear"]).SelectMany(axle => (RemovablePart[])
        [
            new($"/{axle}/antiRollBar", JsonElement.Parse("{\"" + axle + "\":{\"antiRollBar\":{\"rollRateNmPerDeg\":0}}}")),
            new($"/{axle}/bumpStop", null),
            new($"/{axle}/wheel/spacerMm", JsonElement.Parse("{\"" + axle + "\":{\"wheel\":{\"spacerMm\":0}}}")),
        ]),
        new("/aero", JsonElement.Parse("""{"aero":{"frontDownforceN":0,"rearDownforceN":0,"dragN":0}}""")),
    ];

    /// <summary>The document with the change made; refused with every fault of the change, each at its place of the body.</summary>
    /// <param name="before">The document before.</param>
    /// <param name="change">The change.</param>
    /// <param name="pointer">Where it stands in the body.</param>
    public static MapResult<MadeChange> Make(ChangedDocument<VehicleDocument> before, CarChangeDocument change, string pointer)
    {
        if (((IKeepsFaults)change).Faults is { } kept) return Refusal.From([.. kept.Select(fault => fault with { Pointer = pointer + fault.Pointer })])!;
        var faults = new List<Fault>();
        var document = change.Vehicle is { } vehicle ? before.With(vehicle, pointer + "/vehicle") : before;
        var removed = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < change.Remove?.Length; i++)
        {
            var (part, place) = (change.Remove[i], FormattableString.Invariant($"{pointer}/remove/{i}"));
            if (Fault(before, change, part, place, removed) is { } fault)
            {
                faults.Add(fault);
                continue;
            }

            removed.Add(part);
            if (Array.Find(Parts, one => one.Pointer == part).Sets is { } sets) document = document.With(sets, place);
        }

        if (change.KeepRideHeight == true)
        {
            faults.AddRange(((string[])["/front/rideHeightChangeMm", "/rear/rideHeightChangeMm"]).Where(place => change.Vehicle?.Names(place) == true).Select(place => Http.Faults.Fault.At(
                pointer + "/keepRideHeight", FaultCodes.Inconsistent, $"keepRideHeight keeps the car where it stands, and vehicle{place} sets another height; leave one of them out.")));
        }

        if (Refusal.From(faults) is { } refusal) return refusal;
        return new MadeChange(document, new CarChange { States = place => change.Vehicle?.Names(place) == true, Removed = removed, KeepsRideHeight = change.KeepRideHeight == true });
    }

    private static Fault? Fault(ChangedDocument<VehicleDocument> before, CarChangeDocument change, string part, string place, HashSet<string> removed)
    {
        if (!IsPointer(part)) return Http.Faults.Fault.At(place, FaultCodes.Unreadable, $"'{part}' is not a JSON Pointer; it begins with / within the vehicle, as in /front/antiRollBar.");
        if (!Array.Exists(Parts, one => one.Pointer == part))
        {
            return Http.Faults.Fault.At(place, FaultCodes.UnknownWord, part.StartsWith("/vehicle/", StringComparison.Ordinal)
                ? $"{part} points nowhere: pointers begin within the vehicle, so leave /vehicle out."
                : $"{part} cannot be taken off: it is no part of the car, or the car cannot be without it; set another in vehicle instead. What can be taken off: {string.Join(", ", Parts.Select(one => one.Pointer))}.");
        }

        if (removed.Contains(part)) return Http.Faults.Fault.At(place, FaultCodes.Inconsistent, $"{part} is taken off twice.");
        if (change.Vehicle?.Names(part) == true) return Http.Faults.Fault.At(place, FaultCodes.Inconsistent, $"{part} is taken off and set by the same change; do one of both.");
        return before.Has(part) ? null : Http.Faults.Fault.At(place, FaultCodes.Inconsistent, $"the vehicle has no {part}: there is nothing to take off. A part that is not given is assumed as typical; to say that there is none, give its value.");
    }

    // RFC 6901: empty, or every step begun by a slash, with ~ only as ~0 or ~1.
    private static bool IsPointer(string text)
    {
        if (text.Length > 0 && text[0] != '/') return false;
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '~' && !(i + 1 < text.Length && text[i + 1] is '0' or '1')) return false;
        }

        return true;
    }

    /// <summary>A part that can be taken off.</summary>
    /// <param name="Pointer">JSON Pointer within the vehicle.</param>
    /// <param name="Sets">What the vehicle says without it; null where no member can say so.</param>
    private readonly record struct RemovablePart(string Pointer, JsonElement? Sets);
}

/// <summary>A change that was made.</summary>
/// <param name="Document">The document with it.</param>
/// <param name="Change">What it says beside the values it sets.</param>
internal sealed record MadeChange(ChangedDocument<VehicleDocument> Document, CarChange Change);
