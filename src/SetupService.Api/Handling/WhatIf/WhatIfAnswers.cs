using SetupService.Api.Handling.Turns;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Handling.WhatIf;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling.WhatIf;

/// <summary>Puts down a comparison with all it rests on.</summary>
internal static class WhatIfAnswers
{
    private static readonly Assumption SameRubber = new(
        "/vehicle/front/tyre", null, "one scale of grip, the car's as given", "so that a change is judged on the same rubber",
        "The scale of grip found on the car as given holds for every change; a change of size or category acts beside it.");

    /// <summary>The answer.</summary>
    /// <param name="request">What was asked.</param>
    /// <param name="turned">The car as given, in its turn.</param>
    /// <param name="turn">The turn.</param>
    /// <param name="given">The car as given, standing.</param>
    /// <param name="before">What it reaches.</param>
    /// <param name="alone">The car with each change.</param>
    /// <param name="together">The car with all changes, as far as they could be made; null where one of them has a problem.</param>
    /// <param name="units">Units of the sentences.</param>
    public static WhatIfAnswer Create(
        WhatIfRequest request, CorneringEvaluation turned, in SteadyTurn turn, StandingCar given, WhatIfOutcome before, IReadOnlyList<WhatIfState> alone, WhatIfState? together, UnitSystem units)
    {
        var study = turned.Limits(turn.Attitude.Demand.LateralG);
        var figures = Figures(before.Figures);
        WhatIfChangeResponse[] changes = [.. alone.Select((one, i) => Change(Label(request.Changes[i], i), one))];
        var all = together is { Car: { } car, Outcome: { } outcome } ? Together(car, outcome) : null;
        WhatIfState[] answered = [.. alone.Append(together).OfType<WhatIfState>().Where(one => one.Outcome is not null)];
        return new WhatIfAnswer
        {
            Before = figures,
            Changes = changes,
            Together = all,
            Table = WhatIfTable.Write(figures, changes, all, units),
            Unknown = all is null ? [.. Gaps(before, [], "/before"), UnknownResponse.Create("/together", WhyNotTogether(changes, together))] : Gaps(before, [], "/before"),
            Method = "what-if",
            Edition = Edition.Current,
            Next = NextCalls.AfterWhatIf,
            Assumptions =
            [
                .. TurnAssumptions.List(turned, study, turn.Attitude, new TurnOutputs("/before/rollDeg", "/before/frontInclinationDeg", "/before/rearInclinationDeg", "/before/frontLimitG", "/before/rearLimitG")),
                AssumptionResponse.From(SameRubber),
                .. ChangeAssumptions(turned.Reading, alone),
            ],
            Cautions = CautionResponse.From([
                .. CorneringCautions.OfAttitudes([.. answered.Select(one => one.Outcome!.Turn?.Attitude).Prepend(before.Turn?.Attitude).OfType<CorneringAttitude>()]),
                .. WhatIfCautions.For(given.Stated, [.. alone.Select(one => one.Car?.Stated ?? given.Stated)], together?.Car?.Stated ?? given.Stated, units),
            ]),
        };

        WhatIfChangeResponse Change(string label, WhatIfState state) => state is { Car: { } changed, Outcome: { } reached }
            ? new()
            {
                Label = label,
                Text = WhatIfWords.Describe(given, before, study, changed, reached, units),
                After = Figures(reached.Figures),
                Change = Figures(reached.Figures.Less(before.Figures)),
                Ranges = Ranges(reached),
                Unknown = Gaps(reached, changed.Unknown, "/after"),
            }
            : new() { Label = label, Text = null, After = null, Change = null, Ranges = null, Unknown = [], Problem = state.Problem };

        WhatIfTogetherResponse Together(StandingCar changed, WhatIfOutcome reached) => new()
        {
            Text = WhatIfWords.Describe(given, before, study, changed, reached, units),
            After = Figures(reached.Figures),
            Change = Figures(reached.Figures.Less(before.Figures)),
            Ranges = Ranges(reached),
            Unknown = Gaps(reached, changed.Unknown, "/after"),
        };
    }

    private static string WhyNotTogether(WhatIfChangeResponse[] changes, WhatIfState? together)
    {
        string[] faulty = [.. changes.Where(one => one.Problem is not null).Select(one => $"'{one.Label}'")];
        return faulty.Length > 0
            ? $"all changes together need every change, and {string.Join(", ", faulty)} cannot be answered"
            : $"each change can be answered alone, but not all together: {together?.Problem?.Detail}";
    }

    private static LimitChangeResponse? Ranges(WhatIfOutcome outcome) => outcome.LimitChange is { } change
        ? new() { FrontLimitG = UncertaintyResponse.From(change.Front)!, RearLimitG = UncertaintyResponse.From(change.Rear)!, LimitMarginG = UncertaintyResponse.From(change.Margin)! }
        : null;

    // A label left empty would leave a row of the table without a name.
    private static string Label(CarChangeDocument change, int index) =>
        string.IsNullOrWhiteSpace(change.Label) ? FormattableString.Invariant($"change {index + 1}") : change.Label;

    /// <summary>What follows a change, and what it makes necessary to assume that the car as given told.</summary>
    private static IEnumerable<AssumptionResponse> ChangeAssumptions(ResolvedHandlingCar given, IReadOnlyList<WhatIfState> alone)
    {
        for (var i = 0; i < alone.Count; i++)
        {
            if (alone[i].Car is not { } car) continue;
            var place = FormattableString.Invariant($"/changes/{i}");
            foreach (var one in car.Followed) yield return Placed(one, place);
            foreach (var one in car.Reading.Assumed.Where(one => given.AssumedFor(one.Input) is null && !HandlingInputs.IsOfGrip(one.Input)))
                yield return Placed(one.ToAssumption(), place) with { Plausible = new PlausibleResponse { Lower = one.Lower, Upper = one.Upper } };
            foreach (var note in car.Reading.Notes.Where(note => !given.Notes.Any(other => other.Input == note.Input))) yield return Placed(note, place);
        }

        static AssumptionResponse Placed(Assumption one, string place) => AssumptionResponse.From(one with { Input = place + one.Input });
    }

    private static UnknownResponse[] Gaps(WhatIfOutcome outcome, IReadOnlyList<ChangeGap> ofChange, string place)
    {
        var gaps = new List<UnknownResponse>();
        var figures = outcome.Figures;
        foreach (var gap in ofChange)
        {
            var name = gap.At == CarAxle.Front ? "front" : "rear";
            Add(name + gap.Figure switch { FollowingFigure.Track => "TrackMm", FollowingFigure.UnsprungMass => "UnsprungMassKg", _ => "RideHeightChangeMm" }, gap.Reason, [.. gap.Needs.Select(need => "/vehicle" + need)]);
        }

        if (figures.FrontLoadTransferPct is null) Add("frontLoadTransferPct", "no load crosses without lateral acceleration");
        if (figures.FrontLimitG is null) Add("frontLimitG", CorneringWords.NoLimit(outcome.Limits.Front));
        if (figures.RearLimitG is null) Add("rearLimitG", CorneringWords.NoLimit(outcome.Limits.Rear));
        if (figures.LimitMarginG is null) Add("limitMarginG", "needs both limits");
        if (outcome.Turn?.NoGradient is { } none) Add("understeerDegPerG", none switch
        {
            NoGradientReason.NearLimit => "an axle uses more than nine tenths of its grip: a gradient tells nothing there; see the limits",
            NoGradientReason.WheelLifted => "a wheel has left the road: a gradient tells nothing there; see the limits",
            _ => "there is no equilibrium just beside this turn",
        });
        if (figures.FrontBumpLeftMm is null) Add("frontBumpLeftMm", "needs bumpTravelMm of the front axle", "/vehicle/front/bumpTravelMm");
        if (figures.RearBumpLeftMm is null) Add("rearBumpLeftMm", "needs bumpTravelMm of the rear axle", "/vehicle/rear/bumpTravelMm");
        if (figures.FrontDampingRatio is null) Add("frontDampingRatio", "needs bumpNsPerM and reboundNsPerM of the front damper", "/vehicle/front/damper/bumpNsPerM", "/vehicle/front/damper/reboundNsPerM");
        if (figures.RearDampingRatio is null) Add("rearDampingRatio", "needs bumpNsPerM and reboundNsPerM of the rear damper", "/vehicle/rear/damper/bumpNsPerM", "/vehicle/rear/damper/reboundNsPerM");
        if (figures.FrontRideHeightMm is null && !Has("frontRideHeightChangeMm")) Add("frontRideHeightChangeMm", RideWords.HeightUnknown, "/vehicle/front/spring/freeLengthMm", "/vehicle/front/spring/installedLengthMm");
        if (figures.RearRideHeightMm is null && !Has("rearRideHeightChangeMm")) Add("rearRideHeightChangeMm", RideWords.HeightUnknown, "/vehicle/rear/spring/freeLengthMm", "/vehicle/rear/spring/installedLengthMm");
        if (figures.FrontCamberDeg is null) Add("frontCamberDeg", "the front wheels stand beyond what was read of their suspension", "/vehicle/front/suspension/readings");
        if (figures.RearCamberDeg is null) Add("rearCamberDeg", "the rear wheels stand beyond what was read of their suspension", "/vehicle/rear/suspension/readings");
        if (figures.FrontScrubRadiusMm is null) Add("frontScrubRadiusMm", "needs the points of the front suspension, among them the steering axis", "/vehicle/front/suspension/points");
        return [.. gaps];

        bool Has(string output) => gaps.Exists(one => one.Id == $"{place}/{output}");

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
        FrontCamberDeg = figures.FrontCamberDeg,
        RearCamberDeg = figures.RearCamberDeg,
        FrontRollCentreHeightMm = figures.FrontRollCentreHeightMm,
        RearRollCentreHeightMm = figures.RearRollCentreHeightMm,
        FrontTrackMm = figures.FrontTrackMm,
        RearTrackMm = figures.RearTrackMm,
        FrontScrubRadiusMm = figures.FrontScrubRadiusMm,
        FrontUnsprungMassKg = figures.FrontUnsprungMassKg,
        RearUnsprungMassKg = figures.RearUnsprungMassKg,
    };
}
