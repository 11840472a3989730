using System.Numerics;

namespace SetupService.Domain.Numerics.Statistics;

/// <summary>
/// Joint draws of independent inputs, each with the effect it has at both ends of its 90 % range. The draws are the points of a rank-1 lattice of prime order (a rule of Korobov's kind): every
/// input takes every quantile of the normal distribution once, and for each draw there is the opposite one, so that inputs alike to both sides give a range alike to both sides. An effect grows
/// in proportion to the distance from the middle, on either side by that side's own end: a range that is skewed gives skewed draws. Nothing random: the same in every run.
/// </summary>
public static class JointDraws
{
    /// <summary>How many draws there are.</summary>
    public const int Count = Order - 1;

    private const int Half = Count / 2;

    // The generator is among the few that come nearest to the normal distribution's 95 % quantile for sums of any 2 to 45 of the first 60 inputs, of like, falling and random weight and either
    // sign (within 10 % in 3,000 such sums, on average 2.3 %).
    private const int Order = 1021;
    private const int Generator = 164;

    // Distance from the middle to an end of a 90 % range, in standard errors: the 95 % quantile of the normal distribution.
    private const double EndErrors = 1.6448536269514722;

    private static readonly double[] Places = MakePlaces();

    // The places in the order of each input, of one draw of every pair of opposites, made when that input is first drawn.
    private static readonly double[]?[] InOrder = new double[]?[Count];

    /// <summary>Adds to every draw what one input does.</summary>
    /// <param name="input">Its number among the inputs drawn together, from 0; each number has its own order.</param>
    /// <param name="atLower">Its effect at the lower end of its range.</param>
    /// <param name="atUpper">Its effect at the upper end.</param>
    /// <param name="draws">The draws, <see cref="Count"/> of them.</param>
    public static void Add(int input, double atLower, double atUpper, Span<double> draws)
    {
        var one = draws[..Half];
        var opposite = draws[Half..Count];
        var places = PlacesOf(input).AsSpan(0, Half);
        for (var i = 0; i < places.Length; i++)
        {
            var isAbove = places[i] > 0;
            one[i] += places[i] * (isAbove ? atUpper : -atLower);
            opposite[i] -= places[i] * (isAbove ? -atLower : atUpper);
        }
    }

    /// <summary>Fills the draws of two figures that the same inputs move.</summary>
    /// <param name="one">The one figure by the values used.</param>
    /// <param name="other">The other.</param>
    /// <param name="effects">What each input does to both.</param>
    /// <param name="ones">The draws of the one figure, <see cref="Count"/> of them.</param>
    /// <param name="others">Those of the other.</param>
    public static void Fill(double one, double other, ReadOnlySpan<EffectOnBoth> effects, Span<double> ones, Span<double> others)
    {
        var places = new double[effects.Length][];
        for (var i = 0; i < places.Length; i++) places[i] = PlacesOf(effects[i].Input);

        // The last step reaches back, so that it is whole.
        var wide = Vector<double>.Count;
        for (var from = 0; from < Half; from += wide)
        {
            var at = Math.Min(from, Half - wide);
            var (odd, even, otherOdd, otherEven) = (Vector<double>.Zero, new Vector<double>(one), Vector<double>.Zero, new Vector<double>(other));
            for (var i = 0; i < places.Length; i++)
            {
                ref readonly var effect = ref effects[i];
                var place = new Vector<double>(places[i], at);
                var distance = Vector.Abs(place);
                odd += place * effect.Odd;
                even += distance * effect.Even;
                otherOdd += place * effect.OtherOdd;
                otherEven += distance * effect.OtherEven;
            }

            (even + odd).CopyTo(ones[at..]);
            (even - odd).CopyTo(ones[(Half + at)..]);
            (otherEven + otherOdd).CopyTo(others[at..]);
            (otherEven - otherOdd).CopyTo(others[(Half + at)..]);
        }
    }

    /// <summary>The ends between which nine draws in ten lie; reorders them.</summary>
    public static (double Lower, double Upper) Ends(Span<double> draws)
    {
        const int tail = Count / 20;
        var lower = OrderStatistic.Select(draws, tail);

        // What lies above the lower end stands behind it by now.
        return (lower, OrderStatistic.Select(draws[tail..], Count - 1 - tail - tail));
    }

    private static double[] PlacesOf(int input)
    {
        // The powers of the generator come round again after so many.
        if (InOrder[input % Count] is { } known) return known;
        var step = 1;
        for (var i = 0; i < input; i++) step = step * Generator % Order;
        var places = new double[Half];
        for (var i = 0; i < Half; i++) places[i] = Places[step * (i + 1) % Order];
        return InOrder[input % Count] = places;
    }

    // A place and its opposite are opposite to the last digit.
    private static double[] MakePlaces()
    {
        var places = new double[Order];
        for (var i = 1; i <= Count / 2; i++) (places[i], places[Order - i]) = (NormalDistribution.Quantile(i / (double)Order) / EndErrors, -(NormalDistribution.Quantile(i / (double)Order) / EndErrors));
        return places;
    }
}

/// <summary>What one input does to two figures: a part in proportion to how far it lies from its middle, and a part that is the same to either side.</summary>
/// <param name="Input">Its number among the inputs drawn together, from 0; each number has its own order.</param>
/// <param name="Odd">What changes its sign with the side, of the one figure, at the ends of its range.</param>
/// <param name="Even">What does not.</param>
/// <param name="OtherOdd">What changes its sign with the side, of the other figure.</param>
/// <param name="OtherEven">What does not.</param>
public readonly record struct EffectOnBoth(int Input, double Odd, double Even, double OtherOdd, double OtherEven)
{
    /// <summary>By its effects at both ends of its range.</summary>
    public static EffectOnBoth Create(int input, (double One, double Other) atLower, (double One, double Other) atUpper) =>
        new(input, (atUpper.One - atLower.One) / 2, (atUpper.One + atLower.One) / 2, (atUpper.Other - atLower.Other) / 2, (atUpper.Other + atLower.Other) / 2);
}
