using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment;

/// <summary>The inputs that would settle an unknown check, as JSON Pointers into the request.</summary>
public static class UnknownNeeds
{
    /// <summary>The inputs, most useful first; where measurements contradict each other, those. Empty where no input of the request can settle it.</summary>
    public static IReadOnlyList<string> Find(FitmentContext car, in Fitting candidate, CheckId id, in CheckResult result)
    {
        ArgumentNullException.ThrowIfNull(car);
        var axle = car.Position == CarAxle.Front ? "/vehicle/front" : "/vehicle/rear";
        var other = car.Position == CarAxle.Front ? "/vehicle/rear" : "/vehicle/front";
        return id switch
        {
            _ when result.Reason == UnknownReason.TyreSizeUnknown =>
                [!candidate.Tyre.Marking.HasDimensions ? "/candidate/tyre/marking" : (id == CheckId.AxleDiameterMatch ? other : axle) + "/tyre/marking"],
            <= CheckId.SpringSeatClearance => ForClearance(car, axle, id, result.Reason),
            CheckId.ArchCover => ForClearance(car, axle, CheckId.OutboardClearance, result.Reason),
            CheckId.LoadCapacity => ForLoad(car, candidate, axle, result),
            CheckId.SpeedRating => result.Reason is UnknownReason.MarkingSilent or UnknownReason.BeyondSpeedSymbol ? ["/candidate/tyre/marking"] : ["/vehicle/topSpeedKmh"],
            CheckId.WheelLoadRating => Missing(
                (candidate.Wheel.LoadRatingKg is null, "/candidate/wheel/loadRatingKg"), (car.LoadPerWheelKg is null, axle + "/maximumAxleLoadKg")),
            CheckId.BoltCircle => Missing(
                (candidate.Wheel.BoltCircle is null, "/candidate/wheel/boltCircle"), (car.HubBoltCircle is null, axle + "/hub/boltCircle")),
            CheckId.CentreBore => Missing(
                (candidate.Wheel.CentreBoreMm is null, "/candidate/wheel/centreBoreMm"), (car.Axle.Hub.CentreBoreMm is null, axle + "/hub/centreBoreMm")),
            CheckId.Fastener => result.Reason == UnknownReason.SpacerOwnFasteners ? [] : ForFastener(car, candidate, axle),
            CheckId.BrakeClearance => ForBrake(car, candidate, axle, result.Reason),
            CheckId.AxleDiameterMatch => [other + "/tyre/marking"],
            CheckId.OverallDiameter => [axle + "/tyre/marking"],
            _ => [],
        };
    }

    /// <summary>
    /// The inputs that would settle everything unknown on a sheet, in order of worth: those that the verdict waits for first, and of them the wheel and tyre
    /// fitted now before the gaps that only mean something with them; no input twice.
    /// </summary>
    public static IReadOnlyList<string> All(FitmentContext car, in Fitting candidate, CheckSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var list = new List<string>();
        if (sheet.Verdict == CheckStatus.Unknown) Add(sheet.DecidedBy, car, candidate);
        Add(sheet.Unknown, car, candidate);
        return list;

        void Add(CheckIdSet checks, FitmentContext of, in Fitting fitting)
        {
            foreach (var id in checks)
            {
                foreach (var pointer in Find(of, fitting, id, sheet[id]))
                {
                    if (!list.Contains(pointer)) list.Add(pointer);
                }
            }
        }
    }

    private static string[] ForClearance(FitmentContext car, string axle, CheckId place, UnknownReason reason)
    {
        var gap = axle + "/clearance/" + place switch
        {
            CheckId.InboardClearance => "inboardMm",
            CheckId.OutboardClearance => "outboardMm",
            CheckId.RadialClearance => "radialMm",
            CheckId.FullLockClearance => "inboardAtFullLockMm",
            _ => "springSeatMm",
        };
        return reason switch
        {
            UnknownReason.GapMissing => [.. Missing((car.Axle.Wheel is null, axle + "/wheel"), (car.Axle.Tyre is null, axle + "/tyre")), gap],
            UnknownReason.PresentFittingMissing => Missing((car.Axle.Wheel is null, axle + "/wheel"), (car.Axle.Tyre is null, axle + "/tyre")),
            UnknownReason.MeasurementsContradict => [gap, axle + (car.Travel.Upward is null ? "/clearance/measuredAt" : "/bumpTravelMm")],
            UnknownReason.BumpTravelMissing => [axle + "/bumpTravelMm"],
            UnknownReason.CamberCurveMissing or UnknownReason.PointsContradict or UnknownReason.PointsDoNotHold => [.. (car.Travel.Path?.Needs ?? []).Select(need => axle + need)],
            UnknownReason.TravelNotReached => [axle + "/bumpTravelMm", .. (car.Travel.Path?.Needs ?? []).Select(need => axle + need)],
            _ => Missing(
                (car.Settings.CamberChange?.PivotHeightMm is null, "/camberChange/pivotHeightMm"),
                (place is not (CheckId.OutboardClearance or CheckId.SpringSeatClearance) && car.Settings.CamberChange?.NarrowestHeightMm is null, "/camberChange/narrowestHeightMm")),
        };
    }

    private static string[] ForLoad(FitmentContext car, in Fitting candidate, string axle, in CheckResult result) => result.Reason switch
    {
        UnknownReason.MarkingSilent or UnknownReason.BeyondSpeedSymbol => ["/candidate/tyre/marking"],
        UnknownReason.PressureBelowTable => [candidate.Tyre.PressureKpa is null ? axle + "/tyre/pressureKpa" : "/candidate/tyre/pressureKpa"],
        _ => Missing((car.LoadPerWheelKg is null, axle + "/maximumAxleLoadKg")),
    };

    private static string[] ForFastener(FitmentContext car, in Fitting candidate, string axle) => Missing(
        (car.Axle.Hub.FastenerLengthMm is null, axle + "/hub/fastenerLengthMm"),
        (car.Axle.Hub.FastenerThread is null, axle + "/hub/fastenerThread"),
        (car.Axle.Hub.FastenerSeat is null, axle + "/hub/fastenerSeat"),
        (candidate.Wheel.PadThicknessMm is null, "/candidate/wheel/padThicknessMm"),
        (candidate.Wheel.FastenerSeat is null, "/candidate/wheel/fastenerSeat"));

    private static string[] ForBrake(FitmentContext car, in Fitting candidate, string axle, UnknownReason reason) => reason == UnknownReason.OutlineTooShort
        ? ["/candidate/wheel/innerProfile"]
        : Missing(
            (car.Axle.Hub.CaliperProfile.Count == 0, axle + "/hub/caliperProfile"),
            (candidate.Wheel.InnerProfile.Count == 0, "/candidate/wheel/innerProfile"),
            (car.Axle.Hub.MinimumRimDiameterIn is null, axle + "/hub/minimumRimDiameterIn"));

    private static string[] Missing(params ReadOnlySpan<(bool IsMissing, string Pointer)> inputs)
    {
        var pointers = new List<string>(inputs.Length);
        foreach (var (isMissing, pointer) in inputs)
        {
            if (isMissing) pointers.Add(pointer);
        }

        return [.. pointers];
    }
}
