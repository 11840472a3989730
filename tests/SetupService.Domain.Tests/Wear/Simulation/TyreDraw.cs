using SetupService.Domain.Tyres;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>Draws a kind of tyre.</summary>
internal static class TyreDraw
{
    /// <summary>Work a metre of plain road does, by which a rate in mm per 1000 km becomes one by work.</summary>
    private const double PlainRoadWork = 1.4e-3;

    private static readonly string[] Markings =
        ["195/50R15 82V", "205/55R16 91V", "225/45R17 91W", "235/40R18 95Y", "245/40R18 97Y", "265/35R18 97Y"];

    public static TrueTyre Kind(SeededDraw draw, bool forTrack)
    {
        var marking = Markings[draw.Whole(0, Markings.Length - 1)];
        var read = Read(marking);
        var rateMmPer1000Km = Math.Exp(forTrack ? draw.Between(Math.Log(0.13), Math.Log(0.4)) : draw.Between(Math.Log(0.09), Math.Log(0.25)));
        var fromC = draw.Between(60, 80);
        return new TrueTyre
        {
            Marking = marking,
            WidthMm = read.NominalSectionWidthMm * 0.88,
            RadiusMm = read.RollingCircumferenceMm / (2 * Math.PI),
            RimWidthIn = (read.PermittedRimWidth.MinimumIn + read.PermittedRimWidth.MaximumIn) / 2,
            Friction = forTrack ? draw.Between(0.98, 1.32) : draw.Between(0.9, 1.05),
            SlidingSlipRad = draw.Between(0.14, 0.2),
            CamberTiltPerDeg = draw.Within(0.16, 0.03),
            SideForceCamberDeg = draw.Between(1.1, 2.1),
            BulgePerPressureShare = draw.Within(1.4, 0.25),
            OwnBulge = draw.Within(0, 0.05),
            OuterBias = draw.Within(0.19, 0.06),
            CamberDrumShare = draw.Between(0.15, 0.3),
            CamberSideSlipRadPerDeg = draw.Between(0.0007, 0.0015),
            LeadingEdge = draw.Between(0.15, 0.35),
            WearMmPerM = rateMmPer1000Km * 1e-6 / PlainRoadWork,
            TrackPower = draw.Between(2, 4),
            TrackFactor = draw.Between(1.8, 4),
            NewDepthMm = draw.Between(6.5, 8.5),
            WindowC = (fromC, fromC + draw.Between(25, 40)),
        };
    }

    /// <summary>The tyre on a rim within what it permits, or half an inch to an inch and a half beyond.</summary>
    public static TrueTyre OnRim(TrueTyre tyre, SeededDraw draw, bool isWrong)
    {
        var permitted = Read(tyre.Marking).PermittedRimWidth;
        var middleIn = (permitted.MinimumIn + permitted.MaximumIn) / 2;
        var steps = draw.Whole(1, 3) * 0.5;
        var rimIn = !isWrong ? Math.Clamp(middleIn + (0.5 * draw.Whole(-1, 1)), permitted.MinimumIn, permitted.MaximumIn)
            : draw.Chance(0.5) ? permitted.MinimumIn - steps : permitted.MaximumIn + steps;

        // A narrow rim pulls the sidewalls in and rounds the tread; a wide one flattens or hollows it.
        return tyre with { RimWidthIn = rimIn, OwnBulge = tyre.OwnBulge + ((middleIn - rimIn) * draw.Between(0.08, 0.16)) };
    }

    public static TyreMarking Read(string marking) => TyreMarkingReader.Read(marking).TryGet(out var read, out var fault)
        ? read
        : throw new InvalidOperationException(fault.Message);
}
