using System.Globalization;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;

namespace SetupService.Api.Fitment.Batch;

/// <summary>The problems only a batch can have.</summary>
internal static class BatchProblems
{
    private const string SendTheRest = "Send the lines after the last one answered again.";

    public static Problem LineTooLong(int mostBytes) => Problem.Create(
        ProblemTypes.TooLarge,
        string.Create(CultureInfo.InvariantCulture, $"The line is longer than {mostBytes} bytes and was skipped."),
        [
            Fault.At(
                "",
                FaultCodes.TooLong,
                string.Create(CultureInfo.InvariantCulture, $"A line may have {mostBytes} bytes."),
                new FaultLimits { Maximum = mostBytes }),
        ]);

    public static Problem NothingSent() => Problem.Invalid(
        Fault.At("", FaultCodes.Required, "The batch has no line: send one with vehicle and axle, and one with a candidate for each to be checked."));

    /// <summary>Why a batch was closed before its end: silence.</summary>
    public static string NothingCame(double seconds) =>
        string.Create(CultureInfo.InvariantCulture, $"No bytes came for {seconds:0.#} s, so the service stopped waiting. {SendTheRest}");

    /// <summary>Why a batch was closed before its end: it came too slowly.</summary>
    public static string CameTooSlowly(int bytesPerSecond) =>
        string.Create(CultureInfo.InvariantCulture, $"The lines came more slowly than {bytesPerSecond} bytes a second, so the service stopped waiting. {SendTheRest}");

    /// <summary>Why a batch was closed before its end: its time was over.</summary>
    public static string TookTooLong(double seconds) =>
        string.Create(CultureInfo.InvariantCulture, $"A batch may take {seconds:0.#} s, and they were over. {SendTheRest}");

    /// <summary>Why a batch was closed before its end: the service ends.</summary>
    public static string ShuttingDown() => "The service is shutting down. " + SendTheRest;

    public static Problem NoCar() => Problem.Invalid(
        Fault.At("", FaultCodes.Required, "No car is set: send a line with vehicle and axle first, and mend one that could not be read."));
}
