using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Drawings;

/// <summary>The notes under the drawing: what it does not show and why, and what is drawn otherwise than it will be.</summary>
internal static class DrawingNotes
{
    public static IReadOnlyList<string> List(CornerView view)
    {
        var notes = new List<string>();
        if (view.Car.Present is null) notes.Add("The wheel and tyre fitted now are not described: only the candidate is drawn.");
        AddUnknownGaps(view, notes);
        if (view.Lines.Any(line => line.HasMoved)) notes.Add("Thin dashes: where it was measured, before travel and camber change.");
        if (view.Car.Settings.CamberChange is { ChangeDeg: not 0 } change)
        {
            notes.Add(Prose.Write(view.Units, $"The camber change of {change.ChangeDeg:deg} is counted in the gaps; the wheel is drawn upright."));
        }

        AddRimMismatch(view, notes);
        if (view.CandidateOutlines.InnerProfile is not null) notes.Add("Dotted on the wheel: its inside as given.");
        if (view.Hub.Caliper is not null) notes.Add("Dotted at the hub: the brake caliper as given.");
        notes.Add("Nominal sizes, unloaded. Before driving, turn the wheel by hand through full travel and lock.");
        return notes;
    }

    private static void AddRimMismatch(CornerView view, List<string> notes)
    {
        var (tyreIn, rimIn) = (view.Candidate.Tyre.Marking.RimDiameterIn, view.Candidate.Wheel.RimDiameterIn);
        if (view.Candidate.Tyre.Marking.FitsRimDiameter(rimIn)) return;
        notes.Add(Prose.Write(
            view.Units, $"The tyre is made for {tyreIn:in} and the rim is {rimIn:in}: it must not be mounted. Drawn on a rim of the tyre's own diameter."));
    }

    private static void AddUnknownGaps(CornerView view, List<string> notes)
    {
        var byReason = new SortedDictionary<UnknownReason, List<string>>();
        for (var place = CheckId.InboardClearance; place <= CheckId.SpringSeatClearance; place++)
        {
            if (!view.Sheet.Applicable.Contains(place) || view.Sheet[place].Margin is not null) continue;
            var reason = view.Sheet[place].Reason;
            if (!byReason.TryGetValue(reason, out var places)) byReason.Add(reason, places = []);
            places.Add(DrawingWords.Place(place));
        }

        foreach (var (reason, places) in byReason) notes.Add($"{Reason(reason)}: {string.Join(", ", places)}.");
    }

    private static string Reason(UnknownReason reason) => reason switch
    {
        UnknownReason.GapMissing => "Not measured",
        UnknownReason.InsidePresent => "Not measured, and no more room taken there than now",
        UnknownReason.PresentFittingMissing => "Not known without the wheel and tyre fitted now",
        UnknownReason.MeasurementsContradict => "Not known: the gap and the travel contradict each other",
        UnknownReason.BumpTravelMissing => "Not known without the bump travel",
        UnknownReason.CamberCurveMissing => "Not known without a camber curve up to the bump stop or the suspension's points",
        UnknownReason.PointsContradict => "Not known, the suspension's points contradict each other",
        UnknownReason.PointsDoNotHold => "Not known, the suspension's points do not hold the wheel",
        UnknownReason.TravelNotReached => "Not known, the suspension's points do not meet up to the bump stop",
        _ => "Not known without the heights of pivot and narrowest place",
    };
}
