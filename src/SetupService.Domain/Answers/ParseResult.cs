using System.Diagnostics.CodeAnalysis;

namespace SetupService.Domain.Answers;

/// <summary>Why a text a person typed could not be parsed, and which part of it.</summary>
/// <param name="Part">The piece of the text that could not be parsed, as it was typed; empty where something is missing.</param>
/// <param name="Position">Zero-based index of the piece in the text.</param>
/// <param name="Message">A sentence for a person that quotes the piece and says what was expected.</param>
public sealed record ParseFault(string Part, int Position, string Message);

/// <summary>
/// The outcome of parsing a text: the value, or the fault that names the part which could not be parsed.
/// The default instance is neither; create one with <see cref="ParseResult"/>.
/// </summary>
/// <typeparam name="T">What the text stands for.</typeparam>
public readonly struct ParseResult<T>
    where T : class
{
    internal ParseResult(T? value, ParseFault? fault)
    {
        Value = value;
        Fault = fault;
    }

    /// <summary>The value, or null where the text could not be parsed.</summary>
    public T? Value { get; }

    /// <summary>What could not be parsed, or null where everything could.</summary>
    public ParseFault? Fault { get; }

    /// <summary>Returns the value where the text was parsed, else the fault.</summary>
    public bool TryGet([NotNullWhen(true)] out T? value, [NotNullWhen(false)] out ParseFault? fault)
    {
        value = Value;
        fault = Fault;
        return value is not null;
    }
}

/// <summary>Creates the two outcomes of parsing a text.</summary>
public static class ParseResult
{
    /// <summary>The text was parsed.</summary>
    public static ParseResult<T> Success<T>(T value)
        where T : class => new(value, null);

    /// <summary>The text was not parsed; <paramref name="part"/> at <paramref name="position"/> is why.</summary>
    public static ParseResult<T> Failure<T>(string part, int position, string message)
        where T : class => new(null, new ParseFault(part, position, message));
}
