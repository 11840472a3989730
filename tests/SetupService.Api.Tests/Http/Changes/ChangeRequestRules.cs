using FluentValidation;
using SetupService.Api.Http.Documents;
using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;

namespace SetupService.Api.Tests.Http.Changes;

/// <summary>The rules of the request, as a call writes them.</summary>
public sealed class ChangeRequestRules : AbstractValidator<ChangeRequest>
{
    public ChangeRequestRules()
    {
        PointsRules points = new();
        RuleFor(request => request.Vehicle).SetValidator(points);
        RuleFor(request => request.Change).ChangesSoundly(request => request.Vehicle, nameof(ChangeRequest.Vehicle), points);
        RuleFor(request => request.Changes)
            .EachChangesSoundly(one => one.Vehicle, nameof(NamedChange.Vehicle), request => request.Vehicle, nameof(ChangeRequest.Vehicle), points);
    }

    /// <summary>What a call may ask of a car beyond the car's own rules.</summary>
    private sealed class PointsRules : AbstractValidator<VehicleDocument>
    {
        public PointsRules()
        {
            RuleFor(car => car.Front!.Suspension).WithoutContradictions().When(car => car.Front is not null);
        }
    }
}
