namespace SetupService.Domain.Handling.Tyres;

/// <summary>How a tyre differs from the example set.</summary>
/// <param name="Slope">Its cornering stiffness by the set's, at the same load.</param>
/// <param name="Peak">Its peak side force by the set's; the slope stays.</param>
/// <param name="Size">By how much it carries more: force F at load N is Size times the set's at N/Size.</param>
public readonly record struct TyreScale(double Slope, double Peak, double Size)
{
    /// <summary>The example tyre itself.</summary>
    public static TyreScale None => new(1, 1, 1);
}
