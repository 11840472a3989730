namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>A brush tyre with even pressure along its contact: force and work by slip.</summary>
internal static class Brush
{
    /// <summary>Force as a share of friction times load, with the sign of the slip.</summary>
    public static double ForceShare(double slip, double slidingSlip)
    {
        var grip = 1 - Math.Min(1, Math.Abs(slip) / slidingSlip);
        return Math.Sign(slip) * (1 - (grip * grip * grip));
    }

    /// <summary>The slip that gives a share of friction times load from 0 to 1.</summary>
    public static double Slip(double forceShare, double slidingSlip) =>
        slidingSlip * (1 - Math.Cbrt(1 - Math.Clamp(forceShare, 0, 0.98)));

    /// <summary>Frictional work per metre and per friction times load: force by slip, so that it goes with the slip's square where nothing slides yet.</summary>
    public static double Work(double slip, double slidingSlip) => Math.Abs(ForceShare(slip, slidingSlip)) * Math.Abs(slip);
}
