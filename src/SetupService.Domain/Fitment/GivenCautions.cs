using SetupService.Domain.Answers;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment;

/// <summary>Cautions about what was given: two inputs that can hardly both be right, each caution naming both.</summary>
public static class GivenCautions
{
    /// <summary>The greatest cold pressure that sidewalls of car tyres usually allow, kPa: 51 psi, from memory.</summary>
    public const double UsualMaximumPressureKpa = 350;

    /// <summary>
    /// How far a load index may lie from its size's: the load over that of the American association's formula for the size. Standard-load car tyres lie
    /// within 0.94 to 1.07 of it in the sizes looked at, extra load adds a tenth; the bounds are our choice, no source.
    /// </summary>
    public const double LeastLoadShare = 0.75;

    /// <summary>The upper bound of the same share.</summary>
    public const double GreatestLoadShare = 1.4;

    private const double FormulaPressureKpa = 240;
    private const string Sizes = "Check the marking on the sidewall: a tyre under more load than it is made for can burst.";

    /// <summary>The cautions about the axle as given, and about a candidate's tyre where there is one.</summary>
    public static IReadOnlyList<Caution> For(FitmentContext car, Tyre? candidate, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(car);
        var list = new List<Caution>();
        var name = car.Position == CarAxle.Front ? "front" : "rear";
        var axle = car.Axle;
        AddSpares(list, car, candidate, units);
        if (axle is { Wheel: { } wheel, Tyre.Marking: var marking } && !marking.FitsRimDiameter(wheel.RimDiameterIn))
        {
            list.Add(new("presentRimMismatch", Prose.Write(
                units,
                $"The {name} axle's present tyre {marking.StandardText} (tyre.marking) is for a rim of {marking.RimDiameterIn:in} and its present wheel (wheel.rimDiameterIn) is {wheel.RimDiameterIn:in}: one of them is wrong, and the gaps are compared with both.")));
        }
        else if (axle is { Wheel: { } rim, Tyre.Marking: { HasDimensions: true } tyre } && !tyre.PermittedRimWidth.Includes(rim.RimWidthIn))
        {
            list.Add(new("presentRimWidthOutside", Prose.Write(
                units,
                $"The {name} axle's present tyre {tyre.StandardText} (tyre.marking) is usually fitted to rims from {tyre.PermittedRimWidth.MinimumIn:in} to {tyre.PermittedRimWidth.MaximumIn:in} and its present wheel (wheel.rimWidthIn) is {rim.RimWidthIn:in}: check both.")));
        }

        if (axle.LoadKg is { } loadKg && axle.UnsprungMassKg is { } unsprungKg && loadKg <= 2 * unsprungKg)
        {
            list.Add(new("loadBelowUnsprungMass", Prose.Write(
                units,
                $"The {name} axle's load of {loadKg:kg} ({name}AxleLoadKg) is no more than its two wheels' unsprung mass of {2 * unsprungKg:kg} ({name}.unsprungMassKg is per wheel): one of them is wrong.")));
        }

        if (axle.LoadKg is { } drivenKg && axle.MaximumLoadKg is { } plateKg && drivenKg > plateKg)
        {
            list.Add(new("loadAbovePlate", Prose.Write(
                units,
                $"The {name} axle carries {drivenKg:kg} as driven ({name}AxleLoadKg), more than the {plateKg:kg} it may carry ({name}.maximumAxleLoadKg): do not drive it so, or correct the one that is wrong.")));
        }

        list.AddRange(axle.Suspension.Cautions("/vehicle/" + name, units));
        if (axle.Tyre is { } present) AddForTyre(list, present, $"The {name} axle's present tyre", units);
        if (candidate is not null) AddForTyre(list, candidate, "The new tyre", units);
        return list;
    }

    private static void AddSpares(List<Caution> list, FitmentContext car, Tyre? candidate, UnitSystem units)
    {
        var (axle, other) = car.Position == CarAxle.Front ? ("front", "rear") : ("rear", "front");
        var present = car.Axle.Tyre;
        var opposite = car.OppositeTyre;
        if (candidate?.Marking.IsTemporarySpare == true) Add($"The new tyre {candidate.Marking.StandardText} is a temporary spare");
        if (present?.Marking.IsTemporarySpare == true) Add($"The {axle} axle's present tyre {present.Marking.StandardText} is a temporary spare");
        if (opposite?.Marking.IsTemporarySpare == true) Add($"The {other} axle's tyre {opposite.Marking.StandardText} is a temporary spare");

        void Add(string whose) => list.Add(new("temporarySpare", Prose.Write(
            units,
            $"{whose}, made for the way to a workshop and not for the road from day to day. Keep to the pressure and speed on its sidewall and in the car's handbook: usually {TemporarySpare.UsualPressure(units)} cold and {TemporarySpare.UsualMaximumSpeedKmh:kmh} (owners' manuals). It carries no snow chain. Put the proper wheel back at once.")));
    }

    private static void AddForTyre(List<Caution> list, Tyre tyre, string name, UnitSystem units)
    {
        var marking = tyre.Marking;
        var isCarTyre = LoadCapacity.ReferencePressureKpa(marking) is not null;
        if (isCarTyre && tyre.PressureKpa > UsualMaximumPressureKpa)
        {
            list.Add(new("pressureBeyondMaximum", Prose.Write(
                units,
                $"{name} {marking.StandardText} (tyre.marking) is given at {tyre.PressureKpa ?? 0:kPa} (tyre.pressureKpa); sidewalls of such tyres allow {300.0:kPa} to {UsualMaximumPressureKpa:kPa} (from memory). Read the maximum on the sidewall and never go beyond it.")));
        }

        if (!isCarTyre || marking.LoadCapacityKg is not { } capacityKg || SizeLoadKg(marking) is not { } usualKg) return;
        if (capacityKg >= LeastLoadShare * usualKg && capacityKg <= GreatestLoadShare * usualKg) return;
        list.Add(new("loadIndexUnlikeSize", Prose.Write(
            units,
            $"{name} {marking.StandardText}: load index {marking.LoadIndex ?? 0} stands for {capacityKg:kg}, and a tyre of that size usually carries about {Math.Round(usualKg / 10) * 10:kg}. {Sizes}")));
    }

    /// <summary>
    /// The load a car tyre of a size usually carries, kg: L = K √p Sd^1.39 (d + Sd), K = 6.67e-5, p in kPa, Sd = (0.34848 + 0.6497 A) S, aspect A as a
    /// share, width S and rim d in mm; of the American association, as a tyre engineer quotes it. Null for sizes without a marked aspect.
    /// </summary>
    internal static double? SizeLoadKg(TyreMarking marking)
    {
        if (marking.AspectRatioPct is not { } aspectPct) return null;
        var sectionMm = (0.34848 + (0.6497 * aspectPct / 100)) * marking.NominalSectionWidthMm;
        return 6.67e-5 * Math.Sqrt(FormulaPressureKpa) * Math.Pow(sectionMm, 1.39) * (marking.Dimensions.RimDiameterMm + sectionMm);
    }
}
