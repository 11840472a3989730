using SetupService.Api.Handling.Turns;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Handling.WhatIf;

namespace SetupService.Api.Handling.WhatIf;

/// <summary>Puts down a comparison with all it rests on.</summary>
internal static class WhatIfAnswers
{
    private static readonly Assumption SameRubber = new(
        "/vehicle/front/tyre", null, "one scale of grip, the car's as given", "so that a change is judged on the same rubber",
        "The scale of grip found on the car as given holds for every change; a change of size or category acts beside it.");

    /// <summary>The answer.</summary>
    public static WhatIfAnswer Create(WhatIfRequest request, CorneringEvaluation car, in SteadyTurn turn, WhatIfOutcome asGiven, IReadOnlyList<WhatIfOutcome> alone, WhatIfOutcome together, IReadOnlyList<WhatIfCar> changed, UnitSystem units)
    {
        var given = Figures(asGiven.Figures);
        WhatIfChangeResponse[] changes = [.. alone.Select((one, i) => Change(Label(request.Changes[i], i), one, asGiven))];
        var all = Together(together, asGiven);
        return new WhatIfAnswer
        {
            Before = given,
            Changes = changes,
            Together = all,
            Table = WhatIfTable.Write(given, changes, all, units),
            Unknown = Gaps(asGiven, "/before"),
            Method = "what-if",
            Edition = Edition.Current,
            Assumptions = [.. TurnAssumptions.List(car, car.Limits(turn.Attitude.Demand.LateralG), turn.Attitude, new TurnOutputs("/before/rollDeg", "/before/frontInclinationDeg", "/before/rearInclinationDeg", "/before/frontLimitG", "/before/rearLimitG")), AssumptionResponse.From(SameRubber), .. ChangeAssumptions(car.Reading, changed, alone.Count)],
            Cautions = CautionResponse.From([.. CorneringCautions.OfAttitudes(Attitudes([asGiven, .. alone, together])), .. WhatIfCautions.For(car.Stated, [.. changed.Take(alone.Count).Select(one => one.Stated)], changed[^1].Stated, units)]),
        };
    }

    private static CorneringAttitude[] Attitudes(IReadOnlyList<WhatIfOutcome> outcomes) => [.. outcomes.Select(one => one.Turn?.Attitude).OfType<CorneringAttitude>()];

    // A label left empty would leave a row of the table without a name.
    private static string Label(WhatIfChangeDocument change, int index) =>
        string.IsNullOrWhiteSpace(change.Label) ? FormattableString.Invariant($"change {index + 1}") : change.Label;

    /// <summary>What a change makes necessary to assume that the car as given told.</summary>
    private static IEnumerable<AssumptionResponse> ChangeAssumptions(ResolvedHandlingCar given, IReadOnlyList<WhatIfCar> changed, int count)
    {
        for (var i = 0; i < count; i++)
        {
            var reading = changed[i].Reading;
            var place = FormattableString.Invariant($"/changes/{i}");
            foreach (var one in reading.Assumed.Where(one => given.AssumedFor(one.Input) is null))
                yield return Placed(one.ToAssumption(), place) with { Plausible = new PlausibleResponse { Lower = one.Lower, Upper = one.Upper } };
            foreach (var note in reading.Notes.Where(note => !given.Notes.Any(other => other.Input == note.Input))) yield return Placed(note, place);
        }

        static AssumptionResponse Placed(Assumption one, string place) => AssumptionResponse.From(one with { Input = place + one.Input });
    }

    private static WhatIfChangeResponse Change(string label, in WhatIfOutcome outcome, in WhatIfOutcome asGiven) => new()
    {
        Label = label,
        After = Figures(outcome.Figures),
        Change = Figures(outcome.Figures.Less(asGiven.Figures)),
        Unknown = Gaps(outcome, "/after"),
    };

    private static WhatIfTogetherResponse Together(in WhatIfOutcome outcome, in WhatIfOutcome asGiven) => new()
    {
        After = Figures(outcome.Figures),
        Change = Figures(outcome.Figures.Less(asGiven.Figures)),
        Unknown = Gaps(outcome, "/after"),
    };

    private static UnknownResponse[] Gaps(WhatIfOutcome outcome, string place)
    {
        var gaps = new List<UnknownResponse>();
        var figures = outcome.Figures;
        if (outcome.Failure is { } failure)
        {
            var reason = failure == CorneringFailure.RollsOver ? "the car would roll over in this turn" : "a wheel cannot follow this turn";
            foreach (var output in (string[])["rollDeg", "frontInclinationDeg", "rearInclinationDeg", "frontLoadTransferPct", "frontLimitG", "rearLimitG", "limitMarginG", "understeerDegPerG", "frontBumpLeftMm", "rearBumpLeftMm"]) Add(output, reason);
        }
        else
        {
            if (figures.FrontLoadTransferPct is null) Add("frontLoadTransferPct", "no load crosses without lateral acceleration");
            if (figures.FrontLimitG is null) Add("frontLimitG", "the car has no equilibrium up to the front axle's limit: it would roll over, or a wheel cannot follow");
            if (figures.RearLimitG is null) Add("rearLimitG", "the car has no equilibrium up to the rear axle's limit: it would roll over, or a wheel cannot follow");
            if (figures.LimitMarginG is null) Add("limitMarginG", "needs both limits");
            if (outcome.Turn?.NoGradient is { } none) Add("understeerDegPerG", none switch
            {
                NoGradientReason.NearLimit => "an axle uses more than nine tenths of its grip: a gradient tells nothing there; see the limits",
                NoGradientReason.WheelLifted => "a wheel has left the road: a gradient tells nothing there; see the limits",
                _ => "there is no equilibrium just beside this turn",
            });
            if (figures.FrontBumpLeftMm is null) Add("frontBumpLeftMm", "needs bumpTravelMm of the front axle", "/vehicle/front/bumpTravelMm");
            if (figures.RearBumpLeftMm is null) Add("rearBumpLeftMm", "needs bumpTravelMm of the rear axle", "/vehicle/rear/bumpTravelMm");
        }

        if (figures.FrontDampingRatio is null) Add("frontDampingRatio", "needs bumpNsPerM and reboundNsPerM of the front damper", "/vehicle/front/damper/bumpNsPerM", "/vehicle/front/damper/reboundNsPerM");
        if (figures.RearDampingRatio is null) Add("rearDampingRatio", "needs bumpNsPerM and reboundNsPerM of the rear damper", "/vehicle/rear/damper/bumpNsPerM", "/vehicle/rear/damper/reboundNsPerM");
        if (figures.FrontRideHeightMm is null) Add("frontRideHeightChangeMm", RideWords.HeightUnknown, "/vehicle/front/spring/freeLengthMm", "/vehicle/front/spring/installedLengthMm");
        if (figures.RearRideHeightMm is null) Add("rearRideHeightChangeMm", RideWords.HeightUnknown, "/vehicle/rear/spring/freeLengthMm", "/vehicle/rear/spring/installedLengthMm");
        return [.. gaps];

        void Add(string output, string reason, params string[] needs) => gaps.Add(UnknownResponse.Create($"{place}/{output}", reason, needs));
    }

    private static WhatIfFiguresResponse Figures(in WhatIfFigures figures) => new()
    {
        RollDeg = figures.RollDeg,
        FrontInclinationDeg = figures.FrontInclinationDeg,
        RearInclinationDeg = figures.RearInclinationDeg,
        FrontLoadTransferPct = figures.FrontLoadTransferPct,
        FrontLimitG = figures.FrontLimitG,
        RearLimitG = figures.RearLimitG,
        LimitMarginG = figures.LimitMarginG,
        UndersteerDegPerG = figures.UndersteerDegPerG,
        FrontBumpLeftMm = figures.FrontBumpLeftMm,
        RearBumpLeftMm = figures.RearBumpLeftMm,
        FrontRideFrequencyHz = figures.FrontRideFrequencyHz,
        RearRideFrequencyHz = figures.RearRideFrequencyHz,
        FrontDampingRatio = figures.FrontDampingRatio,
        RearDampingRatio = figures.RearDampingRatio,
        FrontRideHeightChangeMm = figures.FrontRideHeightMm,
        RearRideHeightChangeMm = figures.RearRideHeightMm,
    };
}
