using System.Globalization;
using System.Runtime.CompilerServices;

namespace SetupService.Domain.Answers;

/// <summary>
/// Writes the sentences of an answer: an interpolated string whose numbers carry their unit as format, so
/// that <c>{gapMm:mm}</c> reads "4.9 mm", or "0.19 in" where the caller asked for US units.
/// </summary>
/// <remarks>
/// Formats: <c>mm</c>, <c>gap</c> (mm without a needless zero), <c>room</c> (the same in whole mm from 10 mm on, as a tape shows it), <c>fit</c> (mm of parts that must match, more closely), <c>tread</c> (depth or wear of tread; in 32nds of an inch in US units) and <c>treadFine</c> (with one more digit), <c>m</c> (a radius of a bend), <c>kg</c>, <c>kPa</c>, <c>kPaUp</c> (rounded
/// up: a pressure to be set), <c>kmh</c>, <c>km</c>, <c>c</c> (a temperature), <c>cDiff</c> (a difference of temperatures), <c>pct</c>, <c>pct0</c> (whole
/// percent), <c>angle</c> (an angle as a gauge on a wheel shows it, 0.1°), <c>deg</c> (a fine angle such as toe, 0.01°), <c>in</c> (rim codes; never converted), <c>n</c> (a plain number). Rounding happens here and nowhere else, half away from zero.
/// Always culture-free. The buffer is taken from the thread and given back, so a sentence costs one string.
/// </remarks>
[InterpolatedStringHandler]
public ref struct Prose
{
    private const double MillimetresPerInch = 25.4;
    private const double KilogramsPerPound = 0.45359237;
    private const double KilopascalsPerPsi = 6.894757293168361;
    private const double KilometresPerMile = 1.609344;
    private const double FahrenheitPerCelsius = 1.8;
    private const double FahrenheitAtZeroCelsius = 32;
    private const int InitialCapacity = 1024;

    // Scales in pounds show tenths for a wheel and whole pounds for an axle.
    private const double FinelyWeighedKg = 100 * KilogramsPerPound;

    // Nobody reads tenths off a tape over more than this.
    private const double TapeFromMm = 9.95;

    // So that 200 kPa, worked out as 200.000 000 001, does not read 201.
    private const double Slack = 1e-6;

    // A sign, sixteen digits and a point, or a number beyond them with an exponent.
    private const int LongestNumber = 32;

    // A sentence may hold another one; each level of nesting has its own spare buffer on the thread.
    private const int SpareLevels = 4;

    [ThreadStatic]
    private static char[]?[]? _spares;

    [ThreadStatic]
    private static int _level;

    private readonly UnitSystem _units;
    private char[] _buffer;
    private int _length;

    /// <summary>Called by the compiler; use <see cref="Write"/>.</summary>
    public Prose(int literalLength, int formattedCount, UnitSystem units)
    {
        _units = units;
        _spares ??= new char[SpareLevels][];
        var spare = _level < SpareLevels ? _spares[_level] : null;
        _level++;
        _buffer = spare ?? new char[Math.Max(InitialCapacity, literalLength + (formattedCount * 16))];
        _length = 0;
    }

    /// <summary>The sentence in the given units.</summary>
    public static string Write(UnitSystem units, [InterpolatedStringHandlerArgument(nameof(units))] ref Prose prose)
    {
        var text = new string(prose._buffer, 0, prose._length);
        _level--;
        if (_level < SpareLevels) _spares![_level] = prose._buffer;
        return text;
    }

    /// <summary>Appends text as it is.</summary>
    public void AppendLiteral(string value) => AppendFormatted(value.AsSpan());

    /// <summary>Appends text as it is.</summary>
    public void AppendFormatted(string? value) => AppendFormatted(value.AsSpan());

    /// <summary>Appends text as it is.</summary>
    public void AppendFormatted(ReadOnlySpan<char> value)
    {
        Reserve(value.Length);
        value.CopyTo(_buffer.AsSpan(_length));
        _length += value.Length;
    }

    /// <summary>Appends a whole number.</summary>
    public void AppendFormatted(int value)
    {
        Reserve(16);
        value.TryFormat(_buffer.AsSpan(_length), out var written, default, CultureInfo.InvariantCulture);
        _length += written;
    }

    /// <summary>Appends a quantity, rounded and with its unit; see the remarks of the type for the formats.</summary>
    public void AppendFormatted(double value, string format)
    {
        var us = _units == UnitSystem.Us;
        switch (format)
        {
            case "mm" when us: Append(value / MillimetresPerInch, 2, " in"); break;
            case "mm": Append(value, 1, " mm"); break;
            case "gap" when us: AppendTrimmed(value / MillimetresPerInch, 2, " in"); break;
            case "gap": AppendTrimmed(value, 1, " mm"); break;
            case "room" when us: AppendTrimmed(value / MillimetresPerInch, 2, " in"); break;
            case "room": AppendTrimmed(value, Math.Abs(value) < TapeFromMm ? 1 : 0, " mm"); break;
            case "fit" when us: AppendTrimmed(value / MillimetresPerInch, 3, " in"); break;
            case "fit": AppendTrimmed(value, 2, " mm"); break;
            case "tread" when us: AppendTrimmed(value / MillimetresPerInch * 32, 1, "/32 in"); break;
            case "tread": Append(value, 1, " mm"); break;
            case "treadFine" when us: AppendTrimmed(value / MillimetresPerInch * 32, 2, "/32 in"); break;
            case "treadFine": AppendTrimmed(value, 2, " mm"); break;
            case "m" when us: Append(value * 1000 / MillimetresPerInch / 12, 0, " ft"); break;
            case "m": AppendTrimmed(value, 1, " m"); break;
            case "kg" when us: AppendTrimmed(value / KilogramsPerPound, Math.Abs(value) < FinelyWeighedKg ? 1 : 0, " lb"); break;
            case "kg": AppendTrimmed(value, 1, " kg"); break;
            case "kPaUp" when us: Append(Math.Ceiling((value / KilopascalsPerPsi * 10) - Slack) / 10, 1, " psi"); break;
            case "kPaUp": Append(Math.Ceiling(value - Slack), 0, " kPa"); break;
            case "kPa" when us: Append(value / KilopascalsPerPsi, 1, " psi"); break;
            case "kPa": Append(value, 0, " kPa"); break;
            case "kmh" when us: Append(value / KilometresPerMile, 0, " mph"); break;
            case "kmh": AppendTrimmed(value, 1, " km/h"); break;
            case "km" when us: Append(value / KilometresPerMile, 0, " miles"); break;
            case "km": Append(value, 0, " km"); break;
            case "c" when us: AppendTrimmed((value * FahrenheitPerCelsius) + FahrenheitAtZeroCelsius, 0, " °F"); break;
            case "c": AppendTrimmed(value, 1, " °C"); break;
            case "cDiff" when us: AppendTrimmed(value * FahrenheitPerCelsius, 1, " °F"); break;
            case "cDiff": AppendTrimmed(value, 1, " °C"); break;
            case "pct": AppendTrimmed(value, 2, " %"); break;
            case "pct0": Append(value, 0, " %"); break;
            case "angle": Append(value, 1, "°"); break;
            case "deg": Append(value, 2, "°"); break;
            case "in": AppendTrimmed(value, 3, " in"); break;
            default: AppendTrimmed(value, 2, ""); break;
        }
    }

    private void AppendTrimmed(double value, int decimals, string unit) => Append(value, decimals, unit, isTrimmed: true);

    private static double PowerOfTen(int decimals) => decimals switch { 0 => 1, 1 => 10, 2 => 100, _ => 1000 };

    private void Append(double value, int decimals, string unit, bool isTrimmed = false)
    {
        var scaled = Math.Round(value * PowerOfTen(decimals), MidpointRounding.AwayFromZero);
        Reserve(LongestNumber + unit.Length);

        // A double of up to 2^53 is exact as a whole number, whose digits are several times cheaper to write than a double's.
        if (Math.Abs(scaled) < 9e15)
        {
            if (scaled < 0) _buffer[_length++] = '−';
            AppendDigits((ulong)Math.Abs(scaled), decimals, isTrimmed);
        }
        else
        {
            value.TryFormat(_buffer.AsSpan(_length), out var written, "E3", CultureInfo.InvariantCulture);
            _length += written;
        }

        unit.CopyTo(_buffer.AsSpan(_length));
        _length += unit.Length;
    }

    /// <summary>Appends a number that was multiplied by a power of ten; trimmed, without zeros at the end of its decimals.</summary>
    private void AppendDigits(ulong scaled, int decimals, bool isTrimmed)
    {
        for (; isTrimmed && decimals > 0 && scaled % 10 == 0; decimals--) scaled /= 10;

        Span<char> digits = stackalloc char[LongestNumber];
        var first = LongestNumber;
        for (var place = 0; scaled > 0 || place <= decimals; place++)
        {
            if (place == decimals && decimals > 0) digits[--first] = '.';
            digits[--first] = (char)('0' + (scaled % 10));
            scaled /= 10;
        }

        digits[first..].CopyTo(_buffer.AsSpan(_length));
        _length += LongestNumber - first;
    }

    private void Reserve(int extra)
    {
        if (_length + extra > _buffer.Length) Array.Resize(ref _buffer, Math.Max(_buffer.Length * 2, _length + extra));
    }
}

/// <summary>The units of texts and drawings made for people. Numbers in answers always keep their own unit.</summary>
public enum UnitSystem
{
    /// <summary>Millimetres, kilograms, kilopascals, kilometres per hour, degrees Celsius.</summary>
    Metric,

    /// <summary>Inches, pounds, pounds per square inch, miles per hour, degrees Fahrenheit.</summary>
    Us,
}
