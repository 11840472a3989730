using System.Reflection;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Numerics;

namespace SetupService.Api.Http.Work;

/// <summary>
/// The work one request may do: steps of solvers, a deadline, and a caller who may go. A handler of a call marked by <see cref="ComputingCalls.WithWork"/> takes
/// it as a parameter and hands it to its solvers; what comes of a request that spent it is said there, not by the handler.
/// </summary>
public sealed class RequestWork : IBindableFromHttpContext<RequestWork>, IDisposable
{
    private CancellationTokenSource? _end;
    private ITimer? _timer;
    private WorkBudget? _budget;
    private WorkSettings? _settings;
    private volatile bool _isLate;

    /// <summary>Cancelled at the deadline and when the caller goes.</summary>
    public CancellationToken Cancellation { get; private set; }

    /// <summary>The steps allowed.</summary>
    public WorkBudget Budget => _budget ?? throw new InvalidOperationException("The call is not marked as one that computes.");

    /// <summary>Steps taken by now.</summary>
    public long StepsTaken => _budget?.StepsTaken ?? 0;

    /// <summary>True once the request has spent its steps or its time.</summary>
    public bool IsExceeded => _isLate || _budget is { IsOutOfSteps: true };

    /// <summary>The work of a request.</summary>
    public static RequestWork From(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Features.Get<RequestWork>() is { } known)
            return known;
        RequestWork work = new();
        context.Features.Set(work);
        return work;
    }

    /// <inheritdoc />
    public static ValueTask<RequestWork?> BindAsync(HttpContext context, ParameterInfo parameter) => new(From(context));

    /// <summary>Begins the work: the deadline runs from now.</summary>
    public void Start(WorkSettings settings, TimeProvider clock, CancellationToken gone)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(clock);
        _settings = settings;
        _end = CancellationTokenSource.CreateLinkedTokenSource(gone);
        Cancellation = _end.Token;
        _budget = new WorkBudget(settings.Steps, Cancellation);
        _timer = clock.CreateTimer(static state => ((RequestWork)state!).End(), this, TimeSpan.FromSeconds(settings.DeadlineSeconds), Timeout.InfiniteTimeSpan);
    }

    /// <summary>The 422 of a request that has spent its work.</summary>
    public Problem Refuse()
    {
        var reason = _isLate
            ? FormattableString.Invariant($"one request is computed for {_settings!.DeadlineSeconds:0.##} s at most, and this one takes longer.")
            : FormattableString.Invariant($"one request may take {_settings!.Steps} steps of the solvers, and this one needs more.");
        FaultLimits limits = _isLate ? new() { Maximum = _settings.DeadlineSeconds, Unit = "s" } : new() { Maximum = _settings.Steps, Unit = "steps" };
        return Problem.Create(ProblemTypes.WorkExceeded, $"{char.ToUpperInvariant(reason[0])}{reason[1..]} Ask for fewer rows, bends, changes or parts.", [Fault.At("", FaultCodes.WorkExceeded, reason, limits)]);
    }

    /// <inheritdoc />
    public void Dispose()
    {
        _timer?.Dispose();
        _end?.Dispose();
    }

    private void End()
    {
        _isLate = true;
        try
        {
            _end!.Cancel();
        }
        catch (ObjectDisposedException)
        {
            // The work ended while its deadline passed.
        }
    }
}
