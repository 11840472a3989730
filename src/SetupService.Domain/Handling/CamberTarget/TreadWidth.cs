using SetupService.Domain.Handling.Inputs;
using SetupService.Domain.Tyres;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>How wide the tread of a tyre stands on the road, by its design section width.</summary>
public static class TreadWidth
{
    /// <summary>The width, mm.</summary>
    public static TypicalValue Mm(Tyre tyre)
    {
        ArgumentNullException.ThrowIfNull(tyre);
        var section = tyre.Marking.Dimensions.DesignSectionWidthMm;
        return new(0.85 * section, 0.78 * section, 0.92 * section, "common practice, no source: the tread is some 0.85 of the section width");
    }
}
