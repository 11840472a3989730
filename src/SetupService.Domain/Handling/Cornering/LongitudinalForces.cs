using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>What braking, driving and the air ask of each axle in a turn. Method page: docs/methods/cornering.</summary>
/// <param name="AccelerationMs2">Longitudinal acceleration, m/s²; negative = braking.</param>
/// <param name="FrontN">Force along the car that the front tyres must give together, N; negative = braking.</param>
/// <param name="RearN">That of the rear tyres.</param>
/// <param name="FrontLoadN">Load added to the front axle, N: by longitudinal load transfer and the air.</param>
/// <param name="RearLoadN">Load added to the rear axle.</param>
public readonly record struct LongitudinalForces(double AccelerationMs2, double FrontN, double RearN, double FrontLoadN, double RearLoadN)
{
    /// <summary>True where nothing brakes, drives or blows.</summary>
    public bool AreNone => this == default;

    /// <summary>The forces; driving ones are left out where nobody said which axle is driven.</summary>
    public static LongitudinalForces Compute(HandlingCar car, in CorneringDemand demand)
    {
        ArgumentNullException.ThrowIfNull(car);
        if (demand.LongitudinalG == 0 && car.Aero is null) return default;
        var acceleration = demand.LongitudinalG * HandlingCar.StandardGravity;
        var air = car.Aero is { } aero ? aero.ScaleAt(demand.SpeedKmh) : 0;
        var atTyres = (car.MassKg * acceleration) + (air * car.Aero.GetValueOrDefault().DragN);
        var front = atTyres < 0 ? car.BrakeShareFrontPct / 100 : car.DriveShareFrontPct / 100;
        var moved = car.MassKg * acceleration * car.PresentHeightMm / (car.WheelbaseMm ?? double.PositiveInfinity);
        return new(
            acceleration,
            front is { } share ? share * atTyres : 0,
            front is { } other ? (1 - other) * atTyres : 0,
            (air * car.Aero.GetValueOrDefault().FrontDownforceN) - moved,
            (air * car.Aero.GetValueOrDefault().RearDownforceN) + moved);
    }

    /// <summary>True where a turn along a path asks for longitudinal force, so that what shares it out matters.</summary>
    public static bool AreAsked(HandlingCar car, in TurnPath path)
    {
        ArgumentNullException.ThrowIfNull(car);
        return path.LongitudinalG != 0 || car.Aero is { DragN: > 0 };
    }

    /// <summary>A share of all of them, for continuation from rest.</summary>
    internal LongitudinalForces Scaled(double share) => new(share * AccelerationMs2, share * FrontN, share * RearN, share * FrontLoadN, share * RearLoadN);
}

/// <summary>An axle's longitudinal force shared between its wheels.</summary>
/// <param name="FirstN">Force of the one wheel, N.</param>
/// <param name="SecondN">Force of the other, N.</param>
/// <param name="Used">The axle's force by the most it could have this way, not negative; above 1 the tyres do not hold it, infinite where they hold none.</param>
public readonly record struct LongitudinalShare(double FirstN, double SecondN, double Used)
{
    /// <summary>Shares a force: evenly as far as the weaker tyre holds it, what is more to the other tyre, as far as the differential lets it; locked, and beyond what they hold, in proportion.</summary>
    /// <param name="forceN">The axle's force, N; negative = braking, each wheel by its own brake, which an anti-lock system holds at what its tyre holds.</param>
    /// <param name="firstHoldsN">The most the one tyre holds, N, not negative.</param>
    /// <param name="secondHoldsN">The most the other holds, N.</param>
    /// <param name="differential">The differential, for driving forces.</param>
    public static LongitudinalShare Compute(double forceN, double firstHoldsN, double secondHoldsN, in Differential differential)
    {
        if (forceN == 0) return default;
        var bothN = firstHoldsN + secondHoldsN;
        if (!(bothN > 0)) return new(forceN / 2, forceN / 2, double.PositiveInfinity);
        if (forceN > 0 && differential.Kind == DifferentialKind.Locked)
        {
            var first = forceN * firstHoldsN / bothN;
            return new(first, forceN - first, forceN / bothN);
        }

        var (weakerN, strongerN) = firstHoldsN < secondHoldsN ? (firstHoldsN, secondHoldsN) : (secondHoldsN, firstHoldsN);
        var mostN = forceN < 0 ? bothN : weakerN + Math.Min(strongerN, differential.BiasRatio * weakerN);
        if (!(mostN > 0)) return new(forceN / 2, forceN / 2, double.PositiveInfinity);

        // What goes beyond the grip of both is shared in the proportion of what each has.
        var used = Math.Abs(forceN) / mostN;
        var heldN = Math.CopySign(Math.Min(Math.Abs(forceN), mostN), forceN);
        var ofWeaker = Math.CopySign(Math.Min(Math.Abs(heldN) / 2, weakerN), forceN) * Math.Max(1, used);
        return firstHoldsN < secondHoldsN ? new(ofWeaker, forceN - ofWeaker, used) : new(forceN - ofWeaker, ofWeaker, used);
    }
}
