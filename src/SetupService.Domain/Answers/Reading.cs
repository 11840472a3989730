using System.Diagnostics.CodeAnalysis;

namespace SetupService.Domain.Answers;

/// <summary>
/// The outcome of reading a text: the value, or the fault that names the part which could not be read.
/// The default instance is neither; only <see cref="Readings"/> make one.
/// </summary>
/// <typeparam name="T">What the text stands for.</typeparam>
public readonly struct Reading<T>
    where T : class
{
    internal Reading(T? value, ReadingFault? fault)
    {
        Value = value;
        Fault = fault;
    }

    /// <summary>The value read, or null where the text could not be read.</summary>
    public T? Value { get; }

    /// <summary>What could not be read, or null where everything could.</summary>
    public ReadingFault? Fault { get; }

    /// <summary>Hands out the value where the text could be read.</summary>
    public bool TryGet([NotNullWhen(true)] out T? value, [NotNullWhen(false)] out ReadingFault? fault)
    {
        value = Value;
        fault = Fault;
        return value is not null;
    }
}
