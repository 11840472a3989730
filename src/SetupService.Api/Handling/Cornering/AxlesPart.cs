namespace SetupService.Api.Handling.Cornering;

/// <summary>Both axles.</summary>
public sealed record AxlesPart
{
    /// <summary>The front axle.</summary>
    public required AxlePart Front { get; init; }

    /// <summary>The rear axle.</summary>
    public required AxlePart Rear { get; init; }
}
