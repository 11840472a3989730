namespace SetupService.Domain.Numerics;

/// <summary>
/// How many steps a computation may still take, and whether its caller is still there. Solvers look at it inside their loops and end with
/// a named outcome where it is spent. An instance belongs to one thread; <see cref="ForAnotherThread"/> gives another one that draws on the same steps.
/// </summary>
public sealed class WorkBudget
{
    /// <summary>More than any request within the contract's limits takes: a sweep of 5,000 rows takes some 20,000 steps.</summary>
    public const long GenerousSteps = 20_000_000;

    // Drawn from the common stock at once, so that threads seldom meet there.
    private const long PortionSteps = 4096;

    private readonly Stock _stock;
    private readonly CancellationToken _cancellation;
    private long _left;

    /// <summary>A budget of its own.</summary>
    /// <param name="steps">Steps allowed: a step is about one closure of a corner or one iteration of an equilibrium.</param>
    /// <param name="cancellation">The caller, who may have gone.</param>
    public WorkBudget(long steps, CancellationToken cancellation = default)
        : this(new Stock(steps), cancellation)
    {
    }

    private WorkBudget(Stock stock, CancellationToken cancellation) => (_stock, _cancellation) = (stock, cancellation);

    /// <summary>True once a step was asked for and none was left.</summary>
    public bool IsOutOfSteps => _stock.IsEmpty;

    /// <summary>True once no step is left or the caller has gone.</summary>
    public bool IsSpent => _stock.IsEmpty || _cancellation.IsCancellationRequested;

    /// <summary>Steps taken by now; what other threads have drawn and not yet taken counts as taken.</summary>
    public long StepsTaken => _stock.Drawn - Math.Max(_left, 0);

    /// <summary>A budget that no reasonable request spends.</summary>
    public static WorkBudget Generous(CancellationToken cancellation = default) => new(GenerousSteps, cancellation);

    /// <summary>A budget for another thread of the same computation: both draw on the same steps.</summary>
    public WorkBudget ForAnotherThread() => new(_stock, _cancellation);

    /// <summary>Takes one step; false where none is left or the caller has gone.</summary>
    public bool TrySpend() => (--_left >= 0 || TryDraw()) && !_cancellation.IsCancellationRequested;

    private bool TryDraw()
    {
        _left = _stock.Draw(PortionSteps) - 1;
        return _left >= 0;
    }

    /// <summary>The steps that the threads of a computation share.</summary>
    private sealed class Stock(long steps)
    {
        private long _drawn;
        private volatile bool _isEmpty;

        public bool IsEmpty => _isEmpty;

        public long Drawn => Math.Min(Interlocked.Read(ref _drawn), steps);

        /// <summary>As many steps as are wanted and left; none once it is empty.</summary>
        public long Draw(long wanted)
        {
            if (_isEmpty)
                return 0;
            var left = steps - (Interlocked.Add(ref _drawn, wanted) - wanted);
            _isEmpty |= left <= 0;
            return Math.Clamp(left, 0, wanted);
        }
    }
}
