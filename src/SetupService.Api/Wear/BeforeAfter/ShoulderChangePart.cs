using SetupService.Api.Http.Contract;
using SetupService.Domain.Wear.BeforeAfter;

namespace SetupService.Api.Wear.BeforeAfter;

/// <summary>How fast a shoulder wears against the centre: the pattern, whatever the pace.</summary>
public sealed record ShoulderChangePart
{
    /// <summary>Before.</summary>
    public required RatioPart Before { get; init; }

    /// <summary>After; null where the readings after do not tell it.</summary>
    public required RatioPart? After { get; init; }

    /// <summary>Whether a change of it is shown at 90 %; null where a rate is not shown to be above zero.</summary>
    [Sample(false)]
    public required bool? Shown { get; init; }

    internal static ShoulderChangePart? Of(ShoulderChange? change) => change is not { } known ? null : new ShoulderChangePart
    {
        Before = RatioPart.Of(known.Before)!,
        After = RatioPart.Of(known.After),
        Shown = known.IsShown,
    };
}
