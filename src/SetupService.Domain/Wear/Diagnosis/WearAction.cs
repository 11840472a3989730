using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>What to do about a cause, with the amount where physics gives one.</summary>
/// <param name="Text">As an instruction.</param>
public sealed record WearAction(string Text)
{
    /// <summary>Change of the static camber of each wheel, degrees; negative = more negative.</summary>
    public Estimate? CamberDeg { get; init; }

    /// <summary>Change of the toe of each wheel, degrees; positive = towards toe-in.</summary>
    public Estimate? ToeDeg { get; init; }

    /// <summary>The same as the change of total toe across the rim's diameter, mm.</summary>
    public Estimate? TotalToeMm { get; init; }

    /// <summary>Change of the cold pressure, kPa.</summary>
    public Estimate? ColdPressureKpa { get; init; }
}
