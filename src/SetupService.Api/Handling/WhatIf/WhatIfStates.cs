using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Problems;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Handling.WhatIf;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling.WhatIf;

/// <summary>One state asked about: what it reaches, or why it is not answered.</summary>
/// <param name="Car">The car; null where it cannot be read or cannot stand.</param>
/// <param name="Outcome">What it reaches; null where <paramref name="Problem"/> is not.</param>
/// <param name="Problem">Why it is not answered; null where it is.</param>
internal sealed record WhatIfState(StandingCar? Car, WhatIfOutcome? Outcome, Problem? Problem);

/// <summary>Makes the changes of a request one by one and all together; the faults of one stay with it.</summary>
internal sealed class WhatIfStates(StandingCar given, VehicleDocument asGiven, WhatIfStudy study, ChangedDocument<VehicleDocument> stated, UnitSystem units)
{
    private ChangedDocument<VehicleDocument>? _document;
    private StandingCar? _car;
    private CarChange? _all;

    /// <summary>The car with one change alone.</summary>
    public WhatIfState Alone(CarChangeDocument change, int index)
    {
        var place = FormattableString.Invariant($"/changes/{index}");
        if (!CarChangeMapper.Make(stated, change, place).TryGet(out var made, out var refusal)) return new(null, null, Problem.Invalid(refusal));
        return State(made.Document, place, merged => (given.Changed(merged, made.Change, out var fault, units), fault), made.Change);
    }

    /// <summary>The car with this change made after all before it; the outcome only of the last.</summary>
    public WhatIfState Together(CarChangeDocument change, int index, bool isLast)
    {
        var place = FormattableString.Invariant($"/changes/{index}");
        if (!CarChangeMapper.Make(_document ?? stated, change, place).TryGet(out var made, out var refusal)) return new(null, null, Problem.Invalid(refusal));
        _document = made.Document;
        var all = _all = _all?.And(made.Change) ?? made.Change;
        var previous = _car ?? given;
        if (Read(_document, place, merged => (given.Changed(merged, all, made.Change, previous, out var fault, units), fault), made.Change, out var problem) is not { } car) return new(null, null, problem);
        _car = car;
        return isLast ? Solve(car, place) : new(car, null, null);
    }

    private WhatIfState State(ChangedDocument<VehicleDocument> document, string place, Func<Vehicle, (StandingCar?, StandingFault?)> stand, CarChange change) =>
        Read(document, place, stand, change, out var problem) is { } car ? Solve(car, place) : new(null, null, problem);

    private StandingCar? Read(
        ChangedDocument<VehicleDocument> document, string place, Func<Vehicle, (StandingCar? Car, StandingFault? Fault)> stand, CarChange change, out Problem? problem)
    {
        problem = null;
        if (!document.Read(WhatIfRules.Car).TryGet(out var read, out var refusal) || !VehicleMapper.MapChanged(read, asGiven, given.Stated).Under(place[1..] + "/vehicle").TryGet(out var merged, out refusal))
        {
            problem = Problem.Invalid(refusal);
            return null;
        }

        var (car, fault) = stand(merged);
        if (car is null) problem = ChangeProblems.CannotStand(fault!, change, place, units);
        return car;
    }

    private WhatIfState Solve(StandingCar car, string place)
    {
        var outcome = study.Changed(car);
        return outcome.Obstacle is { } obstacle ? new(car, null, ChangeProblems.CannotHold(obstacle, place, units)) : new(car, outcome, null);
    }
}
