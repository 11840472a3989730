using SetupService.Api.Handling.Turns;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Envelope;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Handling.Envelope;

/// <summary>Finds the points of an envelope and puts them down.</summary>
internal static class EnvelopeAnswers
{
    private static readonly Assumption UsualSpeed = new(
        "/speedKmh", EnvelopeEndpoint.UsualSpeedKmh, null, "common practice, no source", "Neither speedKmh nor cornerRadiusM is given: each turn is as wide as this speed makes it. It hardly matters without forces of the air.");

    private static readonly Assumption ToTheLeft = new("/turn", null, "left", "common practice, no source", "It matters only where both sides of the car differ.");

    /// <summary>The answer; null where the points of a suspension hold no wheel.</summary>
    public static EnvelopeAnswer? Create(EnvelopeRequest request, CorneringEvaluation car, SweepRange range)
    {
        if (GripEnvelope.Create(car.Reading.Car, car.Path, car.Budget) is not { } envelope) return null;
        var points = new EnvelopePoint[range.Count];

        // -1.1 + 11·0.1 is a little more than 0, where nothing is driven.
        for (var i = 0; i < points.Length; i++) points[i] = envelope.At(Math.Clamp(Math.Round(range[i], 9), Math.Min(range.From, range.To), Math.Max(range.From, range.To)));
        var (braking, driving) = (envelope.Straight(braking: true), envelope.Straight(braking: false));
        EnvelopeRow[] rows = [.. points.Select(point => Row(car.Path, point, car.Units))];
        CorneringAttitude[] attitudes = [.. points.Select(point => point.Attitude).OfType<CorneringAttitude>()];
        return new EnvelopeAnswer
        {
            Rows = rows,
            Straight = new StraightResponse
            {
                BrakingG = braking.LongitudinalG,
                BrakingLimitedBy = braking.End,
                DrivingG = driving.LongitudinalG,
                DrivingLimitedBy = driving.End,
            },
            Text = EnvelopeWords.Summary(points, braking, driving, car.Units),
            Unknown = Gaps(rows, driving.LongitudinalG),
            Method = "envelope",
            Edition = Edition.Current,
            Assumptions =
            [
                .. car.Reading.Assumed.Select(one => AssumptionResponse.From(one.ToAssumption()) with { Plausible = new PlausibleResponse { Lower = one.Lower, Upper = one.Upper } }),
                .. AssumptionResponse.From([.. CorneringAssumptions.Build(car.Reading, car.Scale), .. Asked(request)]),
            ],
            Cautions = CautionResponse.From([.. EnvelopeWords.Cautions(braking, car.Stated.BrakeShareFrontPct is null ? car.Reading.Car.BrakeShareFrontPct : null), .. CorneringCautions.AtTheLimit(attitudes), .. car.Stated.SuspensionCautions(car.Units)]),
        };
    }

    private static IEnumerable<Assumption> Asked(EnvelopeRequest request)
    {
        if (request is { SpeedKmh: null, CornerRadiusM: null }) yield return UsualSpeed;
        if (request.Turn is null) yield return ToTheLeft;
    }

    private static EnvelopeRow Row(in TurnPath path, in EnvelopePoint point, UnitSystem units) => new()
    {
        LongitudinalG = point.LongitudinalG,
        LateralG = point.LateralG,
        LimitedBy = point.End,
        Text = EnvelopeWords.End(point, units),
        SpeedKmh = point.LateralG is { } atG ? path.SpeedKmh(atG) : null,
        CornerRadiusM = point.LateralG is { } onG ? path.RadiusM(onG) : null,
        FrontLimitG = point.Limits.Front.LimitG,
        RearLimitG = point.Limits.Rear.LimitG,
        FrontLongitudinalUsedPct = 100 * point.Attitude?.Front.LongitudinalUsed,
        RearLongitudinalUsedPct = 100 * point.Attitude?.Rear.LongitudinalUsed,
        RollDeg = point.Attitude?.RollDeg,
        PitchDeg = point.Attitude?.PitchDeg,
    };

    private static UnknownResponse[] Gaps(EnvelopeRow[] rows, double? drivingG)
    {
        var list = new List<UnknownResponse>();
        foreach (var missed in rows.Where(row => row.LateralG is null).GroupBy(row => row.LimitedBy))
        {
            var count = missed.Count();
            list.Add(UnknownResponse.Create(
                "lateralG",
                count == rows.Length ? missed.First().Text : FormattableString.Invariant($"in {count} of {rows.Length} rows, and with it the other figures there: {missed.First().Text}"),
                missed.Key == EnvelopeEnd.DrivenAxleUnknown ? ["/vehicle/drivenAxle"] : []));
        }

        Add("frontLimitG", row => row.FrontLimitG, "the car has no equilibrium up to the front axle's own limit");
        Add("rearLimitG", row => row.RearLimitG, "the car has no equilibrium up to the rear axle's own limit");
        Add("cornerRadiusM", row => row.CornerRadiusM, "at this speed so little lateral acceleration makes a path all but straight");
        if (drivingG is null) list.Add(UnknownResponse.Create("/straight/drivingG", "only the driven wheels can give it, and nobody said which they are", "/vehicle/drivenAxle"));
        return [.. list];

        void Add(string id, Func<EnvelopeRow, double?> figure, string reason)
        {
            var count = rows.Count(row => row.LateralG is not null && figure(row) is null);
            if (count > 0) list.Add(UnknownResponse.Create(id, FormattableString.Invariant($"in {count} of {rows.Length} rows {reason}")));
        }
    }
}
