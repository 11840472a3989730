using SetupService.Api.Http;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Cars;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Fitment.Check;

/// <summary>A request for a check, mapped and evaluated.</summary>
internal sealed class CheckedFitting
{
    /// <summary>An axle that was evaluated.</summary>
    public CheckedFitting(in CheckedAxle axle) => (Car, Candidate, Sheet) = (axle.Car, axle.Candidate, axle.Sheet);

    /// <summary>Evaluates a candidate on an axle of a car.</summary>
    public CheckedFitting(FitmentContext car, in Fitting candidate)
        : this(new CheckedAxle(car, candidate, new CheckSheet())) => FitmentCheck.Evaluate(car, candidate, Sheet);

    public FitmentContext Car { get; }

    public Fitting Candidate { get; }

    public CheckSheet Sheet { get; }

    /// <summary>Evaluates a request; refused where its mapping is.</summary>
    public static MapResult<CheckedFitting> Evaluate(CheckRequest request)
    {
        if (!CheckMapper.Map(request).TryGet(out var inputs, out var refusal))
            return refusal;
        var settings = FitmentMapper.Settings(request.Tolerances, request.Required, request.CamberChange);
        return new CheckedFitting(FitmentContext.Prepare(inputs.Vehicle, request.Axle, settings), inputs.Candidate);
    }

    /// <summary>The answer, in as much detail as asked for.</summary>
    /// <param name="units">Units of its texts.</param>
    /// <param name="detail">How much it tells.</param>
    /// <param name="member">Where the candidate stands in the request, as a JSON Pointer.</param>
    public CheckAnswer ToAnswer(UnitSystem units, CheckDetail detail, string member = CheckAnswers.Candidate) => CheckAnswers.Create(Car, Candidate, Sheet, units, detail, member);

    /// <summary>The inputs that would settle what is unknown.</summary>
    public IEnumerable<string> Needs(string member) => UnknownNeeds.All(Car, Candidate, Sheet).Select(need => CheckAnswers.Placed(need, member));

    /// <summary>One check as it stands in an answer.</summary>
    public CheckItem ToItem(CheckId id, UnitSystem units) => CheckAnswers.Item(Car, Candidate, id, Sheet[id], units);
}

/// <summary>Maps the request of a check to domain values.</summary>
internal static class CheckMapper
{
    /// <summary>The car and candidate of a check.</summary>
    public static MapResult<(Vehicle Vehicle, Fitting Candidate)> Map(CheckRequest request)
    {
        Refusal? refusal = null;
        var vehicle = VehicleMapper.MapForFitment(request.Vehicle).Take("vehicle", ref refusal);
        var candidate = FitmentMapper.Map(request.Candidate).Take("candidate", ref refusal);
        if (refusal is not null)
            return refusal;
        return (vehicle!, candidate);
    }
}
