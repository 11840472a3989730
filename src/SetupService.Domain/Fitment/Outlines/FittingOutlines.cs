namespace SetupService.Domain.Fitment.Outlines;

/// <summary>The outlines of a wheel and tyre at the hub, above the wheel axis; below it they are the mirror image.</summary>
public sealed record FittingOutlines
{
    private FittingOutlines(in Fitting fitting)
    {
        var envelope = Envelope.Compute(fitting);
        var rimWidthMm = fitting.Wheel.RimWidthMm;
        Envelope = envelope;
        Tyre = TyreSection.Shell(envelope, rimWidthMm);
        TyreBody = TyreSection.Body(envelope, rimWidthMm);
        Silhouette = TyreSection.Silhouette(envelope, rimWidthMm);
        Grooves = TyreSection.Grooves(envelope, rimWidthMm);
        Rim = RimSection.Metal(envelope, rimWidthMm);
        RimTyreSide = RimSection.TyreSide(envelope, rimWidthMm);
        Disc = DiscSection.Disc(fitting, envelope);
        Spacer = DiscSection.Spacer(fitting, envelope);
        InnerProfile = ProfileOutline.Create(fitting.Wheel.InnerProfile, fitting.Wheel.SpacerMm, envelope);
        EdgeHeightMm = envelope.TyreWidthMm >= envelope.OverFlangesMm ? envelope.WidestRadiusMm : RimSection.FlangeRadiusMm(envelope);
    }

    /// <summary>The outer dimensions of wheel and tyre.</summary>
    public Envelope Envelope { get; }

    /// <summary>The tyre's section, closed.</summary>
    public Outline Tyre { get; }

    /// <summary>The tyre's section with the air in it, closed.</summary>
    public Outline TyreBody { get; }

    /// <summary>The uncut tyre seen from behind, from the axis up, closed.</summary>
    public Outline Silhouette { get; }

    /// <summary>Grooves of the tread, each a line.</summary>
    public IReadOnlyList<Outline> Grooves { get; }

    /// <summary>The rim's section, closed.</summary>
    public Outline Rim { get; }

    /// <summary>The rim's side towards the tyre, a line from one flange's edge to the other's.</summary>
    public Outline RimTyreSide { get; }

    /// <summary>The disc's section, closed. It may reach past the edges of tyre and rim where the offset is extreme.</summary>
    public Outline Disc { get; }

    /// <summary>The spacer's section, closed; null without one.</summary>
    public Outline? Spacer { get; }

    /// <summary>The inside of the wheel as given, a line; null where it is not.</summary>
    public Outline? InnerProfile { get; }

    /// <summary>Height of the innermost and outermost edge above the axis, mm: the sidewall's widest place or the flange.</summary>
    public double EdgeHeightMm { get; }

    /// <summary>How far tyre and rim reach; exactly the envelope's edges and radius.</summary>
    public OutlineExtremes Extremes => Tyre.Extremes.With(Rim.Extremes).With(Tyre.BelowAxis().Extremes);

    /// <summary>The outlines of a wheel and tyre.</summary>
    public static FittingOutlines Create(in Fitting fitting) => new(fitting);
}
