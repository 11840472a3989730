using System.Globalization;
using System.Text;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;

namespace SetupService.Domain.Tests.Wear.SecondSimulation;

/// <summary>One bin: what was told on average, how often it was true, of how many statements.</summary>
internal readonly record struct ToldBin(double Told, double True, int Count)
{
    /// <summary>How far off, in points.</summary>
    public double OffPoints => 100 * Math.Abs(Told - True);
}

/// <summary>Told against true of many cars drawn and asked about.</summary>
internal sealed class ToldAgainstTrue
{
    /// <summary>The least statements for a bin to count.</summary>
    public const int LeastCount = 300;

    private static readonly CarAxle[] Axles = [CarAxle.Front, CarAxle.Rear];
    private readonly List<(WearCause Cause, double Told, bool IsTrue)> _statements = [];
    private int _leftOut;
    private int _leftOutTrue;

    /// <summary>All statements.</summary>
    public int Count => _statements.Count;

    /// <summary>True statements.</summary>
    public int TrueCount => _statements.Count(one => one.IsTrue);

    /// <summary>Asks of cars drawn from seeds one after another; causes the answer leaves out as unlikely are counted apart.</summary>
    public static ToldAgainstTrue Ask(int firstSeed, int cars)
    {
        var all = new ToldAgainstTrue();
        for (var i = 0; i < cars; i++)
        {
            var chance = new Chance(firstSeed + i);
            var car = DrawnCar.From(chance);
            var truth = TrueCauses.Find(car);
            var wear = new CarReader(chance, car).Read();
            var told = AskedDiagnosis.Tell(wear);

            // Of an axle nobody read a tyre of nothing can be told; normal is told of the axles that were read.
            foreach (var ((cause, axle), probability) in told)
            {
                if (axle is null) all.Add(cause, probability, !truth.Any(one => wear.Tyres.Any(tyre => tyre.Axle == one.Axle)));
                else if (wear.Tyres.Any(tyre => tyre.Axle == axle)) all.Add(cause, probability, truth.Contains((cause, axle)));
            }

            foreach (var axle in Axles.Where(axle => wear.Tyres.Any(tyre => tyre.Axle == axle)))
            {
                foreach (var cause in Enum.GetValues<WearCause>().Where(cause => cause != WearCause.Normal && !told.ContainsKey((cause, axle))))
                {
                    all._leftOut++;
                    if (truth.Contains((cause, axle))) all._leftOutTrue++;
                }
            }
        }

        return all;
    }

    /// <summary>Takes a statement.</summary>
    public void Add(WearCause cause, double told, bool isTrue) => _statements.Add((cause, told, isTrue));

    /// <summary>Bins a tenth wide; of one cause or of all.</summary>
    public IReadOnlyList<ToldBin> Bins(WearCause? cause = null) =>
        [.. _statements.Where(one => cause is null || one.Cause == cause).GroupBy(one => Math.Min(9, (int)(one.Told * 10))).OrderBy(bin => bin.Key)
            .Select(bin => new ToldBin(bin.Average(one => one.Told), bin.Average(one => one.IsTrue ? 1.0 : 0), bin.Count()))];

    /// <summary>Mean of how far the bins are off, in points, every statement alike.</summary>
    public double MeanOffPointsOfStatements() => Bins().Sum(bin => bin.OffPoints * bin.Count) / Math.Max(1, Count);

    /// <summary>Mean of how far the bins that count are off, in points, every bin alike.</summary>
    public double MeanOffPoints() => Bins().Where(bin => bin.Count >= LeastCount).Select(bin => bin.OffPoints).DefaultIfEmpty(double.NaN).Average();

    /// <summary>The most that a bin that counts is off, in points.</summary>
    public double MostOffPoints() => Bins().Where(bin => bin.Count >= LeastCount).Select(bin => bin.OffPoints).DefaultIfEmpty(double.NaN).Max();

    /// <summary>The figures as text: all statements, then each cause.</summary>
    public string Report()
    {
        var text = new StringBuilder();
        text.AppendLine(CultureInfo.InvariantCulture, $"{Count} statements, {TrueCount} true; every statement alike: mean {MeanOffPointsOfStatements():0.0} points off (target 5)");
        text.AppendLine(CultureInfo.InvariantCulture, $"bins of {LeastCount}, every bin alike: mean {MeanOffPoints():0.0} points off; the most {MostOffPoints():0.0} (target 12)");
        text.AppendLine(CultureInfo.InvariantCulture, $"left out as unlikely: {_leftOut}, of them true {100.0 * _leftOutTrue / Math.Max(1, _leftOut):0.0} %");
        Write(null);
        foreach (var cause in Enum.GetValues<WearCause>()) Write(cause);
        return text.ToString();

        void Write(WearCause? cause)
        {
            var mine = _statements.Where(one => cause is null || one.Cause == cause).ToList();
            if (mine.Count == 0) return;
            text.AppendLine(CultureInfo.InvariantCulture, $"{cause?.ToString() ?? "all"}: told {100 * mine.Average(one => one.Told):0.0} %, true {100 * mine.Average(one => one.IsTrue ? 1.0 : 0):0.0} % of {mine.Count}");
            foreach (var bin in Bins(cause)) text.AppendLine(CultureInfo.InvariantCulture, $"  told {100 * bin.Told,5:0.0} %  true {100 * bin.True,5:0.0} %  of {bin.Count,6}{(bin.Count >= LeastCount && bin.OffPoints > 12 ? "  off" : "")}");
        }
    }
}
