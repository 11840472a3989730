using SetupService.Api.Http.Shared;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling.Ride;

/// <summary>What an answer on ride leaves null, and why.</summary>
internal static class RideGaps
{
    /// <summary>Of the car, and of the car before where something was changed.</summary>
    public static IEnumerable<UnknownResponse> Of(RideEvaluation car, RideEvaluation? before) =>
        Of(car, "").Concat(before is null ? [] : Of(before, "/before"));

    private static IEnumerable<UnknownResponse> Of(RideEvaluation car, string place) =>
        Of(car, CarAxle.Front, $"{place}/front").Concat(Of(car, CarAxle.Rear, $"{place}/rear"));

    private static IEnumerable<UnknownResponse> Of(RideEvaluation car, CarAxle at, string place)
    {
        var (axle, heightMm) = at == CarAxle.Front ? (car.Front, car.HeightMm.Front) : (car.Rear, car.HeightMm.Rear);
        var given = at == CarAxle.Front ? "/vehicle/front" : "/vehicle/rear";
        string[] ofDamper = [given + "/damper/bumpNsPerM", given + "/damper/reboundNsPerM"];
        string[] ofLength = [given + "/spring/freeLengthMm", given + "/spring/installedLengthMm"];
        const string Damper = "needs bumpNsPerM and reboundNsPerM of the damper; a usual damper would be a guess";
        if (axle.BumpRatio is null) yield return Gap("/dampingRatio/bump", Damper, ofDamper[0]);
        if (axle.ReboundRatio is null) yield return Gap("/dampingRatio/rebound", Damper, ofDamper[1]);
        if (axle.MeanRatio is null)
        {
            yield return Gap("/dampingRatio/mean", Damper, ofDamper);
            yield return Gap("/dampedFrequencyHz", Damper, ofDamper);
            yield return Gap("/dampers/feel", Damper, ofDamper);
        }

        if (axle.SpringLengthMm is null) yield return Gap("/springLengthMm", "needs the spring's freeLengthMm or installedLengthMm", ofLength);
        if (heightMm is null) yield return Gap("/rideHeightChangeMm", RideWords.HeightUnknown, ofLength);
        if (axle.BumpLeftMm is null)
        {
            yield return Gap("/bumpLeftMm", "needs bumpTravelMm", given + "/bumpTravelMm");
            yield return Gap("/stopMetAtVerticalG", "needs bumpTravelMm", given + "/bumpTravelMm");
            yield return Gap("/stopMetAtLateralG", "needs bumpTravelMm", given + "/bumpTravelMm");
        }
        else if (car.Stands.WheelbaseMm is null)
        {
            yield return Gap("/stopMetAtLateralG", "needs wheelbaseMm", "/vehicle/wheelbaseMm");
        }
        else if (car.StopMetAtLateralG(at) is null)
        {
            yield return Gap("/stopMetAtLateralG", "the car rolls over, or a wheel cannot follow, before this stop is met");
        }

        if (axle.DroopLeftMm is null) yield return Gap("/droopLeftMm", "needs reboundTravelMm", given + "/reboundTravelMm");
        if (axle.SeatedAtDroopMm is null) yield return Gap("/seatedAtDroopMm", "needs reboundTravelMm", given + "/reboundTravelMm");
        if (axle.CoilClearanceMm is null) yield return Gap("/coilClearanceMm", "needs the spring's solidLengthMm, its freeLengthMm or installedLengthMm, and bumpTravelMm", [given + "/spring/solidLengthMm", .. ofLength, given + "/bumpTravelMm"]);

        UnknownResponse Gap(string output, string reason, params string[] needs) =>
            UnknownResponse.Of(place + output, reason, needs);
    }
}
