using System.Diagnostics.CodeAnalysis;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Geometry;

/// <summary>What the calls take from a measured suspension, and what they assume of it.</summary>
internal static class MeasuredInputs
{
    private const string CommonPractice = "common practice, no source";

    /// <summary>The corner; false where its readings make none, which its rules have told.</summary>
    public static bool TryRead(
        SuspensionDocument document, AlignmentAnglesDocument alignment, double? gaugeErrorDeg, [NotNullWhen(true)] out MeasuredCorner? corner)
    {
        corner = document is MeasuredSuspensionDocument measured ? MeasuredMapper.Read(measured, alignment, gaugeErrorDeg, out _) : null;
        return corner is not null;
    }

    /// <summary>Camber and toe as stated now.</summary>
    public static StatedAngles Stated(AlignmentAnglesDocument alignment) => new(alignment.CamberDeg, alignment.ToeDeg);

    /// <summary>What every call on a measured corner assumes.</summary>
    public static List<Assumption> Assumptions(MeasuredCorner corner, AlignmentAnglesDocument alignment, double? gaugeErrorDeg)
    {
        var list = new List<Assumption>
        {
            new("/suspension/readings", null, "the smoothest curve within the gauge's error", "Reinsch 1967, from memory: the lower end of his interval", "Between the readings, and for 20 mm beyond them by the end slope, the curve is our choice; a kink between two readings would not show."),
        };
        if (gaugeErrorDeg is null)
            list.Add(new("/gaugeErrorDeg", CasterReadings.DefaultGaugeErrorDeg, null, CommonPractice, "The gauge's standard error decides how closely the curve follows the readings, and the ranges."));
        if (alignment.CamberDeg is not null && corner.Reaches(0))
            list.Add(new("/alignment/camberDeg", alignment.CamberDeg, null, "the alignment given", "The curve keeps its shape and goes through the camber stated for ride height."));
        if (alignment.ToeDeg is not null && corner.ToeAt(0) is not null)
            list.Add(new("/alignment/toeDeg", alignment.ToeDeg, null, "the alignment given", "The curve keeps its shape and goes through the toe stated for ride height."));
        return list;
    }

    /// <summary>The 422 for readings that do not reach what is asked.</summary>
    public static Problem NotTold(string pointer, string reason) =>
        Problem.NotComputable($"Readings alone do not tell it: {reason}", [Fault.At(pointer, FaultCodes.Unreachable, reason)]);
}
