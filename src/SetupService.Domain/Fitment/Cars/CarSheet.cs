using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment.Cars;

/// <summary>
/// The results of one candidate on one car: a sheet for each axle that changes, and what they come to together. Written again for each candidate;
/// belongs to one thread at a time.
/// </summary>
public sealed class CarSheet
{
    private readonly CheckSheet _front = new();
    private readonly CheckSheet _rear = new();
    private CheckSheet _tightest;

    /// <summary>An empty sheet.</summary>
    public CarSheet() => _tightest = _front;

    /// <summary>The front axle with what is put on it; null where nothing is.</summary>
    public CheckedAxle? Front { get; private set; }

    /// <summary>The rear axle with what is put on it; null where nothing is.</summary>
    public CheckedAxle? Rear { get; private set; }

    /// <summary>The axle that changes, where it is one.</summary>
    /// <exception cref="InvalidOperationException">Both axles change, or nothing was evaluated.</exception>
    public CheckedAxle OneAxle => (Front is null ? Rear : Rear is null ? Front : null) ?? throw new InvalidOperationException("No axle, or more than one, was evaluated.");

    /// <summary>The gravest verdict of the axles that change.</summary>
    public CheckStatus Verdict { get; private set; }

    /// <summary>The checks that made the verdict, at either axle.</summary>
    public CheckIdSet DecidedBy { get; private set; }

    /// <summary>The checks that failed at either axle.</summary>
    public CheckIdSet Failed { get; private set; }

    /// <summary>The checks that are a caution at either axle.</summary>
    public CheckIdSet Cautioned { get; private set; }

    /// <summary>The checks that are unknown at either axle.</summary>
    public CheckIdSet Unknown { get; private set; }

    /// <summary>The place with least room in the worst case at either axle; null where no room is known.</summary>
    public CheckId? Governing => _tightest.Governing;

    /// <summary>The room there.</summary>
    public Margin? GoverningMargin => _tightest.GoverningMargin;

    /// <summary>Evaluates a candidate on a car. Where both axles change, each is held against the other's new tyre.</summary>
    public void Evaluate(FitmentCar car, in CarCandidate candidate)
    {
        ArgumentNullException.ThrowIfNull(car);
        var (front, rear) = (candidate.On(car, CarAxle.Front), candidate.On(car, CarAxle.Rear));
        Front = Evaluate(car, CarAxle.Front, front, rear, _front);
        Rear = Evaluate(car, CarAxle.Rear, rear, front, _rear);
        if (front is null || rear is null)
        {
            CopyFrom(front is null ? _rear : _front);
            return;
        }

        Verdict = Gravity(_rear.Verdict) > Gravity(_front.Verdict) ? _rear.Verdict : _front.Verdict;
        DecidedBy = new(By(_front) | By(_rear));
        (Failed, Cautioned, Unknown) = (new(_front.Failed.Bits | _rear.Failed.Bits), new(_front.Cautioned.Bits | _rear.Cautioned.Bits), new(_front.Unknown.Bits | _rear.Unknown.Bits));
        _tightest = _front.GoverningMargin is not { } here || _rear.GoverningMargin?.WorstCaseMm < here.WorstCaseMm ? _rear : _front;

        uint By(CheckSheet sheet) => sheet.Verdict == Verdict ? sheet.DecidedBy.Bits : 0;
    }

    private void CopyFrom(CheckSheet sheet)
    {
        (Verdict, DecidedBy, Failed, Cautioned, Unknown) = (sheet.Verdict, sheet.DecidedBy, sheet.Failed, sheet.Cautioned, sheet.Unknown);
        _tightest = sheet;
    }

    /// <summary>How grave a verdict is, from 0 for a pass.</summary>
    internal static int Gravity(CheckStatus verdict) => verdict switch
    {
        CheckStatus.Fail => 3,
        CheckStatus.Unknown => 2,
        CheckStatus.Caution => 1,
        _ => 0,
    };

    private static CheckedAxle? Evaluate(FitmentCar car, CarAxle axle, in Fitting? candidate, in Fitting? other, CheckSheet sheet)
    {
        if (candidate is not { } fitting) return null;
        var context = car.At(axle);
        if (other is { } changed) context = context.WithOpposite(changed.Tyre);
        FitmentCheck.Evaluate(context, fitting, sheet);
        return new(context, fitting, sheet);
    }
}

/// <summary>An axle with what is put on it, evaluated.</summary>
/// <param name="Car">The axle as it is checked.</param>
/// <param name="Candidate">What is put on it.</param>
/// <param name="Sheet">The results; written again for the next candidate.</param>
public readonly record struct CheckedAxle(FitmentContext Car, Fitting Candidate, CheckSheet Sheet);
