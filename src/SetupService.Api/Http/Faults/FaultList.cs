using System.Globalization;

namespace SetupService.Api.Http.Faults;

/// <summary>Collects faults up to a limit and counts the rest.</summary>
internal sealed class FaultList
{
    private readonly List<Fault> _faults = [];
    private readonly HashSet<string> _pointers = new(StringComparer.Ordinal);
    private readonly HashSet<string> _refused = new(StringComparer.Ordinal);
    private int _unlisted;

    public int Count => _faults.Count + _unlisted;

    /// <summary>True where a further fault is counted and not listed, so that nothing need be said of it.</summary>
    public bool IsFull => _faults.Count >= ServiceLimits.FaultsListed;

    /// <summary>Adds what the walk over the body found, which takes the value it names out of the sound copy.</summary>
    public void Add(Fault fault) => Add(fault, isTakenOut: true);

    /// <summary>Counts a fault that is not listed.</summary>
    public void AddUnlisted() => _unlisted++;

    private void Add(Fault fault, bool isTakenOut)
    {
        // These leave a value standing at the place they name; what a rule finds in it is news.
        var leavesValue = fault.Code is FaultCodes.DuplicateMember or FaultCodes.TooMany or FaultCodes.TooFew;
        if (fault.Pointer is { } pointer && !leavesValue)
        {
            _pointers.Add(pointer);
            if (isTakenOut && fault.Code != FaultCodes.UnknownMember)
                _refused.Add(pointer);
        }

        if (IsFull)
            AddUnlisted();
        else
            _faults.Add(fault);
    }

    /// <summary>
    /// Adds what a rule or mapper found in the sound copy, unless a fault at the same place, or at a place above it, is known already.
    /// </summary>
    public void AddUnlessKnown(Fault fault)
    {
        if (fault.Pointer is not { } pointer || !IsKnown(pointer))
            Add(fault, isTakenOut: false);
    }

    /// <summary>The same of faults found together, of which several may be at one place: the lines of a table.</summary>
    public void AddUnlessKnown(Refusal refusal)
    {
        foreach (var fault in refusal.Where(fault => fault.Pointer is not { } pointer || !IsKnown(pointer)).ToList())
            Add(fault, isTakenOut: false);
    }

    /// <summary>Whether a value at a place, part of it, or what it is part of was taken out. A member too many takes nothing out.</summary>
    public bool Refuses(string pointer) =>
        _refused.Any(place => IsAtOrBelow(place, pointer) || IsAtOrBelow(pointer, place));

    public IReadOnlyList<Fault> ToList()
    {
        if (_unlisted == 0)
            return _faults;

        var more = _unlisted == 1
            ? "1 further fault is not listed."
            : _unlisted.ToString(CultureInfo.InvariantCulture) + " further faults are not listed.";
        return [.. _faults, Fault.At("", FaultCodes.MoreFaults, more)];
    }

    private static bool IsAtOrBelow(string place, string above) =>
        place.StartsWith(above, StringComparison.Ordinal) && (place.Length == above.Length || place[above.Length] == '/');

    private bool IsKnown(string pointer)
    {
        for (var place = pointer; ; place = place[..place.LastIndexOf('/')])
        {
            if (_pointers.Contains(place))
                return true;
            if (place.Length == 0)
                return false;
        }
    }
}
