using System.Reflection;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Domain.Tests.Suspension.Corners;

/// <summary>All figures of a position by name, so that a new one is looked at without anybody thinking of it.</summary>
internal static class FigureTable
{
    private static readonly PropertyInfo[] Properties = typeof(WheelFigures).GetProperties();

    public static IEnumerable<(string Name, double? Value)> Of(WheelFigures figures) =>
        Properties.Select(property => (property.Name, (double?)property.GetValue(figures)));

    public static double? Value(WheelFigures figures, string name) => (double?)typeof(WheelFigures).GetProperty(name)!.GetValue(figures);

    /// <summary>Every figure is a number or not there.</summary>
    public static void AssertFinite(SuspensionPosition position) =>
        Assert.All(typeof(SuspensionPosition).GetProperties(), property => Assert.True((double?)property.GetValue(position) is not { } value || double.IsFinite(value), property.Name));

    /// <summary>Every figure is a number or not there.</summary>
    public static void AssertFinite(WheelFigures figures) =>
        Assert.All(Of(figures), figure => Assert.True(figure.Value is null || double.IsFinite(figure.Value.Value), figure.ToString()));

    /// <summary>
    /// Holds two workings of a figure to 1e-9, of it or of 1. An instant centre at a distance F is v/ω away, so an error of ω moves it
    /// by F² times as much: 1e-12 per mm is allowed there.
    /// </summary>
    public static void AssertSame(string name, double? expected, double? actual)
    {
        if (expected is null && actual is null) return;
        Assert.True(expected is not null && actual is not null, $"{name}: {expected} and {actual}");
        var tolerance = 1e-9 * Math.Max(1, Math.Abs(expected.Value));
        if (name.Contains("InstantCentre", StringComparison.Ordinal) || name == nameof(WheelFigures.SwingArmMm))
        {
            tolerance += 1e-12 * expected.Value * expected.Value;
        }

        Assert.True(Math.Abs(expected.Value - actual.Value) <= tolerance, $"{name}: {expected} and {actual}");
    }
}
