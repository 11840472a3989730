using FluentValidation;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Geometry;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Geometry.Steering;

/// <summary>Turns a wheel over its steer and puts down what it gives.</summary>
internal static class SteerSweepMapper
{
    private static readonly string[] OnTheGround = ["scrubRadiusMm", "mechanicalTrailMm", "contactHeightChangeMm"];

    /// <summary>The answer; it has no row where no heading was reached.</summary>
    public static SteerSweepAnswer ToAnswer(SteerSweepRequest request)
    {
        var side = Side(request.Side);
        var wheel = Wheel(request);
        var sweep = SteerSweep.Create(wheel);
        var range = request.SteerDeg.ToRange();
        var rows = new List<SteerSweepRow>(range.Count);
        var unreachable = new List<UnreachableSteerResponse>();
        for (var i = 0; i < range.Count; i++)
        {
            if (sweep.At(range[i], side) is { } row) rows.Add(Row(row));
            else unreachable.Add(Part(SteerLimits.Find(wheel)?.For(side), range[i]));
        }

        return new SteerSweepAnswer
        {
            Rows = [.. rows],
            Unreachable = [.. unreachable],
            Unknown = Unknown(Missing(request)),
            Method = "steer-sweep",
            Edition = Edition.Current,
            Assumptions = AssumptionResponse.From(SteeringAssumptions.List(request)),
            Cautions = CautionResponse.From(SteeringCautions.ForSweep),
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

    private static UnreachableSteerResponse Part(SteerLimits? limits, double steerDeg) =>
        new() { SteerDeg = steerDeg, Reason = SteerWords.Unreachable(limits, steerDeg) };

    private static UnknownResponse[] Unknown(string[] missing)
    {
        if (missing.Length == 0) return [];
        var reason = Needs.Describe(missing);
        return Array.ConvertAll(OnTheGround, output => UnknownResponse.Create(output, reason, [.. missing.Select(static name => "/" + name)]));
    }

    /// <summary>The wheel, as the left one it mirrors where it is a right one.</summary>
    public static SteeredWheel Wheel(SteerSweepRequest request) => new()
    {
        CasterDeg = request.CasterDeg,
        SteeringAxisInclinationDeg = request.SteeringAxisInclinationDeg,
        CamberDeg = request.CamberDeg,
        ToeDeg = request.ToeDeg,
        LoadedRadiusMm = request.LoadedRadiusMm,
        SpindleOffsetMm = request.SpindleOffsetMm,
        WheelCentreTrailMm = request.WheelCentreTrailMm,
    };

    /// <summary>The side the wheel is on.</summary>
    public static WheelSide Side(WheelSide? side) => side ?? WheelSide.Left;

    /// <summary>The members that place the wheel on its axis and were not given.</summary>
    public static string[] Missing(SteerSweepRequest request)
    {
        string?[] missing =
        [
            request.LoadedRadiusMm is null ? "loadedRadiusMm" : null,
            request.SpindleOffsetMm is null ? "spindleOffsetMm" : null,
            request.WheelCentreTrailMm is null ? "wheelCentreTrailMm" : null,
        ];
        return [.. missing.OfType<string>()];
    }
}

/// <summary>What a steer sweep must keep beyond types and ranges: a step that leads to the end, and not too many rows.</summary>
public sealed class SteerSweepRules : AbstractValidator<SteerSweepRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public SteerSweepRules() => this.LeadsToItsEnd(nameof(SteerSweepRequest.SteerDeg), static request => request.SteerDeg?.ToRange());
}
