using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Outlines;

namespace SetupService.Api.Drawings;

/// <summary>What is to be drawn of a check: both fittings' outlines and the lines the car comes to around them.</summary>
internal sealed class CornerView
{
    public CornerView(AxleUnderCheck car, in Fitting candidate, CheckSheet sheet, UnitSystem units)
    {
        Car = car;
        Candidate = candidate;
        Sheet = sheet;
        Units = units;
        CandidateOutlines = FittingOutlines.Of(candidate);
        PresentOutlines = car.Present is { } present ? FittingOutlines.Of(present) : null;
        Hub = HubOutlines.Of(car.Axle.Hub, candidate);
        var lines = new List<RoomLine>(3);
        for (var place = CheckId.InboardClearance; place <= CheckId.RadialClearance; place++)
        {
            if (RoomLine.Of(car, CandidateOutlines.Envelope, sheet, place) is { } line) lines.Add(line);
        }

        Lines = lines;
    }

    public AxleUnderCheck Car { get; }

    public Fitting Candidate { get; }

    public CheckSheet Sheet { get; }

    public UnitSystem Units { get; }

    public FittingOutlines CandidateOutlines { get; }

    public FittingOutlines? PresentOutlines { get; }

    public HubOutlines Hub { get; }

    /// <summary>The lines of the places whose margin is known, in the order of the checks.</summary>
    public IReadOnlyList<RoomLine> Lines { get; }

    public RoomLine? LineAt(CheckId place)
    {
        foreach (var line in Lines)
        {
            if (line.Place == place) return line;
        }

        return null;
    }
}
