namespace SetupService.Domain.Suspension.Search;

/// <summary>
/// What turns the wheel against its strut or its hub, as far as it is known without points: a knuckle eccentric turns it by the angle whose sine
/// is the throw by the distance of the bolts, a hub shim by its own angle. The strut's own small lean is left out.
/// </summary>
/// <param name="CamberDeg">Change of camber, degrees.</param>
/// <param name="ToeDeg">Change of toe by shims, degrees.</param>
/// <param name="ThrowMm">Throw of the eccentric, mm; it moves the tie rod's joint, so toe is then not known.</param>
internal readonly record struct UprightTurn(double CamberDeg, double ToeDeg, double ThrowMm)
{
    /// <summary>Whether toe is still known.</summary>
    public bool LeavesToeKnown => ThrowMm == 0;

    /// <summary>Whether the adjuster is one of these.</summary>
    public static bool Has(Adjuster adjuster) => adjuster is Adjuster.KnuckleEccentric or Adjuster.HubShimCamber or Adjuster.HubShimToe;

    /// <summary>The turn with one more adjustment, which must be one of these.</summary>
    public UprightTurn With(in Adjustment one) => one.By switch
    {
        Adjuster.HubShimCamber => this with { CamberDeg = CamberDeg + one.Amount },
        Adjuster.HubShimToe => this with { ToeDeg = ToeDeg + one.Amount },
        _ => this with
        {
            CamberDeg = CamberDeg - double.RadiansToDegrees(Math.Asin(Math.Clamp(one.Amount / one.BoltSpacingMm, -1, 1))),
            ThrowMm = ThrowMm + one.Amount,
        },
    };
}
