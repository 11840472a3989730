using SetupService.Domain.Tyres;

namespace SetupService.Domain.Fitment.Words;

/// <summary>The sentences for tyres whose height does not follow from their size.</summary>
internal static class SizeWords
{
    public const string Basis = "No published rule for the dimensions of this size could be read; docs/methods/tyre-marking lists which sizes have none.";

    /// <summary>Whose size it is, and what can be done.</summary>
    public static string Explain(FitmentContext car, in Fitting candidate, CheckId id)
    {
        if (!candidate.Tyre.Marking.HasDimensions) return $"{Size(candidate.Tyre.Marking)}, so {About(id)} is not known. Its maker's table has its diameter, width and rims.";
        var other = id == CheckId.AxleDiameterMatch ? car.OppositeTyre : car.Axle.Tyre;
        var whose = id == CheckId.AxleDiameterMatch ? "the tyre on the other axle" : "the tyre fitted now";
        return other is null ? Basis : $"{Size(other.Marking)}, and it is {whose}, so there is nothing to compare the new tyre with.";
    }

    /// <summary>What is wrong with a size, as the beginning of a sentence.</summary>
    public static string Size(TyreMarking marking) => $"No rule says how high and wide a tyre {marking.StandardText} is";

    private static string About(CheckId id) => id switch
    {
        CheckId.RimWidth => "which rims it may go on",
        CheckId.AxleDiameterMatch or CheckId.OverallDiameter => "how far it rolls in one turn",
        CheckId.ArchCover => "whether the arch covers it",
        _ => "how much room it takes",
    };
}
