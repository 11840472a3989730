using BenchmarkDotNet.Attributes;
using SetupService.Domain.Fitment;

namespace SetupService.Benchmarks.Fitment;

/// <summary>One check in the domain: every check of a fully described axle, per candidate.</summary>
[MemoryDiagnoser]
public class FitmentCheckBenchmark
{
    private readonly FitmentContext _car = BenchmarkCar.Front();
    private readonly Domain.Fitment.Fitting[] _candidates = BenchmarkCar.Candidates();
    private readonly CheckSheet _sheet = new();

    /// <summary>Number of candidates an invocation works through; results are per candidate.</summary>
    public const int CandidateCount = 500;

    /// <summary>Evaluates every candidate into one sheet.</summary>
    [Benchmark(OperationsPerInvoke = CandidateCount)]
    public uint Evaluate()
    {
        var seen = 0u;
        foreach (var candidate in _candidates)
        {
            FitmentCheck.Evaluate(_car, candidate, _sheet);
            seen ^= _sheet.Failed.Bits;
        }

        return seen;
    }

    /// <summary>The texts of one candidate, which batches leave out.</summary>
    [Benchmark]
    public int Explain()
    {
        FitmentCheck.Evaluate(_car, _candidates[0], _sheet);
        var length = 0;
        for (var id = CheckId.InboardClearance; id <= CheckId.ArchCover; id++)
        {
            length += CheckWords.Explanation(_car, _candidates[0], id, _sheet[id], Domain.Answers.UnitSystem.Metric).Length;
        }

        return length;
    }
}
