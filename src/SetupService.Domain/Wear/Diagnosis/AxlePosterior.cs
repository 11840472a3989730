using System.Numerics;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>
/// How likely each cause, and each combination of up to three of them, is on one axle: Bayes' rule over all combinations, signs with normal shifts and heavy
/// tails, marks by causes that each may make them. Derivation and limits: docs/methods/wear-diagnosis.
/// </summary>
internal sealed class AxlePosterior
{
    /// <summary>How many causes there are beside <see cref="WearCause.Normal"/>.</summary>
    public const int CauseCount = (int)WearCause.Normal;

    private const int MostCombinations = 1024;

    private static readonly int[] ExclusiveMasks = [.. WearTable.Exclusive.Select(pair => (1 << (int)pair.One) | (1 << (int)pair.Other))];

    private readonly AxleLikelihoods _likelihoods;
    private readonly double[] _logOdds = new double[CauseCount];
    private readonly int[] _possible = new int[CauseCount];
    private readonly int[] _masks = new int[MostCombinations];
    private readonly double[] _shares = new double[MostCombinations];
    private readonly double[] _probabilities = new double[CauseCount];
    private int _possibleCount;
    private int _count;

    private AxlePosterior(AxleLikelihoods likelihoods) => _likelihoods = likelihoods;

    /// <summary>How likely nothing is wrong with the axle.</summary>
    public double NormalProbability => _shares[0];

    /// <summary>How many combinations there are.</summary>
    public int Count => _count;

    /// <summary>What makes the likelihoods.</summary>
    public AxleLikelihoods Likelihoods => _likelihoods;

    /// <summary>Computes it.</summary>
    /// <param name="signs">What is known of the axle.</param>
    /// <param name="setting">Which axle it is, and what it is used for.</param>
    public static AxlePosterior Compute(AxleSigns signs, AxleSetting setting)
    {
        var posterior = new AxlePosterior(new AxleLikelihoods(signs, setting));
        posterior.Admit(setting);
        posterior.Combine();
        return posterior;
    }

    /// <summary>How likely a cause is.</summary>
    public double Probability(WearCause cause) => _probabilities[(int)cause];

    /// <summary>The share of a combination, whose causes are bits.</summary>
    public (int Mask, double Share) Combination(int index) => (_masks[index], _shares[index]);

    /// <summary>The likeliest combination with a cause in it; null where it is not possible here.</summary>
    public int? LikeliestWith(WearCause cause)
    {
        var (best, share) = ((int?)null, -1.0);
        for (var i = 0; i < _count; i++)
        {
            if ((_masks[i] & (1 << (int)cause)) == 0 || _shares[i] <= share) continue;
            (best, share) = (_masks[i], _shares[i]);
        }

        return best;
    }

    /// <summary>The likeliest combination.</summary>
    public int Likeliest()
    {
        var best = 0;
        for (var i = 1; i < _count; i++)
        {
            if (_shares[i] > _shares[best]) best = i;
        }

        return _masks[best];
    }

    private void Admit(AxleSetting setting)
    {
        foreach (var prior in WearTable.Priors)
        {
            if (setting.Prior(prior) is not (> 0 and var chance)) continue;
            _possible[_possibleCount++] = (int)prior.Cause;
            _logOdds[(int)prior.Cause] = Math.Log(chance / (1 - chance));
        }
    }

    private void Combine()
    {
        Span<double> none = stackalloc double[AxleLikelihoods.StateLength];
        Span<double> one = stackalloc double[AxleLikelihoods.StateLength];
        Span<double> two = stackalloc double[AxleLikelihoods.StateLength];
        _likelihoods.Start(none);
        Note(0, none[0]);
        for (var i = 0; i < _possibleCount; i++)
        {
            var first = _possible[i];
            _likelihoods.Add(none, first, one);
            Note(1 << first, one[0] + _logOdds[first]);
            for (var j = i + 1; j < _possibleCount; j++)
            {
                var second = _possible[j];
                var pair = (1 << first) | (1 << second);
                if (Excludes(pair)) continue;
                _likelihoods.Add(one, second, two);
                Note(pair, two[0] + _logOdds[first] + _logOdds[second]);
                for (var k = j + 1; k < _possibleCount; k++)
                {
                    var third = _possible[k];
                    var triple = pair | (1 << third);
                    if (Excludes(triple)) continue;
                    Note(triple, _likelihoods.LogWith(two, third) + _logOdds[first] + _logOdds[second] + _logOdds[third]);
                }
            }
        }

        Normalise();
    }

    private static bool Excludes(int mask)
    {
        foreach (var pair in ExclusiveMasks)
        {
            if ((mask & pair) == pair) return true;
        }

        return false;
    }

    private void Note(int mask, double logShare)
    {
        _masks[_count] = mask;
        _shares[_count++] = logShare;
    }

    private void Normalise()
    {
        var most = double.NegativeInfinity;
        for (var i = 0; i < _count; i++) most = Math.Max(most, _shares[i]);
        var sum = 0.0;
        for (var i = 0; i < _count; i++)
        {
            _shares[i] = Math.Exp(_shares[i] - most);
            sum += _shares[i];
        }

        for (var i = 0; i < _count; i++)
        {
            _shares[i] /= sum;
            for (var mask = _masks[i]; mask != 0; mask &= mask - 1) _probabilities[BitOperations.TrailingZeroCount(mask)] += _shares[i];
        }
    }
}
