using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wear.Forecast;

/// <summary>What treadwear grades say. A weak guide: each maker grades its own tyres on a road course, and nothing of it is a track.</summary>
public sealed record TreadwearPart
{
    /// <summary>The grade of this tyre.</summary>
    [Sample(240.0)]
    public required double Grade { get; init; }

    /// <summary>The least projected life on the government's course that gets this grade.</summary>
    [Sample(115872.8)]
    public required double CourseKm { get; init; }

    /// <summary>The other grade; null where none is given.</summary>
    [Sample(300.0)]
    public required double? OtherGrade { get; init; }

    /// <summary>Expected life of the other over this one's in the same use; null where none is given.</summary>
    [Sample(1.25)]
    public required double? ExpectedLifeRatio { get; init; }

    /// <summary>That ratio over 2, the most it is taken to be wrong by.</summary>
    [Sample(0.625)]
    public required double? LowerLifeRatio { get; init; }

    /// <summary>That ratio times 2.</summary>
    [Sample(2.5)]
    public required double? UpperLifeRatio { get; init; }

    /// <summary>What the grade is, and is not.</summary>
    [Sample("A grade of 240 stands for a projected life of at least 115 873 km on the government's road course.")]
    public required string Text { get; init; }
}
