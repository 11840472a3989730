using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment;

/// <summary>
/// What suspension travel still takes of gaps: nothing where the person allowed for it while measuring; else the upward travel over the
/// tread, and sideways the way of the wheel centre and the lean. Made once for a car.
/// </summary>
internal sealed record TravelAllowance
{
    /// <summary>Share of the wheel's sideways travel by which it nears an arm that is held at one end by the body and at the other by the upright: our choice, no source.</summary>
    public const double ArmShare = 0.5;

    /// <summary>Taken over the tread, mm; null where the bump travel is not known.</summary>
    public double? RadialMm { get; private init; }

    /// <summary>Taken of the gap inboard; null where the path is not known.</summary>
    public SideTravel? Inboard { get; private init; }

    /// <summary>Taken of the gap inboard at full lock; null where the path is not known.</summary>
    public SideTravel? FullLock { get; private init; }

    /// <summary>Taken of the gap to the arch; null where the path is not known.</summary>
    public SideTravel? Outboard { get; private init; }

    /// <summary>How far up the wheel goes; null where gaps have the travel in them, or the way to the stop is not known.</summary>
    public UpwardTravel? Upward { get; private init; }

    /// <summary>The wheel's path; null where it was not asked for.</summary>
    public WheelTravelPath? Path { get; private init; }

    /// <summary>What is missing where something is null.</summary>
    public Finding Missing { get; private init; }

    /// <summary>The allowance of an axle.</summary>
    /// <param name="axle">The axle.</param>
    /// <param name="loadedRadiusMm">Height of the wheel centre above the ground, mm; null where it is not known.</param>
    public static TravelAllowance Of(Axle axle, double? loadedRadiusMm)
    {
        var gaps = axle.Clearance;
        if (gaps.MeasuredAt is not ClearanceMeasuredAt.RideHeight)
        {
            return new() { RadialMm = 0, Inboard = SideTravel.None, FullLock = SideTravel.None, Outboard = SideTravel.None };
        }

        if (UpwardTravel.Of(axle) is not { } upward) return new() { Missing = Finding.BumpTravelMissing };
        var path = WheelTravelPath.Over(axle, upward.TotalMm);
        var known = new TravelAllowance { RadialMm = upward.TotalMm, Upward = upward, Path = path, Missing = path.Missing };
        if (path.Missing != Finding.Computed) return IsOnStrut(axle) ? known with { Inboard = SideTravel.None } : known;

        var toBody = SideTravel.Inboard(path.Places, gaps.InboardHeightMm - loadedRadiusMm);
        return known with
        {
            Inboard = IsOnStrut(axle) ? SideTravel.None : gaps.InboardTo is InboardPart.Body or null ? toBody : toBody.Share(ArmShare),

            // What is nearest at lock, and how high, is not said.
            FullLock = SideTravel.Inboard(path.Places, null),
            Outboard = SideTravel.Outboard(path.Places),
        };
    }

    /// <summary>Whether the gap inboard is to a strut that is one piece with the upright, so that travel takes nothing of it.</summary>
    private static bool IsOnStrut(Axle axle) => axle is
    {
        Clearance.InboardTo: InboardPart.Strut,
        Suspension.Layout: null or SuspensionLayout.MacPhersonStrut or SuspensionLayout.Measured,
    };
}
