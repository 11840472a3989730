using SetupService.Api.Http.Shared;
using SetupService.Domain.Geometry.Alignment;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Planning.Sheets;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.BeforeAfter;
using SetupService.Domain.Wear.Pressures;

namespace SetupService.Api.Plans.Sheets;

/// <summary>What the sheets leave blank, each with the reason.</summary>
internal static class SheetGaps
{
    /// <summary>The gaps, in the order of the answer.</summary>
    public static IEnumerable<UnknownResponse> Find(SheetedPlan sheet, PlanSheetsAnswer answer)
    {
        if (answer.WorkOrder.Steps.Any(step => step.Torques.Any(one => one.TorqueNm is null)))
            yield return UnknownResponse.Create("torqueNm", "torques are told only as given: look the others up in the makers' papers for this car and these parts", "/torques");
        if (sheet.Work.Parts.Any(one => one.Axles.Count == 0))
            yield return UnknownResponse.Create("axle", $"at which axle these parts belong is told by no change and no shared strip-down: {string.Join(", ", sheet.Work.Parts.Where(one => one.Axles.Count == 0).Select(one => one.Part.Id))}", "/parts");
        var silent = sheet.Work.Parts.Where(one => sheet.Request.Parts.Any(part => part.Id == one.Part.Id && part.LabourHours is null)).Select(one => one.Part.Id).ToList();
        if (silent.Count > 0) yield return UnknownResponse.Create("labourHours", $"hours were not given of {string.Join(", ", silent)}; they count as none", "/parts");
        foreach (var one in Alignment(sheet, answer)) yield return one;
        foreach (var one in Pressures(sheet, answer)) yield return one;
        foreach (var one in Tyres(sheet, answer)) yield return one;
        foreach (var one in Test(sheet, answer)) yield return one;
    }

    private static IEnumerable<UnknownResponse> Alignment(SheetedPlan sheet, PlanSheetsAnswer answer)
    {
        for (var i = 0; i < answer.Alignment.Lines.Length; i++)
        {
            var line = answer.Alignment.Lines[i];
            if (line.Angle == AlignmentAngle.TotalToe) continue;
            var (at, axle) = (FormattableString.Invariant($"/alignment/lines/{i}"), CorneringWords.Name(line.Axle));
            var member = line.Angle switch { AlignmentAngle.Camber => "camberDeg", AlignmentAngle.Caster => "casterDeg", _ => "toeDeg" };
            var isGiven = Given(sheet, line) is not null;
            if (line.NowDeg is null) yield return UnknownResponse.Create(at + "/nowDeg", isGiven ? AnglesAtRide.NotKnown : $"the {axle} {member[..^3]} was not given: read it as found", isGiven ? [] : [$"/vehicle/{axle}/alignment/{member}"]);
            if (line.TargetDeg is null) yield return UnknownResponse.Create(at + "/targetDeg", line.NowDeg is null ? "what it is now is not known: leave it as found, or set the vehicle maker's figure" : "how it moves with the ride height is not known: read it, and set the vehicle maker's figure where it can be set", isGiven ? [] : [$"/vehicle/{axle}/alignment/{member}"]);
        }

        for (var i = 0; i < answer.Alignment.RideHeights.Length; i++)
        {
            var line = answer.Alignment.RideHeights[i];
            var (at, axle) = (FormattableString.Invariant($"/alignment/rideHeights/{i}"), CorneringWords.Name(line.Axle));
            if (line.NowMm is null) yield return UnknownResponse.Create(at + "/nowMm", "the height now was not given: read it as found, the change comes on top", $"/{axle}ArchHeightMm");
            if (line.ChangeMm is null)
            {
                var gap = sheet.Package.Evaluated.Car!.Unknown.FirstOrDefault(one => one.At == line.Axle && one.Figure == FollowingFigure.RideHeight);
                yield return UnknownResponse.Create(at + "/changeMm", gap?.Reason ?? "how much lower or higher these springs stand is not told by what is known of them", [.. (gap?.Needs ?? []).Select(need => "/vehicle" + need)]);
            }
        }
    }

    private static double? Given(SheetedPlan sheet, AlignmentLineResponse line)
    {
        var axle = sheet.Plan.Inputs.Vehicle.At(line.Axle);
        var wheel = line.Side == Domain.Suspension.Steering.WheelSide.Right ? axle.Right : axle.Left;
        return line.Angle switch { AlignmentAngle.Camber => wheel.CamberDeg, AlignmentAngle.Caster => wheel.CasterDeg, _ => wheel.ToeDeg };
    }

    private static IEnumerable<UnknownResponse> Pressures(SheetedPlan sheet, PlanSheetsAnswer answer)
    {
        for (var i = 0; i < answer.Pressures.Length; i++)
        {
            var (line, at) = (answer.Pressures[i], FormattableString.Invariant($"/pressures/{i}"));
            var isOther = SheetsAnswers.IsOther(sheet, line.Position);
            var axle = CorneringWords.Name(WheelPositions.AxleOf(line.Position));
            var read = Array.FindIndex(sheet.Request.Wear?.Tyres ?? [], tyre => tyre.Position == line.Position);
            var readings = read < 0 ? "/wear/tyres" : FormattableString.Invariant($"/wear/tyres/{read}/pressureKpa");
            var isByPlate = sheet.Plan.Case.Use.TrackDays <= 0 && line.ColdKpa is not null && line.ColdKpa == line.PlateKpa;
            const string OfTrack = "hot pressures are a matter of the track, and the car is stated to see none";
            const string Another = "another tyre than was read is put on: its pressures are read after the work";
            if (line.ColdKpa is null) yield return UnknownResponse.Create(at + "/coldKpa", isOther ? Another : "needs the cold pressure that is set now, above what the load needs, or the car's plate", isOther ? [] : [readings, $"/vehicle/{axle}/placardPressureKpa"]);
            if (line.RoadColdKpa is null) yield return UnknownResponse.Create(at + "/roadColdKpa", isOther ? Another : "the car's plate was not given, and nothing else tells it", isOther ? [] : [$"/vehicle/{axle}/placardPressureKpa"]);
            if (line.HotKpa is null) yield return UnknownResponse.Create(at + "/hotKpa", isOther ? Another : isByPlate ? OfTrack : "needs the cold and the hot pressure of one session", isOther || isByPlate ? [] : [readings]);
            if (line.AimHotKpa is null) yield return UnknownResponse.Create(at + "/aimHotKpa", isOther ? Another : isByPlate ? OfTrack : "no hot aim was stated", isOther || isByPlate ? [] : [readings]);
            var need = LoadNeed.Compute(sheet.Package.Evaluated.Car!.Stated, line.Position);
            if (line.LeastColdKpa is null) yield return UnknownResponse.Create(at + "/leastColdKpa", PressureWords.Gap(need.Gap));
            if (line.PlateKpa is null) yield return UnknownResponse.Create(at + "/plateKpa", "the car's plate was not given", $"/vehicle/{axle}/placardPressureKpa");
        }
    }

    private static IEnumerable<UnknownResponse> Tyres(SheetedPlan sheet, PlanSheetsAnswer answer)
    {
        for (var i = 0; i < answer.Tyres.Length; i++)
        {
            var (tyre, at) = (answer.Tyres[i], FormattableString.Invariant($"/tyres/{i}"));
            var why = tyre.IsOther ? "another tyre than was read: fill it in" : "not given: fill it in";
            if (tyre.Marking is null) yield return UnknownResponse.Create(at + "/marking", why, $"/vehicle/{CorneringWords.Name(WheelPositions.AxleOf(tyre.Position))}/tyre/marking");
            if (tyre.MadeWeek is null) yield return UnknownResponse.Create(at + "/madeWeek", why);
            if (tyre.DepthMm is null) yield return UnknownResponse.Create(at + "/depthMm", why);
        }
    }

    private static IEnumerable<UnknownResponse> Test(SheetedPlan sheet, PlanSheetsAnswer answer)
    {
        var test = answer.Test;
        if (test.LapsPerSession is null)
        {
            yield return UnknownResponse.Create("/test/lapsPerSession", "the car is stated to see no track", "/lapsPerSession");
            yield return UnknownResponse.Create("/test/plannedLaps", "the car is stated to see no track", "/lapsPerSession");
        }

        if (test.ExpectedRatio is null) yield return UnknownResponse.Create("/test/expectedRatio", sheet.Work.IsAsItStands ? "nothing is changed" : "tread life with the package is not known, or stays as it is", sheet.Work.IsAsItStands ? [] : ["/expectedRatio", "/wear"]);
        if (sheet.Request.Before is null) yield return UnknownResponse.Create("enough", $"needs at least {WearComparison.FewestReadings} readings of the depths after different laps or distances, with the car as it is", "/before");
    }
}
