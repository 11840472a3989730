using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Diagnosis.Advice;

/// <summary>What to do now: one step, where it leads, what to read before the next, and where it is heading.</summary>
/// <param name="Text">As an instruction.</param>
public sealed record WearAction(string Text)
{
    /// <summary>The whole change it is heading for, of the static camber of each wheel, degrees; negative = more negative.</summary>
    public Estimate? CamberDeg { get; init; }

    /// <summary>The whole change of the toe of each wheel, degrees; positive = towards toe-in.</summary>
    public Estimate? ToeDeg { get; init; }

    /// <summary>The same as the change of total toe across the rim's diameter, mm.</summary>
    public Estimate? TotalToeMm { get; init; }

    /// <summary>The whole change of the cold pressure, kPa.</summary>
    public Estimate? ColdPressureKpa { get; init; }

    /// <summary>The change to make now, of the angle that is changed (camber, or toe of each wheel), degrees; 0.1° as a gauge shows it for camber, 0.01° for toe.</summary>
    public double? StepDeg { get; init; }

    /// <summary>The change of total toe to make now, mm.</summary>
    public double? StepMm { get; init; }

    /// <summary>The change of the cold pressure to make now, kPa.</summary>
    public double? StepKpa { get; init; }

    /// <summary>The angle the step leads to, degrees; null where the present one is not known or differs from left to right.</summary>
    public double? SettingDeg { get; init; }

    /// <summary>The total toe the step leads to, mm.</summary>
    public double? SettingMm { get; init; }

    /// <summary>The cold pressure the step leads to, kPa.</summary>
    public double? SettingKpa { get; init; }

    /// <summary>What to read before the next step; null where there is no step.</summary>
    public string? Until { get; init; }

    /// <summary>What cambers on the way do: as set now, after the step, where it is heading. Empty for other actions.</summary>
    public IReadOnlyList<CamberTrade> TradeOff { get; init; } = [];
}

/// <summary>What a static camber does, against the present one.</summary>
/// <param name="ChangeDeg">Change of the static camber, degrees; negative = more negative.</param>
/// <param name="StaticCamberDeg">The camber, degrees; null where the present one is not known.</param>
/// <param name="TreadLifeFactor">By what the life of the axle's fastest-worn place is multiplied at the same use; null where no tread tells.</param>
/// <param name="GripChangePct">Change of the axle's grip in the bends of the track, percent; null where no cornering model tells.</param>
/// <param name="BrakingChangePct">Change of the most its tyres can brake with on the straight, percent; null where car or tyre is not known.</param>
public readonly record struct CamberTrade(double ChangeDeg, double? StaticCamberDeg, double? TreadLifeFactor, Uncertainty? GripChangePct, Uncertainty? BrakingChangePct);
