using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment.Outlines;

/// <summary>
/// The hub and its brake, above the wheel axis. Exact: the hub's face, the spigot's diameter and the caliper's outline where
/// they are given; flange and shaft are a plausible shape.
/// </summary>
public sealed record HubOutlines
{
    private const double FlangeMm = 12;
    private const double SpigotMm = 9;

    private HubOutlines(Hub hub, in Fitting candidate)
    {
        var envelope = Envelope.Compute(candidate);
        FlangeRadiusMm = DiscSection.PadRadiusMm(envelope, hub.BoltCircle ?? candidate.Wheel.BoltCircle);
        var spigot = DiscSection.BoreRadiusMm(hub.CentreBoreMm ?? candidate.Wheel.CentreBoreMm, FlangeRadiusMm);
        var shaft = 0.75 * spigot;
        InnermostMm = -0.85 * FlangeRadiusMm;
        Flange = new Outline(
            new(SpigotMm, 0),
            OutlineStep.Line(new(SpigotMm, spigot)),
            OutlineStep.Line(new(0, spigot)),
            OutlineStep.Line(new(0, FlangeRadiusMm)),
            OutlineStep.Line(new(-FlangeMm, FlangeRadiusMm)),
            OutlineStep.Line(new(-FlangeMm, 1.5 * shaft)),
            OutlineStep.Curve(new(-FlangeMm - 4, shaft), new(-FlangeMm - 8, shaft), new(-FlangeMm - 16, shaft)),
            OutlineStep.Line(new(Math.Min(InnermostMm, -FlangeMm - 20), shaft)),
            OutlineStep.Line(new(Math.Min(InnermostMm, -FlangeMm - 20), 0)));
        Caliper = ProfileOutline.Create(hub.CaliperProfile, 0, envelope);
    }

    /// <summary>Radius of the flange the wheel is bolted to, mm.</summary>
    public double FlangeRadiusMm { get; }

    /// <summary>Where the shaft is broken off, mm from the hub face.</summary>
    public double InnermostMm { get; }

    /// <summary>Spigot, flange and shaft, from the axis up; closed along the axis.</summary>
    public Outline Flange { get; }

    /// <summary>The caliper's outline as given, a line; null where it is not.</summary>
    public Outline? Caliper { get; }

    /// <summary>The outlines of a hub.</summary>
    public static HubOutlines Create(Hub hub, in Fitting candidate)
    {
        ArgumentNullException.ThrowIfNull(hub);
        return new HubOutlines(hub, candidate);
    }
}
