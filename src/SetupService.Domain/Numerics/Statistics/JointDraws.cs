using System.Numerics;
using System.Runtime.InteropServices;

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

    // The generator is the one of all that comes nearest to the normal distribution's 95 % quantile for sums of 2 to 45 inputs of like and of falling weight (within 4.5 %, on average 1.2 %).
    private const int Order = 1021;
    private const int Generator = 235;

    // Distance from the middle to an end of a 90 % range, in standard errors: the 95 % quantile of the normal distribution.
    private const double EndErrors = 1.6448536269514722;

    private static readonly double[] Places = MakePlaces();

    // The places in the order of each input, made when that input is first drawn.
    private static readonly double[]?[] InOrder = new double[]?[Count];

    /// <summary>Adds to every draw what one input does.</summary>
    /// <param name="input">Its number among the inputs drawn together, from 0; each number has its own order, the first few the most even together.</param>
    /// <param name="atLower">Its effect at the lower end of its range.</param>
    /// <param name="atUpper">Its effect at the upper end.</param>
    /// <param name="draws">The draws, <see cref="Count"/> of them.</param>
    public static void Add(int input, double atLower, double atUpper, Span<double> draws)
    {
        var places = PlacesOf(input);
        draws = draws[..places.Length];
        var (below, above) = (new Vector<double>(-atLower), new Vector<double>(atUpper));
        var wide = MemoryMarshal.Cast<double, Vector<double>>(draws);
        var widePlaces = MemoryMarshal.Cast<double, Vector<double>>(places)[..wide.Length];
        for (var i = 0; i < wide.Length; i++) wide[i] += widePlaces[i] * Vector.ConditionalSelect(Vector.GreaterThan(widePlaces[i], Vector<double>.Zero), above, below);
        for (var i = wide.Length * Vector<double>.Count; i < draws.Length; i++) draws[i] += places[i] * (places[i] > 0 ? atUpper : -atLower);
    }

    /// <summary>The same of an input that moves two figures at once.</summary>
    /// <param name="input">Its number among the inputs drawn together.</param>
    /// <param name="atLower">Its effects at the lower end of its range.</param>
    /// <param name="atUpper">Its effects at the upper end.</param>
    /// <param name="ones">The draws of the one figure, <see cref="Count"/> of them.</param>
    /// <param name="others">Those of the other.</param>
    public static void Add(int input, (double One, double Other) atLower, (double One, double Other) atUpper, Span<double> ones, Span<double> others)
    {
        var places = PlacesOf(input);
        ones = ones[..places.Length];
        others = others[..places.Length];
        var (below, above) = (new Vector<double>(-atLower.One), new Vector<double>(atUpper.One));
        var (otherBelow, otherAbove) = (new Vector<double>(-atLower.Other), new Vector<double>(atUpper.Other));
        var wide = MemoryMarshal.Cast<double, Vector<double>>(ones);
        var wideOthers = MemoryMarshal.Cast<double, Vector<double>>(others)[..wide.Length];
        var widePlaces = MemoryMarshal.Cast<double, Vector<double>>(places)[..wide.Length];
        for (var i = 0; i < wide.Length; i++)
        {
            var isAbove = Vector.GreaterThan(widePlaces[i], Vector<double>.Zero);
            wide[i] += widePlaces[i] * Vector.ConditionalSelect(isAbove, above, below);
            wideOthers[i] += widePlaces[i] * Vector.ConditionalSelect(isAbove, otherAbove, otherBelow);
        }

        for (var i = wide.Length * Vector<double>.Count; i < ones.Length; i++)
        {
            ones[i] += places[i] * (places[i] > 0 ? atUpper.One : -atLower.One);
            others[i] += places[i] * (places[i] > 0 ? atUpper.Other : -atLower.Other);
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

    private static ReadOnlySpan<double> PlacesOf(int input)
    {
        // The powers of the generator come round again after so many.
        if (InOrder[input % Count] is { } known) return known;
        var step = 1;
        for (var i = 0; i < input; i++) step = step * Generator % Order;
        var places = new double[Count];
        for (var i = 0; i < Count; i++) places[i] = Places[step * (i + 1) % Order];
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
