using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment.Cars;

/// <summary>
/// Holds candidates against many cars, every pair with the verdict of the single check. A pair that fails on bolt circle, centre bore, rim diameter, rim width or
/// overall diameter is worked no further (<see cref="FirstLook"/>). Belongs to one thread at a time.
/// </summary>
public sealed class CatalogueCheck
{
    private readonly FitmentCar[] _cars;
    private readonly FirstLook _front;
    private readonly FirstLook _rear;
    private readonly long[] _frontFailed;
    private readonly long[] _rearFailed;
    private readonly bool _usesFront;
    private readonly bool _usesRear;
    private readonly CarSheet _sheet = new();

    /// <summary>Lays out the cars.</summary>
    public CatalogueCheck(IReadOnlyList<FitmentCar> cars)
    {
        ArgumentNullException.ThrowIfNull(cars);
        _cars = [.. cars];
        _front = new([.. cars.Select(static car => car.Vehicle.Front)]);
        _rear = new([.. cars.Select(static car => car.Vehicle.Rear)]);
        (_frontFailed, _rearFailed) = (new long[_front.Length], new long[_rear.Length]);
        _usesFront = Array.Exists(_cars, static car => car.Axle != CarAxle.Rear);
        _usesRear = Array.Exists(_cars, static car => car.Axle != CarAxle.Front);
    }

    /// <summary>The checks of the first look.</summary>
    public static CheckIdSet FirstLookChecks => default(CheckIdSet)
        .With(CheckId.BoltCircle).With(CheckId.CentreBore).With(CheckId.RimDiameter).With(CheckId.RimWidth).With(CheckId.OverallDiameter);

    /// <summary>Number of cars.</summary>
    public int CarCount => _cars.Length;

    /// <summary>Writes the verdict on a candidate for each car, in their order.</summary>
    public void Evaluate(in CarCandidate candidate, Span<PairVerdict> verdicts)
    {
        Look(_front, candidate.At(CarAxle.Front), _usesFront || candidate.NamesAxles, _frontFailed);
        Look(_rear, candidate.At(CarAxle.Rear), _usesRear || candidate.NamesAxles, _rearFailed);
        for (var i = 0; i < _cars.Length; i++)
        {
            var car = _cars[i];
            var failed = Bits(candidate, car, CarAxle.Front, _frontFailed[i]) | Bits(candidate, car, CarAxle.Rear, _rearFailed[i]);
            verdicts[i] = failed != 0 ? new(CheckStatus.Fail, new((uint)failed), double.NaN) : Whole(car, candidate);
        }
    }

    private static void Look(FirstLook look, in Fitting? fitting, bool isUsed, Span<long> failed)
    {
        if (fitting is { } candidate && isUsed)
            look.Find(candidate, failed);
        else
            failed.Clear();
    }

    private static long Bits(in CarCandidate candidate, FitmentCar car, CarAxle axle, long failed) => candidate.NamesAxles || car.Axle is null || car.Axle == axle ? failed : 0;

    private PairVerdict Whole(FitmentCar car, in CarCandidate candidate)
    {
        _sheet.Evaluate(car, candidate);
        return new(_sheet.Verdict, _sheet.DecidedBy, _sheet.GoverningMargin?.ProbableMm ?? double.NaN);
    }
}

/// <summary>The verdict on a candidate on a car.</summary>
/// <param name="Verdict">That of the single check.</param>
/// <param name="DecidedBy">The checks it was made by: as in the single check, but of a pair that fails on the first look those of the first look alone.</param>
/// <param name="ProbableMm">Probable room at the place with least of it in the worst case, mm; NaN where no room is known, and where the first look decided.</param>
public readonly record struct PairVerdict(CheckStatus Verdict, CheckIdSet DecidedBy, double ProbableMm);
