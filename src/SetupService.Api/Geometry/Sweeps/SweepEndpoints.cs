using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Vehicles;
using SetupService.Domain.Geometry.Measured;
using SetupService.Domain.Geometry.Mechanism;
using SetupService.Domain.Geometry.Sweeps;

namespace SetupService.Api.Geometry.Sweeps;

/// <summary>The call that moves a corner over its travel and rack.</summary>
internal static class SweepEndpoints
{
    public static void MapSweeps(this RouteGroupBuilder group) =>
        group.MapPost("/travel-sweep", Sweep)
            .WithExample("travel-sweep")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("travelSweep")
            .WithSummary("What does the wheel do over its travel and lock?")
            .WithDescription("Moves a corner over wheel travel and rack: angles, contact, instant and roll centres, motion ratios, bump steer, both wheels' steer. At most 5,000 rows. With Accept: image/svg+xml the same as charts.");

    private static Results<PictureOr<TravelSweepAnswer>, Problem> Sweep(Body<TravelSweepRequest> body, PictureChoice picture, CancellationToken cancellation)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (MeasuredInputs.TryRead(request.Suspension, request.Alignment, request.GaugeErrorDeg, out var measured))
            return SweepMeasured(request, measured);
        if (SuspensionReading.Read(request.Suspension) is not { } suspension || request.Alignment is not { CamberDeg: not null, ToeDeg: not null })
            return body.Refuse();

        var corner = MechanismMaker.Of(SweepInputs.Setting(suspension, request.Alignment, request.LoadedRadiusMm, request.Motion));
        var axle = SweepInputs.Axle(request);
        var rack = request.RackMm?.ToRange() ?? SweepRange.Only(0);
        if (TravelSweep.Start(corner, request.TravelMm.ToRange(), rack, axle) is not { } sweep)
            return GeometryProblems.NothingHolds();

        var assumptions = GeometryAssumptions.ForSweep(request.Suspension, request.Alignment, request.MeasuringDiameterMm, request.Motion is not null);
        if (TravelSweepAnswers.Of(sweep, corner, axle, assumptions, cancellation, out var missed) is not { } answer)
            return GeometryProblems.NothingReached(corner, missed!.Value);
        return new PictureOr<TravelSweepAnswer>(answer);
    }

    private static Results<PictureOr<TravelSweepAnswer>, Problem> SweepMeasured(TravelSweepRequest request, MeasuredCorner corner) =>
        MeasuredSweepAnswers.Of(request, corner) is { } answer
            ? new PictureOr<TravelSweepAnswer>(answer)
            : MeasuredInputs.NotTold("/travelMm", MeasuredWords.BeyondReadings(request.TravelMm.From, corner.FirstMm, corner.LastMm));
}
