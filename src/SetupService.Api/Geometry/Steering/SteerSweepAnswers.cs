using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Geometry;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Geometry.Steering;

/// <summary>Turns a wheel over its steer and puts down what it gives.</summary>
internal static class SteerSweepAnswers
{
    private static readonly string[] OnTheGround = ["scrubRadiusMm", "mechanicalTrailMm", "contactHeightChangeMm"];

    /// <summary>The answer; it has no row where no heading was reached.</summary>
    public static SteerSweepAnswer Of(SteerSweepRequest request)
    {
        var side = SteerSweepReading.Side(request.Side);
        var wheel = SteerSweepReading.Wheel(request);
        var sweep = SteerSweep.Of(wheel);
        var range = request.SteerDeg.ToRange();
        var rows = new List<SteerSweepRow>(range.Count);
        var unreachable = new List<UnreachableSteerPart>();
        for (var i = 0; i < range.Count; i++)
        {
            if (sweep.At(range[i], side) is { } row) rows.Add(Row(row));
            else unreachable.Add(Part(SteerLimits.Of(wheel)?.For(side), range[i]));
        }

        return new SteerSweepAnswer
        {
            Rows = [.. rows],
            Unreachable = [.. unreachable],
            Unknown = Unknown(SteerSweepReading.Missing(request)),
            Method = "steer-sweep",
            Edition = Edition.Current,
            Assumptions = AssumptionResponse.Of(SteeringAssumptions.Of(request)),
            Cautions = CautionResponse.Of(SteeringCautions.ForSweep),
        };
    }

    private static SteerSweepRow Row(in SteerRow row) => new()
    {
        SteerDeg = row.SteerDeg,
        CamberDeg = row.CamberDeg,
        CamberChangeDeg = row.CamberChangeDeg,
        CamberApproximationDeg = row.CamberApproximationDeg,
        RotationDeg = row.RotationDeg,
        ScrubRadiusMm = row.ScrubRadiusMm,
        MechanicalTrailMm = row.MechanicalTrailMm,
        ContactHeightChangeMm = row.ContactHeightChangeMm,
    };

    private static UnreachableSteerPart Part(SteerLimits? limits, double steerDeg) =>
        new() { SteerDeg = steerDeg, Reason = SteerWords.Unreachable(limits, steerDeg) };

    private static UnknownResponse[] Unknown(string[] missing)
    {
        if (missing.Length == 0) return [];
        var reason = Needs.Of(missing);
        return Array.ConvertAll(OnTheGround, output => UnknownResponse.Of(output, reason, [.. missing.Select(static name => "/" + name)]));
    }
}
