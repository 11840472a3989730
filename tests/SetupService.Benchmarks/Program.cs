using BenchmarkDotNet.Running;
using SetupService.Benchmarks.Fitment;
using SetupService.Benchmarks.Geometry;
using SetupService.Benchmarks.Handling;
using SetupService.Benchmarks.Plans;
using SetupService.Benchmarks.Service;
using SetupService.Benchmarks.Wear;

// "kernel" runs the domain benchmarks; the others are the parts that run.sh puts together.
return args switch
{
    ["serve", .. var rest] => PeerHost.Run(rest),
    ["calls", var url, var pid, "native", var nativeUrl, var nativePid, .. var only] => await CallRatio.RunAsync(new Uri(url), pid, (new Uri(nativeUrl), nativePid), only),
    ["calls", var url, var pid, .. var only] => await CallRatio.RunAsync(new Uri(url), pid, null, only),
    ["lines", var url, var pid] => await LineRatio.RunAsync(new Uri(url), pid),
    ["rows", var url] => await RowRatio.RunAsync(new Uri(url)),
    ["catalogue"] => CatalogueRates(),
    ["catalogue", var url, var pid] => await CatalogueRun.RunAsync(new Uri(url), pid),
    ["corners", var cpp, var python, var script] => CornerRatio.Run(cpp, python, script),
    ["bend"] => BendRatio.Run(),
    ["what-if"] => WhatIfTime.Run(),
    ["plan"] => await PlanTime.RunAsync(),
    ["ranking"] => await RankingTime.RunAsync(),
    ["parts"] => CallParts.Run(),
    ["read-and-write-lines", var input, var output] => LinePeer.Run(input, output),
    ["kernel", .. var rest] => Kernel(rest),
    _ => Usage(),
};

static int Kernel(string[] args)
{
    BenchmarkSwitcher.FromTypes(
    [
        typeof(FitmentCheckBenchmark), typeof(CheckCallBenchmark), typeof(CornerSweepBenchmark), typeof(LeastMovementBenchmark), typeof(HandlingBenchmark),
        typeof(DiagnosisBenchmark), typeof(ForecastBenchmark),
    ]).Run(args is [] ? ["--filter", "*"] : args);
    return 0;
}

static int CatalogueRates()
{
    CatalogueRate.Run();
    return 0;
}

static int Usage()
{
    Console.Error.WriteLine("kernel | serve | calls URL PID [native URL PID] [PEER…] | lines URL PID | rows URL | catalogue [URL PID] | corners CPP PYTHON SCRIPT | bend | what-if | plan | ranking | parts | read-and-write-lines INPUT OUTPUT; run.sh puts them together.");
    return 1;
}
