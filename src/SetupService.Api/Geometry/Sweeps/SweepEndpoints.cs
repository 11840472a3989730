using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Vehicles;
using SetupService.Domain.Geometry.Measured;
using SetupService.Domain.Geometry.Mechanism;
using SetupService.Domain.Geometry.Sweeps;

namespace SetupService.Api.Geometry.Sweeps;

/// <summary>The call that moves a corner over its travel and rack.</summary>
internal static class SweepEndpoints
{
    private static readonly TravelSweepRules Rules = new();

    public static void MapSweeps(this RouteGroupBuilder group) =>
        group.MapPost("/travel-sweep", Sweep)
            .WithQuery(QueryParameters.Units)
            .WithExample("travel-sweep")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("travelSweep")
            .WithSummary("What does the wheel do over its travel and lock?")
            .WithDescription("Moves a corner over wheel travel and rack: angles, contact, instant and roll centres, motion ratios, bump steer, both wheels' steer. At most 5,000 rows. With Accept: image/svg+xml the same as charts.");

    private static Results<PictureOr<TravelSweepAnswer>, Problem> Sweep(Body<TravelSweepRequest> body, PictureChoice picture, QueryReader query, CancellationToken cancellation)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!Rules.Validate(request).IsValid)
            return body.Refuse();
        if (MeasuredInputs.TryRead(request.Suspension, request.Alignment, request.GaugeErrorDeg, out var measured))
            return SweepMeasured(request, measured, picture, query);
        if (SuspensionReading.Read(request.Suspension) is not { } suspension)
            return body.Refuse();

        var corner = MechanismMaker.Of(SweepInputs.Setting(suspension, request.Alignment, request.LoadedRadiusMm, request.Motion));
        var axle = SweepInputs.Axle(request);
        var rack = request.RackMm?.ToRange() ?? SweepRange.Only(0);
        if (TravelSweep.Start(corner, request.TravelMm.ToRange(), rack, axle) is not { } sweep)
            return GeometryProblems.NothingHolds();

        var assumptions = GeometryAssumptions.ForSweep(request.Suspension, request.Alignment, request.MeasuringDiameterMm, request.Motion is not null);
        GeometryAssumptions.AddUnused(assumptions, request.Suspension, request.Motion is not null, request.GaugeErrorDeg is not null, request.TrackMm is not null);
        if (TravelSweepAnswers.Of(sweep, corner, axle, assumptions, cancellation, out var missed, query.Units) is not { } answer)
            return GeometryProblems.NothingReached(corner, missed!.Value);
        return Shown(request, answer, picture, query);
    }

    private static Results<PictureOr<TravelSweepAnswer>, Problem> SweepMeasured(TravelSweepRequest request, MeasuredCorner corner, PictureChoice picture, QueryReader query) =>
        MeasuredSweepAnswers.Of(request, corner, query.Units) is { } answer
            ? Shown(request, answer, picture, query)
            : MeasuredInputs.NotTold("/travelMm", MeasuredWords.BeyondReadings(request.TravelMm.From, corner.FirstMm, corner.LastMm));

    private static PictureOr<TravelSweepAnswer> Shown(TravelSweepRequest request, TravelSweepAnswer answer, PictureChoice picture, QueryReader query) =>
        picture.IsWanted ? new(new SvgAnswer(SweepChart.Draw(request, answer, query.Units))) : new(answer);
}
