using BenchmarkDotNet.Running;
using SetupService.Benchmarks.Fitment;

BenchmarkSwitcher.FromTypes([typeof(FitmentCheckBenchmark)]).Run(args);
