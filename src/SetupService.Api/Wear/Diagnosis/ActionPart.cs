using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Diagnosis;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>What to do about a cause; amounts are null where physics gives none from what is known.</summary>
public sealed record ActionPart
{
    /// <summary>As an instruction.</summary>
    [Sample("Set the front camber 1.2° more negative (with 90 % between 0.4° and 2.0°).")]
    public required string Text { get; init; }

    /// <summary>Change of the static camber of each wheel; negative = more negative.</summary>
    public required UncertaintyResponse? CamberDeg { get; init; }

    /// <summary>Change of the toe of each wheel; positive = towards toe-in.</summary>
    public required UncertaintyResponse? ToeDeg { get; init; }

    /// <summary>The same as the change of total toe across the rims.</summary>
    public required UncertaintyResponse? TotalToeMm { get; init; }

    /// <summary>Change of the cold pressure.</summary>
    public required UncertaintyResponse? ColdPressureKpa { get; init; }

    internal static ActionPart Of(WearAction action) => new()
    {
        Text = action.Text,
        CamberDeg = Part(action.CamberDeg),
        ToeDeg = Part(action.ToeDeg),
        TotalToeMm = Part(action.TotalToeMm),
        ColdPressureKpa = Part(action.ColdPressureKpa),
    };

    private static UncertaintyResponse? Part(Estimate? estimate) => estimate is { } known ? UncertaintyResponse.Of(known) : null;
}
