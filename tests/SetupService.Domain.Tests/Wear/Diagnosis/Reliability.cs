using SetupService.Domain.Tests.Wear.Simulation;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>How often causes told with some probability are there, over simulated cars.</summary>
internal sealed class Reliability
{
    private const int BinCount = 10;

    private readonly Bin[] _bins = new Bin[BinCount];
    private readonly Bin[] _byCause = new Bin[(int)WearCause.Normal];

    /// <summary>Diagnoses cars, each axle looked at and each cause counted.</summary>
    public static Reliability Of(IReadOnlyList<SimulatedCar> cars)
    {
        var reliability = new Reliability();
        foreach (var car in cars) reliability.Count(car);
        return reliability;
    }

    /// <summary>The bins, of tenths of probability, all causes together.</summary>
    public IReadOnlyList<Bin> Bins => _bins;

    /// <summary>Told against found by cause, both axles together.</summary>
    public IEnumerable<(WearCause Cause, Bin Bin)> ByCause => _byCause.Select((bin, cause) => ((WearCause)cause, bin));

    private void Count(SimulatedCar car)
    {
        var diagnosis = WearDiagnosis.Compute(car.Case);
        var surplus = new double[BinCount];
        foreach (var axle in (CarAxle[])[CarAxle.Front, CarAxle.Rear])
        {
            for (var cause = WearCause.LowNegativeCamber; cause < WearCause.Normal; cause++)
            {
                if (diagnosis.Probability(cause, axle) is not { } told) continue;
                var index = Math.Min(BinCount - 1, (int)(told * BinCount));
                var hits = car.Faults.Contains((cause, axle)) ? 1 : 0;
                ref var bin = ref _bins[index];
                bin = bin with { Count = bin.Count + 1, Sum = bin.Sum + told, Hits = bin.Hits + hits };
                ref var ofCause = ref _byCause[(int)cause];
                ofCause = ofCause with { Count = ofCause.Count + 1, Sum = ofCause.Sum + told, Hits = ofCause.Hits + hits };
                surplus[index] += told - hits;
            }
        }

        for (var index = 0; index < BinCount; index++)
            _bins[index] = _bins[index] with { SquaredSurplus = _bins[index].SquaredSurplus + (surplus[index] * surplus[index]) };
    }

    /// <summary>Diagnoses told with about the same probability.</summary>
    /// <param name="Count">How many.</param>
    /// <param name="Sum">Sum of the probabilities told.</param>
    /// <param name="Hits">How many were there.</param>
    /// <param name="SquaredSurplus">Sum over the cars of the square of what a car's own probabilities told too much.</param>
    internal readonly record struct Bin(int Count, double Sum, int Hits, double SquaredSurplus)
    {
        /// <summary>
        /// Standard error of told less found, the cars drawn anew: the causes of one car hang together, so a car, not a cause, is the unit
        /// drawn (Cochran, Sampling Techniques, 1977, single-stage cluster sampling, ratio to size; from memory).
        /// </summary>
        public double StandardError => Count > 0 ? Math.Sqrt(SquaredSurplus) / Count : double.NaN;

        public double Told => Count > 0 ? Sum / Count : 0;

        public double Found => Count > 0 ? (double)Hits / Count : 0;
    }
}
