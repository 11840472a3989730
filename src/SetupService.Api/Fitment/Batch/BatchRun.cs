using System.Diagnostics.CodeAnalysis;
using SetupService.Api.Http;
using SetupService.Api.Http.Documents;
using SetupService.Api.Vehicles;
using SetupService.Domain.Fitment.Cars;

namespace SetupService.Api.Fitment.Batch;

/// <summary>
/// The state of one batch: the car set last, one sheet that every candidate is written on, and the counts. Holds nothing
/// that grows with the number of lines.
/// </summary>
internal sealed class BatchRun(JsonContract contract)
{
    private readonly ContractReader<BatchCarLine> _cars = contract.ReaderOf<BatchCarLine>();
    private readonly VerdictCounter _verdicts = new();
    private long _answered;
    private long _metered;
    private long _dear;
    private long _dearMetered;

    /// <summary>The sheet of the candidate evaluated last.</summary>
    public CarSheet Sheet { get; } = new();

    /// <summary>The car set last; null before the first and after one that could not be read.</summary>
    public FitmentCar? Car { get; private set; }

    /// <summary>The candidate evaluated last.</summary>
    public CarCandidate Candidate { get; private set; }

    public long RefusedCount { get; private set; }

    /// <summary>True when any line has been answered or refused.</summary>
    public bool HasAnswers => _answered + RefusedCount > 0;

    /// <summary>The reader of candidate lines, whose faults are those of the single call.</summary>
    public ContractReader<BatchCandidateLine> Candidates { get; } = contract.ReaderOf<BatchCandidateLine>();

    /// <summary>Sets the car; false with every fault where the line is not valid, which also removes the car before it.</summary>
    public bool TrySetCar(ReadOnlySpan<byte> utf8, [NotNullWhen(false)] out Refusal? refusal)
    {
        UnsetCar();
        if (!_cars.Read(utf8, out var line, out refusal))
            return false;

        if (!VehicleMapper.MapForFitment(line.Vehicle).Under("vehicle").TryGet(out var vehicle, out var found))
        {
            refusal = _cars.Refuse(utf8, found);
            return false;
        }

        _dear++;
        Car = new FitmentCar(vehicle, line.Axle, FitmentMapper.Settings(line.Tolerances, line.Required, line.CamberChange));
        return true;
    }

    /// <summary>Removes the car: the lines that follow have none.</summary>
    public void UnsetCar() => Car = null;

    /// <summary>Evaluates a candidate on the car; false where its mapping is refused. A car must be set.</summary>
    public bool TryEvaluate(BatchCandidateLine line, [NotNullWhen(false)] out Refusal? refusal)
    {
        if (!CandidateMapper.Map(line).TryGet(out var candidate, out refusal))
            return false;

        Candidate = candidate;
        Sheet.Evaluate(Car!, candidate);
        return true;
    }

    /// <summary>Counts a line answered with the verdict of the sheet.</summary>
    public void CountAnswered()
    {
        _answered++;
        _verdicts.Count(Sheet.Verdict);
    }

    /// <summary>Counts a line answered with more than its verdict.</summary>
    public void CountDetailed() => _dear++;

    /// <summary>Counts a line answered with a problem.</summary>
    public void CountRefused()
    {
        RefusedCount++;
        _dear++;
    }

    /// <summary>Adds the lines answered since the last call to the meter, and to what the caller pays.</summary>
    public void Meter(BatchFlow flow)
    {
        var lineCount = _answered + RefusedCount - _metered;
        ServiceMeter.CountLines(lineCount);
        _verdicts.Meter();
        flow.ChargeLines(lineCount);
        flow.ChargeRequests(_dear - _dearMetered);
        _metered += lineCount;
        _dearMetered = _dear;
    }

    /// <summary>The counts so far.</summary>
    /// <param name="reason">Why the batch is not complete; null where it is.</param>
    public BatchSummary Summary(string? reason) => new()
    {
        LineCount = _answered + RefusedCount,
        AnsweredCount = _answered,
        RefusedCount = RefusedCount,
        Verdicts = _verdicts.ToCounts(),
        IsComplete = reason is null,
        Reason = reason,
    };
}
