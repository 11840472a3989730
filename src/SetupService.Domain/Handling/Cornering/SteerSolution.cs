namespace SetupService.Domain.Handling.Cornering;

/// <summary>The steer that side forces and path ask for.</summary>
/// <param name="Steer">How much further the wheels must be steered, in units of the input.</param>
/// <param name="MovedN">What of steer, centre and peak, each as a share of the weight, and of side forces was still to come, N.</param>
internal readonly record struct SteerSolution(double Steer, double MovedN);
