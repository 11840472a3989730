using SetupService.Domain.Geometry.Alignment;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Planning.Sheets;

/// <summary>An angle of the alignment sheet.</summary>
public enum AlignmentAngle
{
    /// <summary>Camber of a wheel.</summary>
    Camber,

    /// <summary>Caster of a wheel.</summary>
    Caster,

    /// <summary>Toe of a wheel.</summary>
    Toe,

    /// <summary>Toe of both wheels of an axle together.</summary>
    TotalToe,
}

/// <summary>What is done with an angle.</summary>
public enum AlignmentTask
{
    /// <summary>It is set to another value.</summary>
    Set,

    /// <summary>It is brought back to what it was, because the work moves it.</summary>
    Restore,

    /// <summary>It is read only; the target is what it comes to by itself.</summary>
    Read,
}

/// <summary>One line of the alignment sheet; angles as a gauge reads them with the car standing, degrees.</summary>
/// <param name="Axle">Which axle.</param>
/// <param name="Side">Which wheel; null = both together.</param>
/// <param name="Angle">Which angle.</param>
/// <param name="Task">What is done with it.</param>
/// <param name="NowDeg">What it is now by what the car was stated with; null where it was not.</param>
/// <param name="TargetDeg">What to leave it at; null where that is not known.</param>
/// <param name="AimDeg">Where a later step goes, once treads or temperatures ask for it; as the target where there is none.</param>
/// <param name="ToleranceDeg">How far off the target it may be left.</param>
public readonly record struct AlignmentLine(CarAxle Axle, WheelSide? Side, AlignmentAngle Angle, AlignmentTask Task, double? NowDeg, double? TargetDeg, double? AimDeg, double ToleranceDeg)
{
    /// <summary>How far it is changed.</summary>
    public double? ChangeDeg => TargetDeg - NowDeg;
}

/// <summary>A line on the ride height of an axle.</summary>
/// <param name="Axle">Which axle.</param>
/// <param name="NowMm">Height now, ground to arch lip above the wheel centre, mm; null where it was not given.</param>
/// <param name="ChangeMm">How much higher the body stands with the package, mm; null where that is not known.</param>
public readonly record struct RideHeightLine(CarAxle Axle, double? NowMm, double? ChangeMm)
{
    /// <summary>What to find or set, mm.</summary>
    public double? TargetMm => NowMm + ChangeMm;
}

/// <summary>The targets of a package: camber as the plan judges it, everything else back to what it was unless a part says otherwise. Method page: docs/methods/plan-sheets.</summary>
public sealed class AlignmentSheet
{
    /// <summary>Tolerance of camber, degrees; common practice, no source.</summary>
    public const double CamberToleranceDeg = 0.1;

    /// <summary>Tolerance of the toe of a wheel, degrees; common practice, no source.</summary>
    public const double ToeToleranceDeg = 0.05;

    /// <summary>Tolerance of caster, degrees; common practice, no source.</summary>
    public const double CasterToleranceDeg = 0.3;

    /// <summary>Tolerance of a ride height, and of left against right, mm; common practice, no source.</summary>
    public const double RideHeightToleranceMm = 5;

    // Less than this nobody sees, mm.
    private const double LeastMm = 0.05;

    private readonly StandingCar _given;
    private readonly JudgedPackage _package;
    private readonly IReadOnlyList<SheetPart> _parts;

    private AlignmentSheet(StandingCar given, JudgedPackage package, IReadOnlyList<SheetPart> parts) => (_given, _package, _parts) = (given, package, parts);

    /// <summary>The lines, in the order they are set: the rear first, camber before toe.</summary>
    /// <param name="given">The car as given.</param>
    /// <param name="package">The package; its car stands.</param>
    /// <param name="parts">Its parts.</param>
    public static IReadOnlyList<AlignmentLine> Write(StandingCar given, JudgedPackage package, IReadOnlyList<SheetPart> parts)
    {
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(package);
        ArgumentNullException.ThrowIfNull(parts);
        var sheet = new AlignmentSheet(given, package, parts);
        return [.. sheet.Lines(CarAxle.Rear), .. sheet.Lines(CarAxle.Front)];
    }

    /// <summary>The ride heights of both axles.</summary>
    /// <param name="package">The package.</param>
    /// <param name="nowMm">The heights now, mm; null where they were not given.</param>
    public static IReadOnlyList<RideHeightLine> RideHeights(JudgedPackage package, (double? Front, double? Rear) nowMm)
    {
        ArgumentNullException.ThrowIfNull(package);
        return [new(CarAxle.Rear, nowMm.Rear, package.Figures.Rear.HeightMm), new(CarAxle.Front, nowMm.Front, package.Figures.Front.HeightMm)];
    }

    /// <summary>True where an angle is set or may have moved: the car goes to the alignment bench.</summary>
    public static bool IsNeeded(JudgedPackage package, IReadOnlyList<SheetPart> parts)
    {
        ArgumentNullException.ThrowIfNull(package);
        return package.Evaluated.Settings.Count > 0 || parts.Any(MovesAngles);
    }

    private static bool MovesAngles(SheetPart one) => one.Part.Kind is not (PartKind.Wheel or PartKind.Tyre or PartKind.Spacer or PartKind.Pad or PartKind.Disc);

    private AlignmentLine[] Lines(CarAxle at)
    {
        var car = _package.Evaluated.Car!;
        var (now, then) = (Standing(_given, at), Standing(car, at));
        var setting = _package.Evaluated.Settings.Where(one => one.Axle == at).Select(one => (CamberSetting?)one).FirstOrDefault();
        var moves = setting is not null || _parts.Any(one => MovesAngles(one) && (one.IsAt(at) || one.Axles.Count == 0)) || !(Math.Abs(_package.Figures.At(at).HeightMm ?? double.PositiveInfinity) < LeastMm);
        AlignmentLine[] casters = at == CarAxle.Front && now?.Left.CasterDeg is not null ? [.. Sides.Select(Caster)] : [];
        AlignmentLine[] toes = [.. Sides.Select(Toe)];

        // The front wheels share one rack: with the steering wheel straight each has half of what both have together.
        if (at == CarAxle.Front && toes is [{ Task: AlignmentTask.Restore, TargetDeg: { } left }, { TargetDeg: { } right }]) toes = [.. toes.Select(one => one with { TargetDeg = (left + right) / 2, AimDeg = (left + right) / 2 })];
        var (total, totalNow) = (toes[0].TargetDeg + toes[1].TargetDeg, toes[0].NowDeg + toes[1].NowDeg);
        return [.. casters, .. Sides.Select(Camber), .. toes, new(at, null, AlignmentAngle.TotalToe, toes[0].Task, totalNow, total, total, ToeToleranceDeg)];

        AlignmentLine Camber(WheelSide side)
        {
            var nowDeg = AnglesAt(now, side)?.CamberDeg;
            if (setting is { } set) return new(at, side, AlignmentAngle.Camber, AlignmentTask.Set, nowDeg ?? set.GivenDeg, set.FirstDeg, set.ToDeg, CamberToleranceDeg);
            var thenDeg = AnglesAt(then, side)?.CamberDeg;
            return new(at, side, AlignmentAngle.Camber, AlignmentTask.Read, nowDeg, thenDeg, thenDeg, CamberToleranceDeg);
        }

        // Toe that a part states is set; else it goes back to what it was, whatever camber and height did to it.
        AlignmentLine Toe(WheelSide side)
        {
            var nowDeg = AnglesAt(now, side)?.ToeDeg;
            var (stated, before) = (Stated(car, side).ToeDeg, Stated(_given, side).ToeDeg);
            if (stated != before) return new(at, side, AlignmentAngle.Toe, AlignmentTask.Set, nowDeg, AnglesAt(then, side)?.ToeDeg ?? stated, AnglesAt(then, side)?.ToeDeg ?? stated, ToeToleranceDeg);
            return new(at, side, AlignmentAngle.Toe, moves ? AlignmentTask.Restore : AlignmentTask.Read, nowDeg, nowDeg, nowDeg, ToeToleranceDeg);
        }

        AlignmentLine Caster(WheelSide side)
        {
            var (nowDeg, thenDeg) = (AnglesAt(now, side)?.CasterDeg, AnglesAt(then, side)?.CasterDeg);
            var isStated = Stated(car, side).CasterDeg != Stated(_given, side).CasterDeg;
            return new(at, side, AlignmentAngle.Caster, isStated ? AlignmentTask.Set : AlignmentTask.Read, nowDeg, thenDeg, thenDeg, CasterToleranceDeg);
        }

        WheelAlignment Stated(StandingCar one, WheelSide side) => side == WheelSide.Left ? one.Stated.At(at).Left : one.Stated.At(at).Right;
    }

    private static readonly WheelSide[] Sides = [WheelSide.Left, WheelSide.Right];

    /// <summary>The angles of an axle with the car standing; null where its suspension does not tell them at that height.</summary>
    private static AxleAngles? Standing(StandingCar car, CarAxle at) =>
        AnglesAtRide.Compute(car.Stated.At(at) with { RideHeightChangeMm = car.Stands.At(at).RideHeightChangeMm }, isRightMeasured: true);

    private static WheelAngles? AnglesAt(AxleAngles? angles, WheelSide side) => angles is { } known ? side == WheelSide.Left ? known.Left : known.Right : null;
}
