using System.Text.Json.Nodes;

namespace SetupService.Benchmarks.Service;

/// <summary>A call of the service that has a peer in the same process.</summary>
/// <param name="Path">The call.</param>
/// <param name="Peer">The peer's name.</param>
/// <param name="Example">The example request sent.</param>
internal sealed record PeeredCall(string Path, string Peer, string Example)
{
    // 61 rows from −60 to 60 mm.
    private const double SweepStepMm = 2;

    public static PeeredCall Check { get; } = new("/v1/fitment/check", "check", "fitment-check.request.json");

    public static PeeredCall Sweep { get; } = new("/v1/geometry/travel-sweep", "travel-sweep", "travel-sweep.request.json");

    public static PeeredCall Cornering { get; } = new("/v1/handling/cornering", "cornering", "cornering.request.json");

    public static PeeredCall Turn { get; } = new("/v1/handling/cornering?detail=turn", "turn", "cornering.request.json");

    public static PeeredCall Ride { get; } = new("/v1/handling/ride", "ride", "ride.request.json");

    public static PeeredCall RideAxles { get; } = new("/v1/handling/ride?detail=axles", "ride-axles", "ride.request.json");

    public static PeeredCall CamberTarget { get; } = new("/v1/handling/camber-target", "camber-target", "camber-target.request.json");

    public static IReadOnlyList<PeeredCall> All { get; } = [Check, Sweep, Cornering, Turn, Ride, RideAxles, CamberTarget];

    public string PeerPath => "/peer/" + Peer;

    public string PreparePath => $"/peer/{Peer}/prepare";

    public byte[] Body()
    {
        var bytes = File.ReadAllBytes(System.IO.Path.Combine(AppContext.BaseDirectory, Example));
        if (this != Sweep) return bytes;
        var request = JsonNode.Parse(bytes)!;
        request["travelMm"]!["step"] = SweepStepMm;
        return System.Text.Encoding.UTF8.GetBytes(request.ToJsonString());
    }
}
