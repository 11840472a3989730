using SetupService.Api.Http.Contract;
using SetupService.Domain.Answers;

namespace SetupService.Api.Http.Parts;

/// <summary>A warning that belongs to the answer because acting on it can hurt somebody.</summary>
public sealed record CautionPart
{
    /// <summary>Stable word that names the caution; more may come.</summary>
    [Sample("wheelFasteners")]
    public required string Code { get; init; }

    /// <summary>The caution as a sentence.</summary>
    [Sample("Tighten crosswise with a calibrated wrench to the vehicle maker's torque.")]
    public required string Text { get; init; }

    /// <summary>The parts of a list of cautions.</summary>
    internal static CautionPart[] Of(IReadOnlyList<Caution> cautions)
    {
        var parts = new CautionPart[cautions.Count];
        for (var i = 0; i < parts.Length; i++)
            parts[i] = new CautionPart { Code = cautions[i].Code, Text = cautions[i].Text };
        return parts;
    }
}
