namespace SetupService.Api.Handling.Cornering;

/// <summary>The four wheels.</summary>
public sealed record WheelsPart
{
    /// <summary>Front left.</summary>
    public required WheelPart FrontLeft { get; init; }

    /// <summary>Front right.</summary>
    public required WheelPart FrontRight { get; init; }

    /// <summary>Rear left.</summary>
    public required WheelPart RearLeft { get; init; }

    /// <summary>Rear right.</summary>
    public required WheelPart RearRight { get; init; }
}
