using System.ComponentModel.DataAnnotations;
using System.Globalization;

namespace SetupService.Api.Http.Work;

/// <summary>How much work a client may ask for. A unit is about a tenth of a millisecond of one processor.</summary>
public sealed class QuotaSettings
{
    /// <summary>Units a client may ask for in <see cref="BurstSeconds"/>.</summary>
    [Range(1L, 1_000_000_000L)]
    public long BurstUnits { get; set; } = 100_000;

    /// <summary>The shorter time, in seconds.</summary>
    [Range(1, 86_400)]
    public int BurstSeconds { get; set; } = 10;

    /// <summary>Units a client may ask for in <see cref="SustainedSeconds"/>.</summary>
    [Range(1L, 1_000_000_000_000L)]
    public long SustainedUnits { get; set; } = 3_600_000;

    /// <summary>The longer time, in seconds.</summary>
    [Range(1, 2_678_400)]
    public int SustainedSeconds { get; set; } = 3600;

    /// <summary>Steps of solvers that cost a unit; a request costs one besides.</summary>
    [Range(1, 1_000_000)]
    public int StepsPerUnit { get; set; } = 50;

    /// <summary>Lines of a batch, or rows of a table, that cost a unit.</summary>
    [Range(1, 1_000_000)]
    public int LinesPerUnit { get; set; } = 20;

    /// <summary>Pairs of candidate and car of a catalogue that cost a unit.</summary>
    [Range(1, 1_000_000)]
    public int PairsPerUnit { get; set; } = 1000;
}

/// <summary>
/// What a client may still ask for, over a shorter and over a longer time: each fills steadily up to its size. A request needs one unit of both; what it costs
/// beyond that is known only when it is done, and may leave a debt that the next request waits for. Safe for all threads.
/// </summary>
public sealed class WorkQuota
{
    /// <summary>Bytes of a refused body that cost a unit.</summary>
    public const int RefusedBytesPerUnit = 2000;

    // A unit, less what adding up shares of seconds may leave out.
    private const double WholeUnit = 1 - 1e-9;

    private readonly Lock _lock = new();
    private readonly QuotaSettings _settings;
    private readonly TimeProvider _clock;
    private Bucket _burst;
    private Bucket _sustained;

    /// <summary>A quota that is full.</summary>
    public WorkQuota(QuotaSettings settings, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(clock);
        (_settings, _clock) = (settings, clock);
        var now = clock.GetTimestamp();
        _burst = new(settings.BurstUnits, settings.BurstSeconds, now);
        _sustained = new(settings.SustainedUnits, settings.SustainedSeconds, now);
        Policy = string.Create(
            CultureInfo.InvariantCulture, $"\"burst\";q={settings.BurstUnits};w={settings.BurstSeconds}, \"sustained\";q={settings.SustainedUnits};w={settings.SustainedSeconds}");
    }

    /// <summary>What is allowed, as the header RateLimit-Policy says it.</summary>
    public string Policy { get; }

    /// <summary>True where nothing of it is used up.</summary>
    public bool IsFull
    {
        get
        {
            lock (_lock)
            {
                Fill();
                return _burst.IsFull && _sustained.IsFull;
            }
        }
    }

    /// <summary>Takes the unit of a request.</summary>
    /// <returns>Whether it was there, and what is left where least is left.</returns>
    public QuotaState TryBegin()
    {
        lock (_lock)
        {
            Fill();
            var isAllowed = _burst.Units >= WholeUnit && _sustained.Units >= WholeUnit;
            if (isAllowed)
                Spend(1);

            // The one a client will meet first: the one it has met, else the one with the smaller share left.
            var isBurst = isAllowed ? _burst.Share <= _sustained.Share : _burst.SecondsUntil(1) >= _sustained.SecondsUntil(1);
            ref readonly var nearest = ref isBurst ? ref _burst : ref _sustained;
            return new(isAllowed, isBurst ? "burst" : "sustained", (long)Math.Max(nearest.Units, 0), WholeSeconds(isAllowed ? nearest.SecondsUntilFull : nearest.SecondsUntil(1)));
        }
    }

    /// <summary>Takes the units that work has cost.</summary>
    public void Charge(double units)
    {
        lock (_lock)
        {
            Fill();
            Spend(units);
        }
    }

    /// <summary>Takes the units of steps of solvers.</summary>
    public void ChargeSteps(long steps) => Charge((double)steps / _settings.StepsPerUnit);

    /// <summary>Takes the units of lines of a batch.</summary>
    public void ChargeLines(long lines) => Charge((double)lines / _settings.LinesPerUnit);

    /// <summary>Takes the units of what in a stream is as much work as a request of its own.</summary>
    public void ChargeRequests(long requests) => Charge(requests);

    /// <summary>Takes the units of a body that is refused: every fault in it was looked for.</summary>
    public void ChargeRefused(long bytes) => Charge((double)bytes / RefusedBytesPerUnit);

    /// <summary>Takes the units of pairs of a catalogue.</summary>
    public void ChargePairs(long pairs) => Charge((double)pairs / _settings.PairsPerUnit);

    /// <summary>How long until no debt is left; zero where there is none.</summary>
    public TimeSpan UntilPaid()
    {
        lock (_lock)
        {
            Fill();
            return TimeSpan.FromSeconds(Math.Max(_burst.SecondsUntil(0), _sustained.SecondsUntil(0)));
        }
    }

    private static long WholeSeconds(double seconds) => (long)Math.Ceiling(seconds);

    private void Fill()
    {
        var now = _clock.GetTimestamp();
        _burst.Fill(now, _clock);
        _sustained.Fill(now, _clock);
    }

    private void Spend(double units)
    {
        _burst.Units -= units;
        _sustained.Units -= units;
    }

    private struct Bucket
    {
        private readonly double _size;
        private readonly double _seconds;
        private long _at;

        public Bucket(double size, double seconds, long now) => (_size, _seconds, _at, Units) = (size, seconds, now, size);

        public double Units { get; set; }

        public readonly bool IsFull => Units >= _size;

        public readonly double Share => Units / _size;

        public readonly double SecondsUntilFull => SecondsUntil(_size);

        public readonly double SecondsUntil(double units) => Math.Max(0, (units - Units) * _seconds / _size);

        public void Fill(long now, TimeProvider clock)
        {
            Units = Math.Min(_size, Units + (clock.GetElapsedTime(_at, now).TotalSeconds * _size / _seconds));
            _at = now;
        }
    }
}

/// <summary>What a request met.</summary>
/// <param name="IsAllowed">True where the request may go on.</param>
/// <param name="Name">The limit met, or the nearest one.</param>
/// <param name="UnitsLeft">Units left of it.</param>
/// <param name="Seconds">Seconds until it is full again, or, where the request was refused, until one may come.</param>
public readonly record struct QuotaState(bool IsAllowed, string Name, long UnitsLeft, long Seconds);

/// <summary>Who calls: a client with a key, or everybody from one address where no keys are asked for.</summary>
/// <param name="name">The client's name; "-" where there are no keys.</param>
/// <param name="quota">What it may ask for; null where nothing is limited.</param>
public sealed class Caller(string name, WorkQuota? quota)
{
    /// <summary>The header with a client's key.</summary>
    public const string KeyHeader = "Api-Key";

    private int _streams;

    /// <summary>The caller of a service without keys and limits.</summary>
    public static Caller Unknown { get; } = new("-", null);

    /// <summary>The client's name, for logs and metrics.</summary>
    public string Name { get; } = name;

    /// <summary>What it may ask for; null where nothing is limited.</summary>
    public WorkQuota? Quota { get; } = quota;

    /// <summary>Begins a stream where fewer than so many are open; each that is begun is ended.</summary>
    public bool TryBeginStream(int most)
    {
        if (Interlocked.Increment(ref _streams) <= most)
            return true;
        EndStream();
        return false;
    }

    /// <summary>Ends a stream.</summary>
    public void EndStream() => Interlocked.Decrement(ref _streams);

    /// <summary>The caller of a request.</summary>
    public static Caller From(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Features.Get<Caller>() ?? Unknown;
    }
}
