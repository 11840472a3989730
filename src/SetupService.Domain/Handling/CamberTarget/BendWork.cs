using SetupService.Domain.Handling.Cornering;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>What the outer wheel does in one kind of corner.</summary>
/// <param name="Corner">The corner.</param>
/// <param name="InclinationAngleDeg">Inclination to the road, degrees.</param>
/// <param name="LoadN">Load, N.</param>
/// <param name="SlipDeg">Slip angle, degrees.</param>
/// <param name="Work">Share of the whole work, load times slip times time, 0 to 1.</param>
public readonly record struct BendWork(BendShare Corner, double InclinationAngleDeg, double LoadN, double SlipDeg, double Work)
{
    /// <summary>The direction of turn.</summary>
    public TurnDirection Turn => Corner.Demand.Turn;
}
