using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Pressures;

/// <summary>
/// The least cold pressure a tyre's load needs: what carries the load by the load-pressure formula, at least where its table begins, with the handbook's
/// addition for sustained speed, up to the reference pressure, above which pressure no longer counts for load; docs/methods/tyre-load.md.
/// </summary>
/// <param name="LeastColdKpa">Gauge pressure, kPa; null where it is not known.</param>
/// <param name="LoadKg">The load taken, kg; null where it is not known.</param>
/// <param name="IsAsDriven">True when that is the load as driven, false when it is half the axle's greatest for want of it.</param>
/// <param name="Gap">Why it is not known.</param>
public sealed record LoadNeed(double? LeastColdKpa, double? LoadKg, bool IsAsDriven, LoadGap Gap)
{
    /// <summary>What the car's plate states for the axle, cold gauge pressure, kPa; null where it is not given.</summary>
    public double? PlateKpa { get; init; }

    /// <summary>True where the load is beyond what the tyre carries, and would not be if it was given in pounds.</summary>
    public bool MayBePounds { get; init; }

    /// <summary>No setting goes below this: what the load as driven needs, or, where that is not known, what the plate states; null where neither is.</summary>
    public double? FloorKpa => LeastColdKpa ?? PlateKpa;

    /// <summary>What a wheel's tyre needs.</summary>
    public static LoadNeed Compute(Vehicle? vehicle, WheelPosition at) =>
        ByLoad(vehicle, at) with { PlateKpa = vehicle?.At(WheelPositions.AxleOf(at)).PlacardPressureKpa };

    private static LoadNeed ByLoad(Vehicle? vehicle, WheelPosition at)
    {
        if (vehicle is null) return Unknown(LoadGap.NoVehicle);
        var axle = vehicle.At(WheelPositions.AxleOf(at));
        if (axle.Tyre?.Marking is not { } marking) return Unknown(LoadGap.NoTyre);
        var drivenKg = ScaleKg(vehicle.CornerWeights, at) ?? axle.LoadKg / 2;
        var greatestKg = axle.MaximumLoadKg / 2;
        if ((drivenKg ?? greatestKg) is not { } loadKg) return Unknown(LoadGap.NoLoad);
        if (marking.LoadCapacityKg is not { } capacityKg || marking.SpeedSymbol is null) return Unknown(LoadGap.MarkingSilent);
        if (loadKg > capacityKg) return Unknown(LoadGap.BeyondLoad) with { LoadKg = loadKg, MayBePounds = PoundsForKilograms.MayBe(loadKg, capacityKg) };
        if (LoadCapacity.ReferencePressureKpa(marking) is not { } referenceKpa) return Unknown(LoadGap.ReferenceUnknown);
        var use = TyreInUse.Compute(marking, null, null, vehicle.TopSpeedKmh, loadKg, null);
        if (use.PressureForLoadKpa is not { } carriesKpa)
        {
            return Unknown(vehicle.TopSpeedKmh is { } topKmh && LoadCapacity.SpeedFactor(marking, topKmh) is null ? LoadGap.BeyondSpeed : LoadGap.BeyondLoad);
        }

        return new LoadNeed(Math.Min(carriesKpa + (use.SpeedPressureAdditionKpa ?? 0), referenceKpa), loadKg, drivenKg is not null, LoadGap.None);

        static LoadNeed Unknown(LoadGap gap) => new(null, null, false, gap);
    }

    private static double? ScaleKg(CornerWeights? scales, WheelPosition at) => at switch
    {
        WheelPosition.FrontLeft => scales?.FrontLeftKg,
        WheelPosition.FrontRight => scales?.FrontRightKg,
        WheelPosition.RearLeft => scales?.RearLeftKg,
        _ => scales?.RearRightKg,
    };
}

/// <summary>Why the least pressure a load needs is not known.</summary>
public enum LoadGap
{
    /// <summary>It is known.</summary>
    None,

    /// <summary>The car is not given.</summary>
    NoVehicle,

    /// <summary>The axle's tyre is not given.</summary>
    NoTyre,

    /// <summary>The axle's load is not given.</summary>
    NoLoad,

    /// <summary>The marking has no load index or no speed symbol.</summary>
    MarkingSilent,

    /// <summary>The pressure the load index belongs to is marked on the sidewall only.</summary>
    ReferenceUnknown,

    /// <summary>The car is faster than the tyre's symbol.</summary>
    BeyondSpeed,

    /// <summary>No pressure lets the tyre carry the load.</summary>
    BeyondLoad,
}
