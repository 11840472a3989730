using System.Text.Json.Serialization;

namespace SetupService.Api.Vehicles;

/// <summary>Wheel and steering-axis angles at ride height: the left wheel's, and the right's where they differ.</summary>
public sealed record AlignmentDocument : AlignmentAnglesDocument
{
    /// <summary>The right wheel's angles, only where they differ from the left's.</summary>
    [JsonPropertyOrder(1)]
    public AlignmentAnglesDocument? Right { get; set; }
}
