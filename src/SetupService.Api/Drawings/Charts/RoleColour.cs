using OxyPlot;

namespace SetupService.Api.Drawings.Charts;

/// <summary>The plotting library knows colours only: an ink's role rides in the red part of one, how dense it is in its alpha.</summary>
internal static class RoleColour
{
    private const byte Opaque = 255;

    public static OxyColor Of(InkRole role, double opacity = 1) => OxyColor.FromArgb((byte)Math.Round(opacity * Opaque), (byte)role, 0, 0);

    public static InkRole Role(OxyColor colour) => (InkRole)colour.R;

    public static double Opacity(OxyColor colour) => Math.Round(colour.A / (double)Opaque, 2);
}
