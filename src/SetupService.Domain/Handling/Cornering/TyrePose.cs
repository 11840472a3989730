namespace SetupService.Domain.Handling.Cornering;

/// <summary>How a tyre stands on the road: what its side force and slip follow from.</summary>
/// <param name="LoadN">Load, N; not positive where it is off the road.</param>
/// <param name="InclinationAngleDeg">Inclination to the road, degrees.</param>
/// <param name="HeadingDeg">Heading against the body, degrees, positive = into the turn, without the give.</param>
internal readonly record struct TyrePose(double LoadN, double InclinationAngleDeg, double HeadingDeg);
