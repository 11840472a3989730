using SetupService.Domain.Answers;

namespace SetupService.Domain.Fitment;

/// <summary>
/// The clearance left at one place: the gap measured now, less what the candidate, a camber change and suspension travel use
/// of it, and the tolerances that may use more. All in mm; positive = uses room, negative = adds room.
/// </summary>
public readonly record struct ClearanceBudget
{
    /// <summary>The gap as measured with the present wheel and tyre.</summary>
    public required double GapMm { get; init; }

    /// <summary>What the candidate's envelope uses of it.</summary>
    public required double CandidateMm { get; init; }

    /// <summary>What the change of static camber uses.</summary>
    public double CamberMm { get; init; }

    /// <summary>What suspension travel uses, where the gap was measured at ride height.</summary>
    public double TravelMm { get; init; }

    /// <summary>What is certain to be lost later: a caliper moves as its pads wear.</summary>
    public double AllowanceMm { get; init; }

    /// <summary>Tolerance: the candidate's growth from nominal to the largest in service.</summary>
    public double GrowthMm { get; init; }

    /// <summary>Tolerance: the present tyre, with which the gap was measured, may be smaller than nominal.</summary>
    public double ProductionMm { get; init; }

    /// <summary>Tolerance: the measuring error, with what errors of the suspension's points leave open of what travel uses.</summary>
    public double MeasuringMm { get; init; }

    /// <summary>The margin by the three-way rule.</summary>
    public Margin Margin
    {
        get
        {
            var nominal = GapMm - CandidateMm - CamberMm - TravelMm;
            return new Margin(nominal, nominal - AllowanceMm - RootSumSquareMm, nominal - AllowanceMm - SumMm);
        }
    }

    /// <summary>Root-sum-square of the tolerances.</summary>
    public double RootSumSquareMm =>
        Math.Sqrt((GrowthMm * GrowthMm) + (ProductionMm * ProductionMm) + (MeasuringMm * MeasuringMm));

    /// <summary>Sum of the tolerances.</summary>
    public double SumMm => GrowthMm + ProductionMm + MeasuringMm;

    /// <summary>
    /// Judges a margin: it fails where it probably touches, and is a caution where the worst case leaves less
    /// than <paramref name="minimumMarginMm"/>.
    /// </summary>
    public static CheckStatus Judge(in Margin margin, double minimumMarginMm)
    {
        if (margin.ProbableMm < 0) return CheckStatus.Fail;
        return margin.WorstCaseMm < minimumMarginMm ? CheckStatus.Caution : CheckStatus.Pass;
    }
}
