using BenchmarkDotNet.Attributes;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Benchmarks.Geometry;

/// <summary>Wanted angles by the top mount: camber and caster, toe reset.</summary>
[MemoryDiagnoser]
public class LeastMovementBenchmark
{
    private readonly AdjustedCorner _corner = AdjustedCorner.AsStated(BenchmarkCorners.Strut)!;
    private readonly AdjusterRoom[] _rooms = [new(new(Adjuster.StrutTopInboard, 0), -20, 20), new(new(Adjuster.StrutTopRearward, 0), -20, 20)];

    /// <summary>Both angles within the limits.</summary>
    [Benchmark]
    public bool Reached() => Find(new AngleTarget(-1.9, 4.1));

    /// <summary>More camber than the slot gives.</summary>
    [Benchmark]
    public bool AtLimit() => Find(new AngleTarget(-4, 4.1));

    private bool Find(AngleTarget target) => LeastMovement.Find(_corner, _rooms, target, archGapMm: null, resetToe: true)!.IsReached;
}
