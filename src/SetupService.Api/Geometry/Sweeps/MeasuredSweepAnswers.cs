using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Geometry;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Geometry.Sweeps;

/// <summary>A sweep over a corner known by measuring: camber and toe by its curves, the rest unknown with the reason.</summary>
internal static class MeasuredSweepAnswers
{
    /// <summary>The answer; null where the readings reach none of the travels.</summary>
    public static TravelSweepAnswer? Of(TravelSweepRequest request, MeasuredCorner corner, UnitSystem units)
    {
        var rows = new List<TravelSweepRow>();
        var missed = new List<UnreachablePart>();
        var travels = request.TravelMm.ToRange();
        var racks = request.RackMm?.ToRange() ?? SweepRange.Only(0);
        for (var i = 0; i < travels.Count; i++)
        {
            for (var k = 0; k < racks.Count; k++) Add(request, corner, travels[i], racks[k], rows, missed, units);
        }

        if (rows.Count == 0) return null;
        return new TravelSweepAnswer
        {
            Rows = [.. rows],
            Unreachable = [.. missed],
            ReachableTravelMm = missed.Count == 0
                ? null
                : new ReachableTravelPart { From = corner.FirstMm - TravelCurve.ExtensionMm, To = corner.LastMm + TravelCurve.ExtensionMm },
            Unknown = [.. MeasuredGaps.OfSweep(corner, request.TrackMm).Select(gap => new UnknownResponse { Output = gap.Output, Reason = gap.Reason })],
            Method = "measured-corner",
            Edition = Edition.Current,
            Assumptions = AssumptionResponse.Of(Assumptions(request, corner)),
            Cautions = CautionResponse.Of(GeometryCautions.ForSweep),
        };
    }

    private static List<Assumption> Assumptions(TravelSweepRequest request, MeasuredCorner corner)
    {
        var list = MeasuredInputs.Assumptions(corner, request.Suspension, request.Alignment);
        if (request.MeasuringDiameterMm is null && corner.ToeGap is null) list.Add(GeometryAssumptions.MeasuringDiameter);
        return list;
    }

    private static void Add(
        TravelSweepRequest request, MeasuredCorner corner, double travelMm, double rackMm, List<TravelSweepRow> rows, List<UnreachablePart> missed, UnitSystem units)
    {
        if (rackMm != 0)
        {
            missed.Add(Missed(travelMm, rackMm, "how far the rack steers is not told by readings; the call steer-sweep takes steer angles.", 0));
        }
        else if (corner.CamberAt(travelMm)?.AngleDeg is { } camber)
        {
            rows.Add(Row(request, corner, travelMm, camber, MeasuredStand.ToeAt(corner, request.Alignment.ToeDeg, travelMm)));
        }
        else
        {
            var beyond = Math.Max(corner.FirstMm - TravelCurve.ExtensionMm - travelMm, travelMm - corner.LastMm - TravelCurve.ExtensionMm);
            missed.Add(Missed(travelMm, rackMm, MeasuredWords.BeyondReadings(travelMm, corner.FirstMm, corner.LastMm, units), beyond));
        }
    }

    private static UnreachablePart Missed(double travelMm, double rackMm, string reason, double residualMm) =>
        new() { TravelMm = travelMm, RackMm = rackMm, Reason = reason, ResidualMm = residualMm };

    private static TravelSweepRow Row(TravelSweepRequest request, MeasuredCorner corner, double travelMm, Estimate camber, Estimate? toe)
    {
        var camberGain = corner.CamberAt(travelMm)?.SlopeDegPerMm.Value;
        var toeGain = corner.ToeAt(travelMm)?.SlopeDegPerMm.Value;
        var diameterMm = request.MeasuringDiameterMm ?? AxleInputs.DefaultMeasuringDiameterMm;
        return new TravelSweepRow
        {
            TravelMm = travelMm,
            RackMm = 0,
            CamberDeg = camber.Value,
            ToeDeg = toe?.Value,
            SteerDeg = -toe?.Value,
            CasterDeg = travelMm == 0 ? corner.CasterDeg?.Value : null,
            SteeringAxisInclinationDeg = travelMm == 0 ? corner.SteeringAxisInclinationDeg?.Value : null,
            HalfTrackChangeMm = null,
            ContactForwardMm = null,
            RollCentreHeightMm = null,
            InstantCentreYMm = null,
            InstantCentreZMm = null,
            SwingArmMm = null,
            SideInstantCentreXMm = null,
            SideInstantCentreZMm = null,
            ScrubRadiusMm = null,
            MechanicalTrailMm = null,
            SpringMotionRatio = null,
            DamperMotionRatio = null,
            SpringLengthMm = null,
            DamperLengthMm = null,
            CamberGainDegPerMm = camberGain,
            CamberGainPerRoll = camberGain * (request.TrackMm / 2) * double.DegreesToRadians(1),
            BumpSteerDegPer10Mm = 10 * toeGain,
            BumpSteerMmPer10Mm = 10 * toeGain * double.DegreesToRadians(1) * diameterMm * Math.Cos(double.DegreesToRadians(toe?.Value ?? 0)),
            AntiDivePct = null,
            AntiLiftPct = null,
            AntiSquatPct = null,
            OtherSteerDeg = toe?.Value,
            AckermannPct = null,
            TurningCircleM = null,
            CamberRangeDeg = UncertaintyResponse.Of(camber),
        };
    }
}
