using SetupService.Api.Http;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Geometry;

/// <summary>The left corner of the axle asked about, as the domain takes it.</summary>
/// <param name="Pointer">JSON Pointer to the axle.</param>
/// <param name="Axle">The axle.</param>
/// <param name="Setup">How the wheel is set.</param>
/// <param name="Radius">The loaded radius, where it is not the one measured.</param>
internal sealed record Corner(
    string Pointer, Axle Axle, WheelSetup Setup, Assumption? Radius)
{
    /// <summary>What is known of how the wheel moves.</summary>
    public SuspensionModel Suspension => Axle.Suspension;

    /// <summary>Figures left out, each with the inputs that would settle it where they stand in the request.</summary>
    public UnknownResponse[] Unknown(IEnumerable<FigureGap> gaps) =>
        [.. gaps.Select(gap => UnknownResponse.Create(gap.Output, gap.Reason, [.. gap.Needs.Select(PointerOfInput)]))];

    private string PointerOfInput(string input) =>
        input is "/axle" ? input
        : input is "/suspension/readings" ? Pointer + Suspension.ReadingsPointer
        : input is "/trackMm" || input.StartsWith("/suspension", StringComparison.Ordinal) || input.StartsWith("/alignment", StringComparison.Ordinal) ? Pointer + input
        : "/vehicle" + input;

    /// <summary>What the corner takes although nobody gave it, in order of what it does to the answer.</summary>
    public List<Assumption> Assumptions()
    {
        List<Assumption> list = [.. Suspension.Assumptions(Pointer, Setup)];
        if (Radius is { } radius) list.Insert(Math.Min(list.Count, IsDrawnByPoints ? 1 : 0), radius);
        return list;
    }

    /// <summary>True where every part's place is known, so that contact and linkage follow from it.</summary>
    public bool IsDrawnByPoints => Suspension.Tells.HasFlag(SuspensionFigures.SteeringLinkage);
}

/// <summary>Reads the corner a call is about out of its request.</summary>
internal static class CornerMapper
{
    /// <summary>The corner; refused where the vehicle is.</summary>
    public static MapResult<Corner> Map(CornerRequest request, AxleMotion? motion = null)
    {
        if (!VehicleMapper.Map(request.Vehicle).Under("vehicle").TryGet(out var vehicle, out var refusal)) return refusal;
        var axle = vehicle.At(request.Axle);
        var (radiusMm, assumed) = LoadedRadiusOf(vehicle, request.Axle, request.AxlePointer);
        var setup = new WheelSetup
        {
            CamberDeg = axle.Suspension.ReadCamberDeg ?? axle.Left.CamberDeg,
            ToeDeg = axle.Left.ToeDeg,
            LoadedRadiusMm = radiusMm,
            RideHeightChangeMm = axle.RideHeightChangeMm ?? 0,
            Motion = motion ?? AxleMotion.Parallel,
            TrackMm = axle.TrackMm ?? 0,
            StatedAxis = (axle.Left.CasterDeg, axle.Left.SteeringAxisInclinationDeg),
        };
        return new Corner(request.AxlePointer, axle, setup, assumed);
    }

    /// <summary>The measured one, else the static one of tyre and load, else a typical one, which only heights by a camber's cosine are told with.</summary>
    private static (double Mm, Assumption? Assumed) LoadedRadiusOf(Vehicle vehicle, CarAxle at, string pointer)
    {
        if (StandingRadius.Compute(vehicle, at) is not { } radius)
        {
            var usual = TypicalValues.LoadedRadiusMm;
            return (usual.Value, new(pointer + "/loadedRadiusMm", usual.Value, null, usual.Source, "Only how the body's height follows camber needs it here, by hundredths of a mm."));
        }

        return (radius.Mm, !radius.IsEstimated ? null : new(
            pointer + "/loadedRadiusMm", radius.Mm, null, StandingRadius.EstimateSource, "The height of the wheel centre above the ground was not measured; where the contact lies follows from it."));
    }
}
