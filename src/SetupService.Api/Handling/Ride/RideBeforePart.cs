namespace SetupService.Api.Handling.Ride;

/// <summary>How the car rode before the change.</summary>
public sealed record RideBeforePart
{
    /// <summary>The front axle.</summary>
    public required RideAxlePart Front { get; init; }

    /// <summary>The rear axle.</summary>
    public required RideAxlePart Rear { get; init; }

    /// <summary>Both ends against each other.</summary>
    public required FlatRidePart FlatRide { get; init; }
}
