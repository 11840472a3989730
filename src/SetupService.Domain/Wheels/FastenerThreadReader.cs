using System.Text.RegularExpressions;
using SetupService.Domain.Answers;

namespace SetupService.Domain.Wheels;

/// <summary>
/// Reads the thread of a wheel fastener: metric by diameter and pitch (M14x1.5, M12×1,25, 14x1.5), or inch by diameter and
/// threads per inch (1/2-20 is 12.7 mm by 1.27 mm).
/// </summary>
public static partial class FastenerThreadReader
{
    /// <summary>The longest text that is read, in characters, without spaces at either end.</summary>
    public const int MaximumLength = 20;

    /// <summary>The thinnest thread read, in mm.</summary>
    public const double MinimumDiameterMm = 8;

    /// <summary>The thickest thread read, in mm.</summary>
    public const double MaximumDiameterMm = 24;

    /// <summary>The finest pitch read, in mm.</summary>
    public const double MinimumPitchMm = 0.75;

    /// <summary>The coarsest pitch read, in mm.</summary>
    public const double MaximumPitchMm = 3;

    private const double MmPerInch = 25.4;

    /// <summary>Reads the text whole. Never throws on any text.</summary>
    public static ParseResult<FastenerThread> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (TextLength.Check(text, MaximumLength) is { } tooLong)
        {
            return Failed(tooLong);
        }

        var scanner = new MarkingScanner(text);
        if (scanner.TryTake(MetricThread(), out var metric) && scanner.AtEnd)
        {
            return Check(metric, WheelMarkingNumber.Decimal(metric.Groups["diameter"].Value), WheelMarkingNumber.Decimal(metric.Groups["pitch"].Value));
        }

        if (scanner.TryTake(InchThread(), out var inch) && scanner.AtEnd)
        {
            var diameterMm = MmPerInch * WheelMarkingNumber.Decimal(inch.Groups["over"].Value) / WheelMarkingNumber.Decimal(inch.Groups["under"].Value);
            return Check(inch, diameterMm, MmPerInch / WheelMarkingNumber.Decimal(inch.Groups["pitch"].Value));
        }

        return Failed(MarkingScanner.NotRead(text, "a thread such as M14x1.5, M12x1.25 or 1/2-20"));
    }

    private static ParseResult<FastenerThread> Check(Match piece, double diameterMm, double pitchMm)
    {
        if (diameterMm is < MinimumDiameterMm or > MaximumDiameterMm)
        {
            return Failed(MarkingScanner.Refused(
                piece.Groups["diameter"], WheelMarkingNumber.Range("is not a thread diameter", MinimumDiameterMm, MaximumDiameterMm, "mm")));
        }

        if (pitchMm is < MinimumPitchMm or > MaximumPitchMm)
        {
            return Failed(MarkingScanner.Refused(
                piece.Groups["pitch"], WheelMarkingNumber.Range("is not a pitch", MinimumPitchMm, MaximumPitchMm, "mm")));
        }

        return ParseResult.Success(new FastenerThread(diameterMm, pitchMm));
    }

    private static ParseResult<FastenerThread> Failed(ParseFault fault) =>
        ParseResult.Failure<FastenerThread>(fault.Part, fault.Position, fault.Message);

    [GeneratedRegex(@"\G[mM]?\s*(?<diameter>[0-9]{1,2}(?:[.,][0-9]{1,2})?)\s*[xX×*]\s*(?<pitch>[0-9]{1,2}(?:[.,][0-9]{1,3})?)(?![\p{L}0-9.,/])", RegexOptions.CultureInvariant)]
    private static partial Regex MetricThread();

    [GeneratedRegex(@"\G(?<diameter>(?<over>[0-9]{1,2})/(?<under>[1-9][0-9]?))\s*(?:""|″|(?i:in))?\s*[-–xX×]\s*(?<pitch>[1-9][0-9]?)(?:\s*(?i:UNF|UNC))?(?![\p{L}0-9.,/])", RegexOptions.CultureInvariant)]
    private static partial Regex InchThread();
}

/// <summary>The thread of a wheel bolt or stud.</summary>
/// <param name="DiameterMm">Nominal diameter in mm; a half-inch thread has 12.7.</param>
/// <param name="PitchMm">Distance from thread to thread in mm; 20 threads an inch are 1.27.</param>
public sealed record FastenerThread(double DiameterMm, double PitchMm);
