using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>Says what a treadwear grade is and is not.</summary>
public static class TreadwearWords
{
    /// <summary>The sentences as one text.</summary>
    /// <param name="grade">The tyre's grade.</param>
    /// <param name="otherGrade">The grade of one thought of in its place; null where there is none.</param>
    /// <param name="units">Units of the text.</param>
    public static string Describe(double grade, double? otherGrade, UnitSystem units)
    {
        var rounded = grade % TreadwearGrade.Step == 0 ? "" : Prose.Write(units, $" Grades are multiples of {TreadwearGrade.Step}, which {grade:n} is not: look at the tyre's side again.");
        var text = Prose.Write(units, $"A grade of {grade:n} stands for a projected life of at least {TreadwearGrade.CourseKm(grade):km} on the government's road course (100 times the projected miles over 30,000, rounded down to a multiple of {TreadwearGrade.Step}). Makers grade their own tyres; it is no promise of distance, and says nothing of a track.{rounded}");
        if (otherGrade is not { } other) return text;
        var ratio = TreadwearGrade.LifeRatio(grade, other);
        return Prose.Write(units, $"{text} Grade {other:n} against {grade:n} promises {ratio:n} times the life in the same use; take that as good to a factor of {TreadwearGrade.LeastFactor:n} to {TreadwearGrade.MostFactor:n} either way (judgement), the more so between makers, whose grades compare weakly.");
    }
}
