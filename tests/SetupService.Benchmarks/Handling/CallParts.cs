using System.Buffers;
using System.Diagnostics;
using System.Text.Json;
using SetupService.Api.Handling.Cornering;
using SetupService.Api.Handling.Ride;
using SetupService.Api.Handling.Turns;
using SetupService.Api.Host;
using SetupService.Api.Http;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Numerics;

namespace SetupService.Benchmarks.Handling;

/// <summary>Where the time of a call of cornering and of ride goes: its parts in turn in one run, the least and the median of many, µs, and what each allocates, bytes.</summary>
internal static class CallParts
{
    private const int Rounds = 2000;

    public static int Run()
    {
        Cornering();
        Ride();
        return 0;
    }

    private static void Cornering()
    {
        var body = File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "cornering.request.json"));
        var reader = ServiceContract.Instance.ReaderOf<CorneringRequest>();
        if (!reader.TryRead(body, out var request) || !VehicleMapper.Map(request.Vehicle).TryGet(out var vehicle, out _)) throw new InvalidOperationException();
        var stated = HandlingCarBuilder.Build(vehicle) ?? throw new InvalidOperationException();
        var path = TurnMapper.Path(request);
        CorneringEvaluation Evaluate() => CorneringEvaluation.Create(request, vehicle, UnitSystem.Metric, WorkBudget.Generous(default)) ?? throw new InvalidOperationException();
        var car = Evaluate();
        var turn = car.Run.At(request.LateralG, out _) ?? throw new InvalidOperationException();
        var limits = car.Limits(request.LateralG);
        var row = TurnAnswers.Row(car, turn, limits);
        var answer = CorneringAnswers.Create(car, turn, TurnDetail.Full);
        var buffer = new ArrayBufferWriter<byte>(65_536);
        using var writer = new Utf8JsonWriter(buffer, new JsonWriterOptions { SkipValidation = true });
        var solver = CorneringSolver.Create(car.Reading.Car, request.Turn)!;
        Time("cornering",
            ("read and rules", () => reader.TryRead(body, out _)),
            ("map the vehicle", () => VehicleMapper.Map(request.Vehicle).TryGet(out _, out _)),
            ("make the car ready", () => HandlingCarBuilder.Build(vehicle)),
            ("scale of grip", () => GripScale.Find(stated.Car, path, request.HeldLateralG)),
            ("make the run", () => CorneringRun.Create(car.Reading.Car, path)),
            ("all of these three", () => Evaluate()),
            ("equilibrium from rest", () => CorneringSolver.Create(car.Reading.Car, request.Turn)!.Solve(path.At(request.LateralG))),
            ("turn with gradients", () => car.Run.At(request.LateralG, out _)),
            ("limits of both axles", () => GripLimits.Solve(solver, path, request.LateralG)),
            ("limits with ranges", () => car.Limits(request.LateralG)),
            ("effects of assumptions", () => car.Run.Effects(car.Reading, request.LateralG)),
            ("assumptions with effects", () => TurnAssumptions.List(car, limits, turn.Attitude, "")),
            ("row", () => TurnAnswers.Row(car, turn, limits)),
            ("gaps", () => TurnGaps.Find(car, [row], limits)),
            ("roll-over near", () => car.Run.RollOverWithin(request.LateralG, CorneringCautions.RollOverMarginG)),
            ("the turn's answer made", () => CorneringAnswers.Create(car, turn, TurnDetail.Turn)),
            ("the answer made", () => CorneringAnswers.Create(car, turn, TurnDetail.Full)),
            ("the answer written", () =>
            {
                buffer.ResetWrittenCount();
                writer.Reset(buffer);
                JsonSerializer.Serialize(writer, answer, ServiceContract.Instance.TypeOf<CorneringAnswer>());
                writer.Flush();
                return buffer.WrittenCount;
            }
        ));
    }

    private static void Ride()
    {
        var body = File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "ride.request.json"));
        var (contract, budget, range) = (ServiceContract.Instance, WorkBudget.Generous(), DampingRange.RoadAndTrack);
        var reader = contract.ReaderOf<RideRequest>();
        if (!reader.Read(body, out var request, out _) || !VehicleMapper.Map(request.Vehicle).TryGet(out var vehicle, out _)) throw new InvalidOperationException();
        var given = StandingCar.AsGiven(vehicle) ?? throw new InvalidOperationException();
        MapResult<MadeChange> Make() => CarChangeMapper.Make(contract.Changing(request.Vehicle, "/vehicle"), request.Change!, "/change");
        if (!Make().TryGet(out var made, out _) || !made.Document.Read(RideRules.Changed).TryGet(out var document, out _) || !VehicleMapper.Map(document).TryGet(out var merged, out _))
            throw new InvalidOperationException();
        var changed = given.Changed(merged, made.Change, out _) ?? throw new InvalidOperationException();
        var (before, car) = (new RideEvaluation(given, budget), new RideEvaluation(changed, budget));
        var answer = RideAnswers.Create(car, before, range, UnitSystem.Metric, RideDetail.Full);
        var buffer = new ArrayBufferWriter<byte>(65_536);
        using var writer = new Utf8JsonWriter(buffer, new JsonWriterOptions { SkipValidation = true });
        Time("ride with a change",
            ("read and rules", () => reader.Read(body, out _, out _)),
            ("map the vehicle", () => VehicleMapper.Map(request.Vehicle).TryGet(out _, out _)),
            ("the car standing", () => StandingCar.AsGiven(vehicle)),
            ("the change made", () => Make().TryGet(out _, out _)),
            ("the changed car read", () => made.Document.Read(RideRules.Changed).TryGet(out _, out _)),
            ("the changed car mapped", () => VehicleMapper.MapChanged(document, request.Vehicle, vehicle).TryGet(out _, out _)),
            ("the changed car standing", () => given.Changed(merged, made.Change, out _)),
            ("stops met in a turn, before", () => StopMetInTurn.Compute(given.Stands)),
            ("stops met in a turn, after", () => StopMetInTurn.Compute(changed.Stands)),
            ("the axles' answer made", () => RideAnswers.Create(car, before, range, UnitSystem.Metric, RideDetail.Axles)),
            ("the answer made", () => RideAnswers.Create(car, before, range, UnitSystem.Metric, RideDetail.Full)),
            ("the answer written", () =>
            {
                buffer.ResetWrittenCount();
                writer.Reset(buffer);
                JsonSerializer.Serialize(writer, answer, contract.TypeOf<RideAnswer>());
                writer.Flush();
                return buffer.WrittenCount;
            }
        ));
    }

    private static void Time(string call, params (string Name, Func<object?> Part)[] parts)
    {
        var (times, allocated) = (new double[parts.Length][], new long[parts.Length]);
        for (var part = 0; part < parts.Length; part++) times[part] = new double[Rounds];
        for (var round = -Rounds / 2; round < Rounds; round++)
        {
            for (var part = 0; part < parts.Length; part++)
            {
                var had = GC.GetAllocatedBytesForCurrentThread();
                var began = Stopwatch.GetTimestamp();
                parts[part].Part();
                if (round >= 0) times[part][round] = Stopwatch.GetElapsedTime(began).TotalMicroseconds;
                allocated[part] = GC.GetAllocatedBytesForCurrentThread() - had;
            }
        }

        Console.WriteLine($"{call}: part, least µs, median µs, bytes allocated");
        for (var part = 0; part < parts.Length; part++)
        {
            Array.Sort(times[part]);
            Console.WriteLine(FormattableString.Invariant($"  {parts[part].Name,-28} {times[part][0],8:0.0} {times[part][Rounds / 2],8:0.0} {allocated[part],8}"));
        }
    }
}
