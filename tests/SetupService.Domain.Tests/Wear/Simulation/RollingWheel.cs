namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>How a wheel rolls in one state.</summary>
/// <param name="LoadShare">Load against the static one.</param>
/// <param name="Friction">Friction at that load.</param>
/// <param name="SideSlip">Side slip, rad, positive = the road pushes the tyre towards the car's centre, as with toe-in or on the outside of a turn.</param>
/// <param name="LongSlip">Slip along the way, without sign.</param>
/// <param name="NegativeCamberDeg">Negative camber to the road, degrees.</param>
/// <param name="ExtraBulge">Bulge of the middle by fast spinning.</param>
internal readonly record struct RollingWheel(double LoadShare, double Friction, double SideSlip, double LongSlip, double NegativeCamberDeg, double ExtraBulge);
