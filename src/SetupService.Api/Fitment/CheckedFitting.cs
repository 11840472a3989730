using SetupService.Api.Http;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Fitment;

/// <summary>A request for a check, read and evaluated.</summary>
internal sealed class CheckedFitting
{
    private CheckedFitting(AxleUnderCheck car, in Domain.Fitment.Fitting candidate)
    {
        Car = car;
        Candidate = candidate;
        FitmentCheck.Evaluate(car, candidate, Sheet);
    }

    public AxleUnderCheck Car { get; }

    public Domain.Fitment.Fitting Candidate { get; }

    public CheckSheet Sheet { get; } = new();

    /// <summary>Evaluates a request; refused where its mapping is.</summary>
    public static MapResult<CheckedFitting> Evaluate(CheckRequest request)
    {
        if (!FitmentMapper.Map(request).TryGet(out var inputs, out var refusal))
            return refusal;
        var settings = FitmentMapper.Settings(request.Tolerances, request.Required, request.CamberChange);
        return new CheckedFitting(AxleUnderCheck.Prepare(inputs.Vehicle, request.Axle, settings), inputs.Candidate);
    }

    public CheckAnswer ToAnswer(UnitSystem units) => CheckAnswers.Of(Car, Candidate, Sheet, units);
}
