using System.Diagnostics.CodeAnalysis;
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

    /// <summary>False where a text in the request cannot be read.</summary>
    public static bool TryEvaluate(CheckRequest request, [NotNullWhen(true)] out CheckedFitting? done)
    {
        var settings = FitmentReading.Settings(request.Tolerances, request.Required, request.CamberChange);
        done = FitmentReading.TryReadCar(request.Vehicle, request.Axle, settings, out var car)
            && FitmentReading.TryReadFitting(request.Candidate, out var candidate)
                ? new CheckedFitting(car, candidate)
                : null;
        return done is not null;
    }

    public CheckAnswer ToAnswer(UnitSystem units) => CheckAnswers.Of(Car, Candidate, Sheet, units);
}
