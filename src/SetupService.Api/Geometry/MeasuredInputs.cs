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
    public static bool TryRead(SuspensionDocument document, AlignmentAnglesDocument alignment, [NotNullWhen(true)] out MeasuredCorner? corner)
    {
        corner = document is MeasuredSuspensionDocument measured ? MeasuredMapper.Read(measured, alignment, out _) : null;
        return corner is not null;
    }

    /// <summary>What every call on a measured corner assumes.</summary>
    public static List<Assumption> Assumptions(MeasuredCorner corner, SuspensionDocument document, AlignmentAnglesDocument alignment)
    {
        var list = new List<Assumption>
        {
            new("/suspension/readings", null, "a smooth curve within the gauge's error", "judgement on how suspensions bend: docs/methods/measured-corner", "Between the readings, and for 20 mm beyond them with growing ranges, the curve is our choice; a kink between two readings would not show."),
        };
        if (document is MeasuredSuspensionDocument { GaugeErrorDeg: null })
            list.Add(new("/suspension/gaugeErrorDeg", CasterReadings.DefaultGaugeErrorDeg, null, CommonPractice, "The gauge's standard error decides how closely the curve follows the readings, and the ranges."));
        if (corner.StatedCamber is { IsContradiction: false } stated)
            list.Add(new("/alignment/camberDeg", stated.StatedDeg, null, "the alignment given", "The camber stated for ride height counts as one more reading there, with the same gauge error."));
        if (corner.StatedCamber is { IsContradiction: true } apart)
            list.Add(new("/alignment/camberDeg", apart.StatedDeg, "not used", "the readings given", Prose.Write(UnitSystem.Metric, $"The readings give {apart.ReadDeg.Value:deg} at ride height, {Math.Abs(apart.DifferenceDeg):deg} from the camber stated; more than {apart.AllowedDeg:deg} cannot be the gauge's error, and the curve keeps to the readings.")));
        if (alignment.ToeDeg is not null && corner.ToeAt(0) is not null)
            list.Add(new("/alignment/toeDeg", alignment.ToeDeg, null, "the alignment given", "The curve keeps its shape and goes through the toe stated for ride height."));
        return list;
    }

    /// <summary>The 422 for readings that do not reach what is asked.</summary>
    public static Problem NotTold(string pointer, string reason) =>
        Problem.NotComputable($"Readings alone do not tell it: {reason}", [Fault.At(pointer, FaultCodes.Unreachable, reason)]);
}
