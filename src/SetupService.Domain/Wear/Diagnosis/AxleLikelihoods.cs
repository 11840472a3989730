namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>
/// How likely an axle's signs and marks are under a combination of causes. A combination is grown cause by cause: its state holds the log-likelihood, then each
/// sign's mean, variance and log-likelihood, then each mark's log-chance to be missing, so that a cause costs only what it touches.
/// </summary>
internal sealed class AxleLikelihoods
{
    /// <summary>Length of a state.</summary>
    public const int StateLength = 1 + (3 * AxleSigns.SignCount) + AxleSigns.MarkCount;

    private const int Means = 1;
    private const int Variances = Means + AxleSigns.SignCount;
    private const int Logs = Variances + AxleSigns.SignCount;
    private const int Misses = Logs + AxleSigns.SignCount;

    private static readonly Effect[][] _effects = Effects();
    private static readonly (int Mark, double LogMiss)[][] _chances = Chances();
    private static readonly double[] _leaks = Leaks();

    private readonly AxleSigns _signs;
    private readonly double _trackShare;
    private readonly double _ofTrack;
    private readonly double _freedom;

    public AxleLikelihoods(AxleSigns signs, in TrackShare share, double freedom) =>
        (_signs, _trackShare, _ofTrack, _freedom) = (signs, share.Value, share.SeesTrack switch { true => 1, false => 0, null => 0.5 }, freedom);

    /// <summary>The state without any cause.</summary>
    public void Start(Span<double> state)
    {
        state.Clear();
        foreach (var baseline in WearTable.Baselines)
        {
            var sign = (int)baseline.Sign;
            var spreadOfTrack = baseline.TrackSpread * _trackShare;
            state[Means + sign] = baseline.Mean + (_ofTrack * baseline.OfTrack);
            state[Variances + sign] = (baseline.Spread * baseline.Spread) + (spreadOfTrack * spreadOfTrack);
            state[Logs + sign] = OfSign(sign, state[Means + sign], state[Variances + sign]);
            state[0] += state[Logs + sign];
        }

        for (var mark = 0; mark < AxleSigns.MarkCount; mark++)
        {
            state[Misses + mark] = _leaks[mark];
            state[0] += OfMark(mark, _leaks[mark]);
        }
    }

    /// <summary>The state with one cause more.</summary>
    public void Add(ReadOnlySpan<double> state, int cause, Span<double> more)
    {
        state.CopyTo(more);
        foreach (var effect in _effects[cause])
        {
            var sign = effect.Sign;
            var share = ShareOf(effect.By);
            more[Means + sign] += share * effect.Mean;
            more[Variances + sign] += share * share * effect.Variance;
            if (_signs[(WearSign)sign] is null) continue;
            var log = OfSign(sign, more[Means + sign], more[Variances + sign]);
            more[0] += log - more[Logs + sign];
            more[Logs + sign] = log;
        }

        foreach (var (mark, logMiss) in _chances[cause])
        {
            if (_signs[(WearMark)mark] is not null) more[0] += OfMark(mark, more[Misses + mark] + logMiss) - OfMark(mark, more[Misses + mark]);
            more[Misses + mark] += logMiss;
        }
    }

    /// <summary>Only the log-likelihood with one cause more, which nothing is added to any more.</summary>
    public void AddLast(ReadOnlySpan<double> state, int cause, Span<double> more)
    {
        more[0] = state[0];
        foreach (var effect in _effects[cause])
        {
            var sign = effect.Sign;
            if (_signs[(WearSign)sign] is null) continue;
            var share = ShareOf(effect.By);
            more[0] += OfSign(sign, state[Means + sign] + (share * effect.Mean), state[Variances + sign] + (share * share * effect.Variance)) - state[Logs + sign];
        }

        foreach (var (mark, logMiss) in _chances[cause])
        {
            if (_signs[(WearMark)mark] is not null) more[0] += OfMark(mark, state[Misses + mark] + logMiss) - OfMark(mark, state[Misses + mark]);
        }
    }

    /// <summary>The state of a combination.</summary>
    public void Of(int mask, Span<double> state)
    {
        Span<double> before = stackalloc double[StateLength];
        Start(state);
        for (var cause = 0; cause < AxlePosterior.CauseCount; cause++)
        {
            if ((mask & (1 << cause)) == 0) continue;
            state.CopyTo(before);
            Add(before, cause, state);
        }
    }

    /// <summary>Mean and variance of a sign in a state, the reading's own error aside.</summary>
    public static (double Mean, double Variance) Expected(ReadOnlySpan<double> state, WearSign sign) =>
        (state[Means + (int)sign], state[Variances + (int)sign]);

    /// <summary>The chance of a mark in a state.</summary>
    public static double Chance(ReadOnlySpan<double> state, WearMark mark) => 1 - Math.Exp(state[Misses + (int)mark]);

    /// <summary>Log-likelihood of a sign in a state; 0 where it is not known.</summary>
    public static double LogOf(ReadOnlySpan<double> state, WearSign sign) => state[Logs + (int)sign];

    /// <summary>Log-likelihood of a mark in a state; 0 where it is not known.</summary>
    public double LogOf(ReadOnlySpan<double> state, WearMark mark) => OfMark((int)mark, state[Misses + (int)mark]);

    private double ShareOf(UseShare by) => by switch { UseShare.Track => _trackShare, UseShare.Road => 1 - _trackShare, _ => 1 };

    private double OfSign(int sign, double mean, double variance)
    {
        if (_signs[(WearSign)sign] is not { } read) return 0;
        var open = variance + (read.StandardError * read.StandardError);
        var off = read.Value - mean;

        // Student's distribution scaled to this variance.
        var scaled = open * (_freedom - 2) / _freedom;
        return (-0.5 * Math.Log(scaled)) - ((_freedom + 1) / 2 * Math.Log(1 + (off * off / (_freedom * scaled))));
    }

    private double OfMark(int mark, double logMiss) => _signs[(WearMark)mark] switch
    {
        true => Math.Log(1 - Math.Exp(logMiss)),
        false => logMiss,
        null => 0,
    };

    private static Effect[][] Effects()
    {
        var effects = new Effect[AxlePosterior.CauseCount][];
        for (var cause = 0; cause < effects.Length; cause++)
        {
            effects[cause] = [.. WearTable.Shifts.Where(shift => (int)shift.Cause == cause)
                .Select(shift => new Effect((int)shift.Sign, shift.Mean, shift.Spread * shift.Spread, shift.By))];
        }

        return effects;
    }

    private static (int Mark, double LogMiss)[][] Chances()
    {
        var chances = new (int, double)[AxlePosterior.CauseCount][];
        for (var cause = 0; cause < chances.Length; cause++)
        {
            chances[cause] = [.. WearTable.Marks.Where(mark => (int)mark.Cause == cause)
                .Select(mark => ((int)mark.Mark, Math.Log(1 - mark.Probability)))];
        }

        return chances;
    }

    private static double[] Leaks()
    {
        var leaks = new double[AxleSigns.MarkCount];
        foreach (var mark in WearTable.Marks)
        {
            if (mark.Cause == WearCause.Normal) leaks[(int)mark.Mark] = Math.Log(1 - mark.Probability);
        }

        return leaks;
    }

    private readonly record struct Effect(int Sign, double Mean, double Variance, UseShare By);
}
