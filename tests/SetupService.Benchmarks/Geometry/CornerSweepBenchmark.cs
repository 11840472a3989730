using BenchmarkDotNet.Attributes;

namespace SetupService.Benchmarks.Geometry;

/// <summary>Warm-started positions of a sweep in the domain, per position, on one core.</summary>
[MemoryDiagnoser]
public class CornerSweepBenchmark
{
    private SweptCorner _corner = null!;

    /// <summary>The kind of corner.</summary>
    [Params("macPhersonStrut", "doubleWishbone")]
    public string Kind { get; set; } = "";

    /// <summary>Makes the corner ready.</summary>
    [GlobalSetup]
    public void Prepare() => _corner = new SweptCorner(Kind);

    /// <summary>Solve, camber and toe.</summary>
    [Benchmark(OperationsPerInvoke = SweptCorner.Positions)]
    public double SolveAndAngles() => _corner.Angles();

    /// <summary>Solve and every figure of a row.</summary>
    [Benchmark(OperationsPerInvoke = SweptCorner.Positions)]
    public double EveryFigure() => _corner.Figures();

    /// <summary>Over the rack: both wheels solved, and every figure of a row.</summary>
    [Benchmark(OperationsPerInvoke = SweptCorner.Positions)]
    public double EveryFigureSteered() => _corner.Steered();
}
