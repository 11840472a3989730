namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>
/// How the mean inclination goes with static camber, to either side of where it stands: upright to the road the example tyre's stiffness has a kink, so the two
/// need not be alike.
/// </summary>
/// <param name="Below">Degrees of mean inclination per degree of camber towards more negative.</param>
/// <param name="Above">The same towards less negative.</param>
internal readonly record struct CamberSlopes(double Below, double Above)
{
    /// <summary>The change of camber, degrees, that takes back a change of the mean, degrees: on the way back the wheels lean as the change left them.</summary>
    public double TakingBack(double meanDeg) => -meanDeg / (meanDeg > 0 ? Above : Below);
}
