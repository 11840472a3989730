using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment.Words;

/// <summary>The answer of a check of a whole car as a shop would say it to a customer; at most five sentences.</summary>
public static class CarSummaryWords
{
    private const int MostReasons = 3;

    /// <summary>The sentences.</summary>
    /// <param name="axles">The axles that change, with what is put on them and how it was judged.</param>
    /// <param name="verdict">The verdict on the car.</param>
    /// <param name="units">Units of the figures.</param>
    public static string Write(IReadOnlyList<(CarAxle Axle, FitmentContext Car, Fitting Candidate, CheckSheet Sheet)> axles, CheckStatus verdict, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(axles);
        var where = axles.Count > 1 ? "front and rear" : axles[0].Axle == CarAxle.Front ? "at the front" : "at the rear";
        List<string> sentences =
        [
            verdict switch
            {
                CheckStatus.Fail => "Does not fit.",
                CheckStatus.Unknown => "Not known to fit yet.",
                CheckStatus.Caution => $"Fits {where}, but look at this first.",
                _ => $"Fits {where}.",
            },
        ];
        var reasons = new List<string>();
        foreach (var (axle, car, candidate, sheet) in axles)
        {
            if (verdict == CheckStatus.Pass && SummaryWords.Room(car, sheet, units) is { } room) reasons.Add($"{Name(axle)}: {room}.");
            if (sheet.Verdict != verdict) continue;
            reasons.AddRange(SummaryWords.Reasons(car, candidate, sheet, units).Select(reason => $"{Name(axle)}: {Lower(reason)}"));
        }

        var told = reasons.Count > MostReasons ? MostReasons - 1 : reasons.Count;
        sentences.AddRange(reasons.Take(told));
        if (reasons.Count > told) sentences.Add("The checks of each axle name the rest.");
        if (verdict is CheckStatus.Pass or CheckStatus.Caution) sentences.Add("Turn every wheel by hand over full travel and lock before driving.");
        if (verdict == CheckStatus.Unknown) sentences.Add("Measure what is missing before buying.");
        return string.Join(' ', sentences);
    }

    private static string Name(CarAxle axle) => axle == CarAxle.Front ? "Front" : "Rear";

    // "ZR" and the like stay as they are.
    private static string Lower(string sentence) =>
        sentence.Length > 1 && char.IsUpper(sentence[0]) && !char.IsUpper(sentence[1]) ? char.ToLowerInvariant(sentence[0]) + sentence[1..] : sentence;
}
