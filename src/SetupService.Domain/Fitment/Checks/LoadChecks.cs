using SetupService.Domain.Answers;
using SetupService.Domain.Tyres;

namespace SetupService.Domain.Fitment.Checks;

/// <summary>The checks that tyre and wheel carry the axle's maximum load, and that the tyre allows the car's top speed.</summary>
public static class LoadChecks
{
    /// <summary>Slowest winter tyre that may do under a faster car, km/h: Q. The French order of 24 Oct 1994, art. 3, names Q; that faster symbols do as well is ours.</summary>
    private const double LeastSnowTyreKmh = 160;

    /// <summary>
    /// The tyre's capacity at its pressure and the car's top speed against half of the axle's maximum load; kg.
    /// Standard and extra-load tyres by the standard's pressure formula; docs/methods/tyre-load.md.
    /// </summary>
    public static CheckResult Capacity(FitmentContext car, in Fitting candidate)
    {
        var marking = candidate.Tyre.Marking;
        if (marking.LoadCapacityKg is not { } indexCapacityKg) return CheckResult.Unknown(UnknownReason.MarkingSilent);
        var speedKmh = SpeedUsed(car, marking);
        var capacityKg = LoadCapacity.ReferencePressureKpa(marking) is { } referenceKpa
            ? LoadCapacity.AtKg(marking, PressureUsed(car, candidate) ?? referenceKpa, speedKmh)
            : indexCapacityKg * LoadCapacity.SpeedFactor(marking, speedKmh);
        var neededKg = RequiredLoad(car);
        if (marking.LoadIndex < car.Axle.MinimumLoadIndex)
        {
            return CheckResult.From(false, capacityKg ?? indexCapacityKg, neededKg) with { Reason = UnknownReason.IndexBelowMinimum };
        }

        if (capacityKg is not { } carriesKg)
        {
            var reason = marking.SpeedSymbol is null ? UnknownReason.MarkingSilent : UnknownReason.BeyondSpeedSymbol;

            // Speed and pressure can only reduce the load of the index: where that is too little already, they need not be known.
            return indexCapacityKg < car.LoadPerWheelKg
                ? CheckResult.From(false, indexCapacityKg, neededKg) with { Reason = reason }
                : CheckResult.Unknown(reason);
        }

        if (neededKg is not { } loadKg || (car.LoadPerWheelKg is null && carriesKg < loadKg)) return AgainstDriven(car, carriesKg, neededKg);
        var result = CheckResult.From(carriesKg >= loadKg, carriesKg, loadKg);
        return result.Status == CheckStatus.Fail ? result : Doubts(car, candidate, result, loadKg, speedKmh);
    }

    /// <summary>The tyre's speed symbol against the car's top speed; km/h.</summary>
    public static CheckResult Speed(FitmentContext car, in Fitting candidate)
    {
        var marking = candidate.Tyre.Marking;
        if (car.Vehicle.TopSpeedKmh is not { } topSpeedKmh) return CheckResult.Unknown(UnknownReason.ValueMissing) with { Value = marking.MaximumSpeedKmh };
        if (marking.MaximumSpeedKmh is not { } allowedKmh)
        {
            return topSpeedKmh <= marking.SpeedAboveKmh
                ? CheckResult.From(true, marking.SpeedAboveKmh.Value, topSpeedKmh)
                : CheckResult.Unknown(UnknownReason.MarkingSilent) with { Limit = topSpeedKmh };
        }

        if (topSpeedKmh > allowedKmh && marking.IsSpeedOpenEnded)
        {
            return CheckResult.Unknown(UnknownReason.BeyondSpeedSymbol) with { Value = allowedKmh, Limit = topSpeedKmh };
        }

        var result = CheckResult.From(allowedKmh >= topSpeedKmh, allowedKmh, topSpeedKmh);
        return IsSlowerSnowTyre(car, marking)
            ? result with { Status = CheckStatus.Caution, Reason = UnknownReason.SnowTyreBelowTopSpeed }
            : result;
    }

    /// <summary>The wheel's own rating against half of the axle's maximum load; kg. From memory, no source read.</summary>
    public static CheckResult Wheel(FitmentContext car, in Fitting candidate)
    {
        if (candidate.Wheel.LoadRatingKg is not { } ratingKg) return CheckResult.Unknown(UnknownReason.ValueMissing) with { Limit = car.LoadPerWheelKg };
        return car.LoadPerWheelKg is { } loadKg
            ? CheckResult.From(ratingKg >= loadKg, ratingKg, loadKg)
            : CheckResult.Unknown(UnknownReason.ValueMissing) with { Value = ratingKg };
    }

    /// <summary>
    /// The pressure the check works with, kPa: the candidate's own, else the present tyre's; null where neither
    /// is given and the load index's reference pressure stands.
    /// </summary>
    public static double? PressureUsed(FitmentContext car, in Fitting candidate) =>
        candidate.Tyre.PressureKpa ?? car.Axle.Tyre?.PressureKpa;

    /// <summary>
    /// The speed the check works with, km/h: the car's top speed, else the tyre symbol's own maximum, where it carries least; also
    /// the symbol's under a faster car where a label may hold the driver of winter tyres to it.
    /// </summary>
    public static double SpeedUsed(FitmentContext car, TyreMarking marking) =>
        IsSlowerSnowTyre(car, marking)
            ? marking.MaximumSpeedKmh ?? 0
            : car.Vehicle.TopSpeedKmh ?? marking.MaximumSpeedKmh ?? 0;

    /// <summary>True when a winter tyre of at least symbol Q is on a faster car, which some countries allow with a label.</summary>
    public static bool IsSlowerSnowTyre(FitmentContext car, TyreMarking marking) =>
        marking.IsSnowTyre && !marking.IsSpeedOpenEnded
        && marking.MaximumSpeedKmh is { } allowedKmh && allowedKmh >= LeastSnowTyreKmh && allowedKmh < car.Vehicle.TopSpeedKmh;

    /// <summary>The load a tyre must carry, kg: half the axle's maximum, else what the lowest allowed load index carries.</summary>
    public static double? RequiredLoad(FitmentContext car) =>
        car.LoadPerWheelKg ?? (car.Axle.MinimumLoadIndex is { } index ? LoadIndexTable.CapacityKg(index) : null);

    /// <summary>The pressure that would carry the load, with the handbook's addition for sustained speed, kPa; null where no pressure would.</summary>
    public static double? PressureWanted(TyreMarking marking, double loadKg, double speedKmh)
    {
        if (LoadCapacity.PressureForKpa(marking, loadKg, speedKmh) is not { } carriesKpa) return null;
        return Math.Max(carriesKpa, LoadCapacity.LowestTabulatedPressureKpa) + (LoadCapacity.SpeedPressureAdditionKpa(marking, speedKmh) ?? 0);
    }

    /// <summary>
    /// Where the axle's greatest load is not given and the tyre carries less than the lowest index allowed stands for, it may
    /// still carry enough. The load as driven is not the greatest, but a tyre that cannot carry even that fails.
    /// </summary>
    private static CheckResult AgainstDriven(FitmentContext car, double carriesKg, double? neededKg)
    {
        var drivenKg = car.Axle.LoadKg / 2;
        return drivenKg > carriesKg
            ? CheckResult.From(false, carriesKg, drivenKg) with { Reason = UnknownReason.LessThanAsDriven }
            : CheckResult.Unknown(UnknownReason.ValueMissing) with { Value = carriesKg, Limit = neededKg };
    }

    private static CheckResult Doubts(FitmentContext car, in Fitting candidate, in CheckResult result, double loadKg, double speedKmh)
    {
        var marking = candidate.Tyre.Marking;
        if (LoadCapacity.ReferencePressureKpa(marking) is not { } referenceKpa)
        {
            return result with { Status = CheckStatus.Caution, Reason = UnknownReason.ReferencePressureUnknown };
        }

        var pressureKpa = PressureUsed(car, candidate) ?? referenceKpa;
        if (pressureKpa < LoadCapacity.LowestTabulatedPressureKpa)
        {
            return result with { Status = CheckStatus.Unknown, Reason = UnknownReason.PressureBelowTable };
        }

        // The reference pressure is the most that counts for load, so the addition cannot be asked beyond it.
        var wantedKpa = Math.Min(PressureWanted(marking, loadKg, speedKmh) ?? 0, referenceKpa);
        return pressureKpa < wantedKpa
            ? result with { Status = CheckStatus.Caution, Reason = UnknownReason.SpeedAdditionShort }
            : result;
    }
}
