namespace SetupService.Domain.Vehicles;

/// <summary>How far a wheel gives under side force towards the car's middle; what is not known is null.</summary>
public sealed record Compliance
{
    /// <summary>Change of camber, degrees per kN; positive = the wheel leans out.</summary>
    public double? CamberDegPerKn { get; init; }

    /// <summary>Change of toe, degrees per kN; positive = the wheel toes out.</summary>
    public double? ToeDegPerKn { get; init; }
}
