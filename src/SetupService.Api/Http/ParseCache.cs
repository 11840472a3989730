using System.Collections.Concurrent;
using SetupService.Api.Http.Faults;
using SetupService.Domain.Answers;

namespace SetupService.Api.Http;

/// <summary>
/// Remembers the texts that were read, since a catalogue and its callers repeat them: each is read once. Holds at
/// most <see cref="Capacity"/> texts and then starts anew, so that no caller can make it grow; what could not be read
/// is not kept. Safe for all threads.
/// </summary>
/// <typeparam name="T">What the text stands for.</typeparam>
/// <param name="read">Reads a text; pure.</param>
internal sealed class ParseCache<T>(Func<string, ParseResult<T>> read)
    where T : class
{
    /// <summary>The most texts held.</summary>
    public const int Capacity = 8192;

    private ConcurrentDictionary<string, T> _known = new(StringComparer.Ordinal);

    /// <summary>What the text stands for, or why it cannot be read, in the words of its reader.</summary>
    public MapResult<T> Map(string text)
    {
        var known = _known;
        if (known.TryGetValue(text, out var value))
            return value;

        if (!read(text).TryGet(out value, out var fault))
            return new Refusal(Fault.At("", FaultCodes.Unreadable, fault.Message));

        // Counting a concurrent dictionary locks it, but only a text not seen before comes here.
        if (known.Count >= Capacity)
            _known = known = new ConcurrentDictionary<string, T>(StringComparer.Ordinal);
        known[text] = value;
        return value;
    }
}
