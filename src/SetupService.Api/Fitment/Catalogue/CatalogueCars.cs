using System.Buffers;
using System.Globalization;
using System.IO.Pipelines;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Http;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Vehicles;
using SetupService.Domain.Fitment.Cars;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Fitment.Catalogue;

/// <summary>The cars of a catalogue as they were read: those that every candidate is held against, and the number of lines that are no car, each told at once.</summary>
/// <param name="contract">Reads the lines.</param>
/// <param name="answer">Takes the cars' ids, and what is wrong with the lines that are none: as bytes, a tenth of what the faults themselves hold.</param>
internal sealed class CatalogueCars(JsonContract contract, CatalogueLines answer)
{
    private readonly ContractReader<CatalogueCarLine> _reader = contract.ReaderOf<CatalogueCarLine>();
    private readonly Dictionary<LineId, long> _lines = [];
    private readonly List<FitmentCar> _cars = [];

    /// <summary>The cars, in order.</summary>
    public IReadOnlyList<FitmentCar> Cars => _cars;

    /// <summary>Number of lines that could not be read.</summary>
    public int RefusedCount { get; private set; }

    /// <summary>Number of lines, read or not.</summary>
    public int Count => _cars.Count + RefusedCount;

    /// <summary>Reads every line; a problem where there is none, or more than is held.</summary>
    public async Task<Problem?> ReadAsync(Stream part, BatchFlow flow)
    {
        LineFeed feed = new(PipeReader.Create(part, new StreamPipeReaderOptions(leaveOpen: true)), flow.Caps.LineBytes);
        long bytes = 0;
        do
        {
            await flow.WaitAsync(feed.WaitAsync).ConfigureAwait(false);
            while (feed.TryTake(out var line))
            {
                flow.ThrowIfEnded();
                bytes += line.Length;
                var count = Count;
                Read(line, feed);
                flow.ChargeRequests(Count - count);
                if (Count > flow.Caps.CatalogueCars || bytes > flow.Caps.CatalogueCarBytes)
                    return TooMany(flow.Caps);
                if (answer.Length > flow.Caps.CatalogueFaultBytes)
                    return TooManyFaults(flow.Caps);
            }
        }
        while (!feed.IsCompleted);

        return Count > 0 ? null : FormParts.Missing("/cars", "The part cars has no line: send one with id and vehicle for each car.");
    }

    private void Read(in ReadOnlySequence<byte> line, LineFeed feed)
    {
        var utf8 = feed.Text(line);
        if (feed.IsTooLong)
            Refuse(feed.LineNumber, LineClassifier.Classify(utf8).Id, BatchProblems.LineTooLong(feed.MostBytes));
        else if (!LineFeed.IsBlank(utf8))
            Read(utf8, feed.LineNumber);
    }

    private void Read(ReadOnlySpan<byte> utf8, long lineNumber)
    {
        if (!_reader.Read(utf8, out var line, out var refusal))
            Refuse(lineNumber, LineClassifier.Classify(utf8).Id, Problem.Invalid(refusal));
        else if (!CatalogueMapper.Map(line).TryGet(out var car, out refusal))
            Refuse(lineNumber, line.Id, Problem.Invalid(_reader.Refuse(utf8, refusal)));
        else if (!_lines.TryAdd(line.Id, lineNumber))
            Refuse(lineNumber, line.Id, Problem.Invalid(SameId(_lines[line.Id])));
        else
            Add(line.Id, car);
    }

    private void Add(LineId id, FitmentCar car)
    {
        // Made ready here, car by car, so that the first candidate does not wait for all of them at once.
        foreach (var axle in car.Axle is { } named ? [named] : Enum.GetValues<CarAxle>())
            car.At(axle);
        answer.AddCar(id);
        _cars.Add(car);
    }

    private void Refuse(long lineNumber, LineId? id, Problem problem)
    {
        RefusedCount++;
        answer.WriteCar(lineNumber, id, problem);
    }

    private static Fault SameId(long line) => Fault.At(
        "/id", FaultCodes.Inconsistent, string.Create(CultureInfo.InvariantCulture, $"The car of line {line} has this id too: give each one of its own, or its pairs could not be told apart."));

    private static Problem TooMany(CapSettings caps) => Problem.Create(
        ProblemTypes.TooLarge,
        caps.OfCars + "; send the others with another request.",
        [Fault.At("/cars", FaultCodes.TooMany, "There are more cars than are held at once.", new FaultLimits { Maximum = caps.CatalogueCars })]);

    private static Problem TooManyFaults(CapSettings caps) => Problem.Create(
        ProblemTypes.TooLarge,
        string.Create(CultureInfo.InvariantCulture, $"What is wrong with the lines of the part cars takes more than {caps.CatalogueFaultBytes} bytes to tell. Send a few of them alone to see it."),
        [Fault.At("/cars", FaultCodes.TooMany, "There are more faults than are held at once.", new FaultLimits { Maximum = caps.CatalogueFaultBytes, Unit = "bytes" })]);
}

/// <summary>Maps the lines of a catalogue's cars.</summary>
internal static class CatalogueMapper
{
    private static readonly Refusal CamberWithoutAxle = new(Fault.At("/camberChange", FaultCodes.Inconsistent, "camberChange is made at one axle: name it in axle."));

    /// <summary>The car of a line.</summary>
    public static MapResult<FitmentCar> Map(CatalogueCarLine line)
    {
        var refusal = line is { CamberChange: not null, Axle: null } ? CamberWithoutAxle : null;
        var vehicle = VehicleMapper.MapForFitment(line.Vehicle).Take("vehicle", ref refusal);
        if (refusal is not null)
            return refusal;
        return new FitmentCar(vehicle!, line.Axle, FitmentMapper.Settings(line.Tolerances, line.Required, line.CamberChange));
    }
}
