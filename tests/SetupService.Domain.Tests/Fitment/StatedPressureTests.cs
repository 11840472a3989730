using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;

namespace SetupService.Domain.Tests.Fitment;

public sealed partial class StatedPressureTests
{
    // Whoever sets the pressure a failing answer names must not fail again: it is rounded up, never down.
    [Fact]
    public void The_pressure_named_carries_the_load() =>
        Gen.Select(Gen.Double[700, 1230], Gen.Double[150, 249], Gen.Double[150, 240]).Sample((axleKg, pressureKpa, topKmh) =>
        {
            var axle = DemoCar.Axle() with { MaximumLoadKg = axleKg, MinimumLoadIndex = null };
            var car = FitmentContext.Prepare(DemoCar.Vehicle(axle) with { TopSpeedKmh = topKmh }, Domain.Vehicles.CarAxle.Front, new CheckSettings());
            var result = Check(car, pressureKpa, out var text);
            if (result.Status != CheckStatus.Fail || Named().Match(text) is not { Success: true } named) return true;
            var namedKpa = double.Parse(named.Groups[1].Value, CultureInfo.InvariantCulture);
            return namedKpa > pressureKpa && Check(car, namedKpa, out _).Status is CheckStatus.Pass or CheckStatus.Caution;
        });

    private static CheckResult Check(FitmentContext car, double pressureKpa, out string text)
    {
        var candidate = new Domain.Fitment.Fitting(DemoCar.Wheel(), DemoCar.Tyre("225/45R17 91V", pressureKpa));
        var result = DemoCar.Check(car, candidate)[CheckId.LoadCapacity];
        text = CheckWords.Explanation(car, candidate, CheckId.LoadCapacity, result, UnitSystem.Metric);
        return result;
    }

    [GeneratedRegex(@"(\d+) kPa cold would carry it")]
    private static partial Regex Named();
}
