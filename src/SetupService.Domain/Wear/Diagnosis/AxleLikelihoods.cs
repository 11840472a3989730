namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>
/// How likely an axle's signs and marks are under a combination of causes. A combination is grown cause by cause: its state holds the log-likelihood, then each
/// sign's mean, variance and log-likelihood, then each mark's chance to be missing, and last that the outer edge was not dragged, so that a cause costs only what it touches.
/// More of a sign never speaks against a cause that moves it that way: see <see cref="Inverse"/>.
/// </summary>
internal sealed class AxleLikelihoods
{
    /// <summary>Length of a state.</summary>
    public const int StateLength = 1 + (3 * AxleSigns.SignCount) + AxleSigns.MarkCount + 1;

    // Degrees of freedom of the signs' spread: readings and cars lie further out than a normal distribution has it.
    private const double Freedom = 7;

    // One worn shoulder takes the mean of both with it: by so much of the shoulders' difference the centre looks less worn, and so uncertain that is. A tread worn evenly askew has
    // none of it, one worn at one edge alone a half; judgement, held to simulated cars.
    private const double CrownByShoulder = 0.15;
    private const double CrownByShoulderSpread = 0.2;

    // A shoulder worn on one side of the car alone wears that tyre faster, and tells nothing of its rubber: by so much of the difference is the mean wear of both open; judgement.
    private const double SideByShoulderSpread = 0.3;

    // A history can be misremembered: by how many times as often as the table has it a tyre is told to have been moved and was not, by the share of its wear elsewhere: of three quarters
    // about as often, of a half twice, of all of it less than half as often; judgement.
    private const double LeastLeakOfMoved = 0.45;
    private const double LeakOfMoved = 6;

    private const int Means = 1;
    private const int Variances = Means + AxleSigns.SignCount;
    private const int Logs = Variances + AxleSigns.SignCount;
    private const int Misses = Logs + AxleSigns.SignCount;

    // Behind the marks, what makes two of them and is not read itself.
    private const int Edge = CauseEffects.Edge;
    private const int Grains = (int)WearMark.ShoulderGraining;
    private const int Past = (int)WearMark.WornPastShoulder;

    private static readonly MarkEffect[] LeakedMarks = CauseEffects.OnMarksWithoutCause;

    private readonly double[] _values = new double[AxleSigns.SignCount];
    private readonly double[] _errors = new double[AxleSigns.SignCount];
    private readonly double[] _baseMeans = new double[AxleSigns.SignCount];
    private readonly double[] _baseVariances = new double[AxleSigns.SignCount];
    private readonly double[] _baseInverses = new double[AxleSigns.SignCount];
    private readonly double[] _leastInverses = new double[AxleSigns.SignCount];
    private readonly bool?[] _marks = new bool?[AxleSigns.MarkCount];
    private readonly SignEffect[][] _allEffects = new SignEffect[AxlePosterior.CauseCount][];
    private readonly SignEffect[][] _seenEffects = new SignEffect[AxlePosterior.CauseCount][];
    private readonly MarkEffect[][] _allChances = new MarkEffect[AxlePosterior.CauseCount][];
    private readonly MarkEffect[][] _seenChances = new MarkEffect[AxlePosterior.CauseCount][];
    private readonly double _dragged;
    private readonly EdgeMarks _edge;
    private readonly double _trackShare;
    private readonly double _leakOfMoved;

    public AxleLikelihoods(AxleSigns signs, AxleSetting setting)
    {
        _trackShare = setting.Track.Value;
        _dragged = EdgeMarks.DraggedShare(setting.Track.SeesTrack);

        _leakOfMoved = signs.ElsewhereShare is { } elsewhere ? Math.Max(LeastLeakOfMoved, LeakOfMoved * (1 - elsewhere) * Math.Sqrt(1 - elsewhere)) : 1;
        for (var sign = 0; sign < AxleSigns.SignCount; sign++)
        {
            var read = signs[(WearSign)sign];
            _values[sign] = read?.Value ?? double.NaN;
            _errors[sign] = read is { } known ? known.StandardError * known.StandardError : 0;
        }

        TellCrownWithShoulder();
        foreach (var baseline in WearTable.Baselines)
        {
            var sign = (int)baseline.Sign;
            (_baseMeans[sign], _baseVariances[sign]) = setting.Baseline(baseline, signs.Other?[baseline.Sign]);
            _leastInverses[sign] = 1 / (baseline.MostTimes * baseline.MostTimes);
            if (IsRead(sign)) _baseInverses[sign] = Raw(sign, _values[sign], _baseMeans[sign], _baseVariances[sign]);
        }

        for (var mark = 0; mark < AxleSigns.MarkCount; mark++) _marks[mark] = signs[(WearMark)mark];
        _edge = new(_marks[Grains], _marks[Past]);
        for (var cause = 0; cause < AxlePosterior.CauseCount; cause++)
        {
            _allEffects[cause] = CauseEffects.OnSigns(cause, _trackShare);
            if (cause == (int)WearCause.SideDifference && IsRead((int)WearSign.CamberDifference)) TellAcrossByCamber(_allEffects[cause]);
            _seenEffects[cause] = Array.FindAll(_allEffects[cause], effect => IsRead(effect.Sign));
            _allChances[cause] = Array.ConvertAll(CauseEffects.OnMarks(cause), chance => chance.Mark == Edge ? chance with { Miss = 1 - (_dragged * (1 - chance.Miss)) } : chance);
            _seenChances[cause] = Array.FindAll(_allChances[cause], chance => chance.Mark == Edge ? _edge.IsSeen : _marks[chance.Mark] is not null);
        }
    }

    /// <summary>How many times as likely a sign makes a cause at most where both shoulders work more than the centre and nobody read a pressure: hard cornering does that too.</summary>
    private double MostTimesOfCornering(int sign)
    {
        if (IsRead((int)WearSign.PressureDeviation) || !(_values[sign] < _baseMeans[sign])) return double.PositiveInfinity;
        return (WearSign)sign switch
        {
            WearSign.CrownDifference => WearTable.MostTimesWithoutPressure,
            WearSign.CrownTemperatureDifference => WearTable.MostTimesOfHeatWithoutPressure,
            _ => double.PositiveInfinity,
        };
    }

    /// <summary>The state without any cause.</summary>
    public void Start(Span<double> state)
    {
        state.Clear();
        for (var sign = 0; sign < AxleSigns.SignCount; sign++)
        {
            state[Means + sign] = _baseMeans[sign];
            state[Variances + sign] = _baseVariances[sign];
            state[Logs + sign] = IsRead(sign) ? -0.5 * Math.Log(_baseInverses[sign]) : 0;
            state[0] += state[Logs + sign];
        }

        state.Slice(Misses, AxleSigns.MarkCount + 1).Fill(1);
        foreach (var leak in LeakedMarks) state[Misses + leak.Mark] *= leak.Mark == Edge ? 1 - (_dragged * (1 - leak.Miss)) : leak.Miss;
        state[Misses + (int)WearMark.MovedOrTurned] = 1 - (_leakOfMoved * (1 - state[Misses + (int)WearMark.MovedOrTurned]));
        for (var mark = 0; mark < AxleSigns.MarkCount; mark++)
        {
            if (!EdgeMarks.Holds(mark)) state[0] += MarkLogLikelihood(mark, state[Misses + mark]);
        }

        state[0] += Math.Log(EdgeLikelihood(state));
    }

    /// <summary>The state with one cause more, as far as signs and marks were read.</summary>
    public void Add(ReadOnlySpan<double> state, int cause, Span<double> more) => Add(state, _seenEffects[cause], _seenChances[cause], more);

    /// <summary>Only the log-likelihood with one cause more, which nothing is added to any more: what it touches is multiplied up, for one logarithm.</summary>
    public double LogWith(ReadOnlySpan<double> state, int cause)
    {
        var (logs, signs, marks, edge) = (0.0, 1.0, 1.0, (Grains: 1.0, Past: 1.0, Missed: 1.0));
        foreach (var effect in _seenEffects[cause])
        {
            signs *= Inverse(effect.Sign, state[Means + effect.Sign] + effect.Mean, state[Variances + effect.Sign] + effect.Variance);
            logs += state[Logs + effect.Sign];
        }

        foreach (var chance in _seenChances[cause])
        {
            var miss = state[Misses + chance.Mark];
            if (chance.Mark == Grains) edge.Grains = chance.Miss;
            else if (chance.Mark == Past) edge.Past = chance.Miss;
            else if (chance.Mark == Edge) edge.Missed = chance.Miss;
            else marks *= _marks[chance.Mark] is true ? (1 - (miss * chance.Miss)) / (1 - miss) : chance.Miss;
        }

        if (edge != (1, 1, 1))
        {
            var (grains, past, missed) = (state[Misses + Grains], state[Misses + Past], state[Misses + Edge]);
            marks *= _edge.Likelihood(grains * edge.Grains, past * edge.Past, missed * edge.Missed) / _edge.Likelihood(grains, past, missed);
        }

        // A reading so far out that the product overflows makes the combination impossible.
        return state[0] - logs - (0.5 * Math.Log(signs / (marks * marks)));
    }

    /// <summary>The state of a combination, with all signs and marks, read or not.</summary>
    public void Compute(int mask, Span<double> state)
    {
        Span<double> before = stackalloc double[StateLength];
        Start(state);
        for (var cause = 0; cause < AxlePosterior.CauseCount; cause++)
        {
            if ((mask & (1 << cause)) == 0) continue;
            state.CopyTo(before);
            Add(before, _allEffects[cause], _allChances[cause], state);
        }
    }

    /// <summary>Mean and variance of a sign in a state, the reading's own error aside.</summary>
    public static (double Mean, double Variance) Expected(ReadOnlySpan<double> state, WearSign sign) =>
        (state[Means + (int)sign], state[Variances + (int)sign]);

    /// <summary>The chance of a mark in a state.</summary>
    public static double Chance(ReadOnlySpan<double> state, WearMark mark) =>
        1 - (state[Misses + (int)mark] * (1 - (EdgeMarks.Shows((int)mark) * (1 - state[Misses + Edge]))));

    /// <summary>Log-likelihood of a sign in a state; 0 where it is not known.</summary>
    public static double LogLikelihood(ReadOnlySpan<double> state, WearSign sign) => state[Logs + (int)sign];

    /// <summary>Log-likelihood of a mark in a state; 0 where it is not known. Of two that one dragged edge makes each has half of what both tell together.</summary>
    public double LogLikelihood(ReadOnlySpan<double> state, WearMark mark)
    {
        var alone = MarkLogLikelihood((int)mark, 1 - Chance(state, mark));
        if (!EdgeMarks.Holds((int)mark) || _marks[(int)mark] is null) return alone;
        var other = (int)mark == Grains ? WearMark.WornPastShoulder : WearMark.ShoulderGraining;
        var both = Math.Log(EdgeLikelihood(state));
        return (alone + both - MarkLogLikelihood((int)other, 1 - Chance(state, other))) / 2;
    }

    private void Add(ReadOnlySpan<double> state, SignEffect[] effects, MarkEffect[] chances, Span<double> more)
    {
        state.CopyTo(more);
        foreach (var effect in effects)
        {
            var sign = effect.Sign;
            more[Means + sign] += effect.Mean;
            more[Variances + sign] += effect.Variance;
            if (!IsRead(sign)) continue;
            var log = SignLogLikelihood(sign, more[Means + sign], more[Variances + sign]);
            more[0] += log - more[Logs + sign];
            more[Logs + sign] = log;
        }

        var edge = EdgeLikelihood(state);
        foreach (var chance in chances)
        {
            var miss = more[Misses + chance.Mark];
            if (chance.Mark != Edge && !EdgeMarks.Holds(chance.Mark)) more[0] += MarkLogLikelihood(chance.Mark, miss * chance.Miss) - MarkLogLikelihood(chance.Mark, miss);
            more[Misses + chance.Mark] = miss * chance.Miss;
        }

        var edgeWith = EdgeLikelihood(more);
        if (edgeWith != edge) more[0] += Math.Log(edgeWith / edge);
    }

    private bool IsRead(int sign) => !double.IsNaN(_values[sign]);

    private double SignLogLikelihood(int sign, double mean, double variance) => -0.5 * Math.Log(Inverse(sign, mean, variance));

    /// <summary>
    /// One by the square of a sign's density, but for a constant: Student's distribution scaled to a variance. Against the density without any cause it is held where it
    /// would turn: further out than that a reading is as much for the cause as there, and on the other side as much against it. The two turning points are the roots of
    /// δu² − (7(s₁ − s₀) + δ²)u − 7s₀δ = 0, u counted from the mean without a cause.
    /// </summary>
    private double Inverse(int sign, double mean, double variance)
    {
        var shift = mean - _baseMeans[sign];
        if (shift == 0) return Saturate(sign, Raw(sign, _values[sign], mean, variance) / _baseInverses[sign]);
        var (without, with) = (Freedom * Scaled(sign, _baseVariances[sign]), Freedom * Scaled(sign, variance));
        var half = with - without + (shift * shift);
        var furthest = (half + Math.Sqrt((half * half) + (4 * without * shift * shift))) / (2 * shift);
        var nearest = -without / furthest;
        var held = _baseMeans[sign] + Math.Clamp(_values[sign] - _baseMeans[sign], Math.Min(nearest, furthest), Math.Max(nearest, furthest));
        return Saturate(sign, Raw(sign, held, mean, variance) / Raw(sign, held, _baseMeans[sign], _baseVariances[sign]));
    }

    /// <summary>
    /// The same with as many times as likely, or as unlikely, as the sign may make anything: a reading can be of another day, place or tyre than it is told to be. Both shoulders worn
    /// while nobody read a pressure speak for a cause that far at most. What comes out rises where the argument rises.
    /// </summary>
    private double Saturate(int sign, double ratio)
    {
        if (ratio < 1 && MostTimesOfCornering(sign) is var most) ratio += (1 - ratio) / (most * most);
        return _baseInverses[sign] * ((ratio + _leastInverses[sign]) / (1 + (_leastInverses[sign] * ratio)));
    }

    /// <summary>−½ ln s − (n + 1)/2 ln(1 + x²/(n s)), whose two logarithms are one for n = 7.</summary>
    private double Raw(int sign, double value, double mean, double variance)
    {
        var off = value - mean;
        var scaled = Scaled(sign, variance);
        var tail = 1 + (off * off / (Freedom * scaled));
        var fourth = tail * tail * tail * tail;
        return scaled * fourth * fourth;
    }

    private double Scaled(int sign, double variance) => (variance + _errors[sign]) * ((Freedom - 2) / Freedom);

    /// <summary>
    /// The shoulders' difference of a wheel of the axle, whichever way: half of that across the axle where its wheels are worn to opposite sides, as by a track that turns one way.
    /// </summary>
    private void TellCrownWithShoulder()
    {
        var mean = _values[(int)WearSign.ShoulderDifference];
        if (double.IsNaN(mean)) return;
        var across = IsRead((int)WearSign.ShoulderDifferenceAcrossAxle) ? _values[(int)WearSign.ShoulderDifferenceAcrossAxle] : 0;
        var ofWheel = Math.Max(Math.Abs(mean), Math.Abs(across) / 2);
        var open = CrownByShoulderSpread * CrownByShoulderSpread;
        _values[(int)WearSign.CrownDifference] += CrownByShoulder * ofWheel;
        _errors[(int)WearSign.CrownDifference] += open * ofWheel * ofWheel;
        _errors[(int)WearSign.CrownDifferenceAcrossAxle] += open * across * across;
        _errors[(int)WearSign.SideWearRatio] += SideByShoulderSpread * SideByShoulderSpread * across * across;
    }

    private double EdgeLikelihood(ReadOnlySpan<double> state) => _edge.Likelihood(state[Misses + Grains], state[Misses + Past], state[Misses + Edge]);

    private double MarkLogLikelihood(int mark, double miss) => _marks[mark] switch
    {
        true => Math.Log(1 - miss),
        false => Math.Log(miss),
        null => 0,
    };

    /// <summary>Two wheels known to lean differently are worn differently that way, no other.</summary>
    private void TellAcrossByCamber(SignEffect[] effects)
    {
        var at = Array.FindIndex(effects, effect => effect.Sign == (int)WearSign.ShoulderDifferenceAcrossAxle);
        effects[at] = new(effects[at].Sign, WearTable.AcrossByCamberDeg * _values[(int)WearSign.CamberDifference], WearTable.AcrossByCamberSpread * WearTable.AcrossByCamberSpread);
    }
}
