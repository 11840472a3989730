using SetupService.Api.Http.Shared;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.TreadWear;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>What a diagnosis leaves unknown, each with the reason.</summary>
internal static class DiagnosisGaps
{
    private const string Model = "wearModel";
    private static readonly string[] OfProfile = ["depthMm", "wornMm", "outerLessInnerPct", "centreLessShouldersPct"];
    private static readonly string[] OfDepths = [.. OfProfile, "leastDepthMm"];

    /// <summary>All of them.</summary>
    public static UnknownResponse[] Find(DiagnosedCar car)
    {
        var list = new List<UnknownResponse>();
        if (!car.Study.Diagnosis.IsAnythingRead) list.Add(Gap("causes", "nothing was read that shows wear: the probabilities are only how often each cause occurs on cars whose owners ask", "/tyres"));
        if (car.NoModel is { } why) list.Add(Gap(Model, why.Reason, why.Needs));
        foreach (var axle in (CarAxle[])[CarAxle.Front, CarAxle.Rear])
        {
            if (car.Car is not null && car.Study.At(axle) is null)
                list.Add(Gap(Model, $"the model of the {CorneringWords.Name(axle)} axle does not come to rest on these readings"));
        }

        for (var i = 0; i < car.Request.Tyres.Length; i++)
        {
            var tyre = car.Request.Tyres[i];
            var (place, read) = (FormattableString.Invariant($"/tread/{i}"), FormattableString.Invariant($"/tyres/{i}"));
            var isUnread = TreadFigures.Compute(car.Study.Case.Tyres[i]) is null;
            if (tyre is { DepthMm: null, Zones: null }) list.AddRange(OfDepths.Select(one => Gap($"{place}/{one}", "needs depths across the tread", read + "/depthMm", read + "/zones")));
            else if (isUnread) list.AddRange(OfProfile.Select(one => Gap($"{place}/{one}", "the zones are too close together for a profile", read + "/zones")));
            if (tyre.AroundMm is null) list.Add(Gap(place + "/roundTyreMm", "needs aroundMm: depths at further places round the tyre", read + "/aroundMm"));
            if (tyre.MadeWeek is null) list.Add(Gap(place + "/ageYears", "needs madeWeek", read + "/madeWeek"));
            if (car.Car is null || isUnread) list.Add(Gap(place + "/predictedDepthMm", "needs the wear model, and depths across the tread", [.. car.NoModel?.Needs ?? [], .. isUnread ? new[] { read + "/depthMm", read + "/zones" } : []]));
        }

        if (car.Car is not null)
        {
            LearnedTread[] learned = [.. ((LearnedTread?[])[car.Study.Front, car.Study.Rear]).OfType<LearnedTread>()];
            for (var i = 0; i < learned.Length; i++)
            {
                var at = learned[i].Axle.Axle;
                if (!TreadLifeVoice.ModelContradictsShoulders(car.Study, at)) continue;
                var end = CorneringWords.Name(at);
                var (wanted, unwanted) = car.Study.ShortAt(at).ByTreads is { Value: > 0 } ? ("more", "less") : ("less", "more");
                foreach (var member in (string[])["withCamberSet", "longestLife"])
                    list.Add(Gap(FormattableString.Invariant($"/{Model}/{i}/{member}"), $"the {end} shoulders as read ask for {wanted} negative camber, the learned wear model for {unwanted}: what was read is followed, and the model tells nothing of another camber"));
            }

            list.Add(Gap(Model, "what it cannot know: wear rates are of the roads, tracks, season and driver the tyres saw; the same tyre wears up to a third faster or slower weeks apart (Tire Sci. Technol. 13(1))"));
            list.Add(Gap(Model, "outer wear shows camber and hard cornering together, so the model cannot separate them; the cornering model is trusted to 1.5°"));
        }

        return [.. list];
    }

    private static UnknownResponse Gap(string output, string reason, params string[] needs) => UnknownResponse.Create(output, reason, needs);
}
