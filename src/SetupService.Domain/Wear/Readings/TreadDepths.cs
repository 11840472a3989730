namespace SetupService.Domain.Wear.Readings;

/// <summary>Figures of tread depth that the trade and the law give.</summary>
public static class TreadDepths
{
    /// <summary>
    /// The least depth most countries allow on a car, mm (2/32 in); in Europe over the central three quarters of the tread. Sources: UN Regulation
    /// and national law by the reference pages, from memory; local law decides.
    /// </summary>
    public const double LegalLeastMm = 1.6;

    /// <summary>Below this depth, mm, grip in the wet is much less; advice of owners' literature (4/32 in), not law.</summary>
    public const double WetGripMm = 3;

    /// <summary>
    /// Error of one reading of a hand gauge by a person who is not trained to it, one standard deviation, mm. Judgement: a laboratory's single
    /// reading has 0.044 mm; operators added about 1 mm to the range on one groove (ASNT).
    /// </summary>
    public const double UsualGaugeErrorMm = 0.25;
}
