using SetupService.Domain.Tyres;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Fitment;

/// <summary>A wheel with a tyre on it.</summary>
/// <param name="Wheel">The wheel, with the spacer behind it.</param>
/// <param name="Tyre">The tyre on the wheel.</param>
public readonly record struct Fitting(Wheel Wheel, Tyre Tyre);

/// <summary>
/// The outer dimensions of a wheel and tyre at the hub. Stations are in mm from the hub face along the wheel axis,
/// outboard positive. An edge is whichever reaches further: the tyre's section on this rim with its rim protectors, or the
/// rim over its flanges.
/// </summary>
public readonly record struct Envelope
{
    private Envelope(in Fitting fitting)
    {
        var dimensions = fitting.Tyre.Marking.Dimensions;
        var overFlangesMm = fitting.Wheel.OverFlangesMm;
        var protectorsMm = 2 * (fitting.Tyre.RimProtectorMm ?? 0);
        SectionWidthMm = dimensions.SectionWidthOnRimMm(fitting.Wheel.RimWidthIn);
        TyreWidthMm = SectionWidthMm + protectorsMm;
        OverFlangesMm = overFlangesMm;
        HalfWidthMm = Math.Max(TyreWidthMm, overFlangesMm) / 2;
        CentrePlaneMm = fitting.Wheel.CentrePlaneMm;
        OverallDiameterMm = dimensions.OverallDiameterMm;
        RimSeatRadiusMm = dimensions.RimDiameterMm / 2.0;
        RollingCircumferenceMm = fitting.Tyre.Marking.RollingCircumferenceMm;

        var widestMm = Math.Max(dimensions.MaximumSectionWidthOnRimMm(fitting.Wheel.RimWidthIn) + protectorsMm, overFlangesMm);
        var narrowestMm = Math.Max((SectionWidthMm * (1 - ProductionWidthShare)) + protectorsMm, overFlangesMm);
        WidthGrowthMm = (widestMm / 2) - HalfWidthMm;
        RadiusGrowthMm = (dimensions.MaximumOverallDiameterMm - dimensions.OverallDiameterMm) / 2;
        WidthShortfallMm = HalfWidthMm - (narrowestMm / 2);
        RadiusShortfallMm = (dimensions.OverallDiameterMm - dimensions.MinimumOverallDiameterMm) / 2;
    }

    /// <summary>
    /// Share by which a new tyre may be narrower than its design section width: 1 %, common practice, no source
    /// (the standard sets no lower bound).
    /// </summary>
    public const double ProductionWidthShare = 0.01;

    /// <summary>The tyre's section width on this rim, mm.</summary>
    public double SectionWidthMm { get; }

    /// <summary>The tyre's width with its rim protectors, mm.</summary>
    public double TyreWidthMm { get; }

    /// <summary>The rim over its flanges, mm.</summary>
    public double OverFlangesMm { get; }

    /// <summary>Half of the wider of tyre and rim over flanges, mm.</summary>
    public double HalfWidthMm { get; }

    /// <summary>The rim's centre plane, mm from the hub face: spacer less offset.</summary>
    public double CentrePlaneMm { get; }

    /// <summary>The tyre's overall diameter, unloaded, mm.</summary>
    public double OverallDiameterMm { get; }

    /// <summary>Radius of the tyre's own bead seat, mm.</summary>
    public double RimSeatRadiusMm { get; }

    /// <summary>Distance rolled in one turn, mm.</summary>
    public double RollingCircumferenceMm { get; }

    /// <summary>By how much each edge may reach further in service than nominal, mm, at least 0.</summary>
    public double WidthGrowthMm { get; }

    /// <summary>By how much the radius may be greater in service than nominal, mm, at least 0.</summary>
    public double RadiusGrowthMm { get; }

    /// <summary>By how much each edge of a new tyre may fall short of nominal, mm, at least 0.</summary>
    public double WidthShortfallMm { get; }

    /// <summary>By how much the radius of a new tyre may fall short of nominal, mm, at least 0.</summary>
    public double RadiusShortfallMm { get; }

    /// <summary>The outermost edge, mm from the hub face.</summary>
    public double OutboardMm => CentrePlaneMm + HalfWidthMm;

    /// <summary>The innermost edge, mm from the hub face; negative = inboard of it.</summary>
    public double InboardMm => CentrePlaneMm - HalfWidthMm;

    /// <summary>Half the overall diameter, mm.</summary>
    public double RadiusMm => OverallDiameterMm / 2;

    /// <summary>Radius at which the sidewall is widest, taken as halfway between bead seat and tread, mm.</summary>
    public double WidestRadiusMm => (RimSeatRadiusMm + RadiusMm) / 2;

    /// <summary>The envelope of a wheel and tyre.</summary>
    public static Envelope Compute(in Fitting fitting) => new(in fitting);
}
