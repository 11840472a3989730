using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>One observation for or against a cause, beside the other causes most likely at work.</summary>
/// <param name="Axle">The axle it was read of.</param>
/// <param name="Sign">The sign it is; null where it is a mark.</param>
/// <param name="Mark">The mark it is; null where it is a sign.</param>
/// <param name="Weight">Common logarithm of how many times as likely the observation is with the cause as without: positive speaks for it.</param>
public readonly record struct Evidence(CarAxle Axle, WearSign? Sign, WearMark? Mark, double Weight);
