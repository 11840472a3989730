using System.Text.Json;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Oracle;

/// <summary>
/// The domain against an independent working of the same published rules, over random cases: every number to 1e-9 and every
/// status. See README.md beside this file.
/// </summary>
public sealed class FitmentOracleTests
{
    private static readonly JsonElement[] Cases = ReadCases();

    [Fact]
    public void Tyres_agree()
    {
        var differences = new Disagreements();
        foreach (var (number, request, expected) in All("tyre"))
        {
            var candidate = OracleCar.Fitting(request.GetProperty("candidate"));
            var (tyre, rimIn) = (candidate.Tyre.Marking, candidate.Wheel.RimWidthIn);
            var speedKmh = request.GetProperty("askedSpeedKmh").GetDouble();
            var pressureKpa = request.GetProperty("askedPressureKpa").GetDouble();
            var loadKg = request.GetProperty("askedLoadKg").GetDouble();
            Compare("overallDiameterMm", tyre.Dimensions.OverallDiameterMm);
            Compare("measuringRimWidthIn", tyre.Dimensions.MeasuringRimWidthIn);
            Compare("designSectionWidthMm", tyre.Dimensions.DesignSectionWidthMm);
            Compare("sectionWidthOnRimMm", tyre.Dimensions.SectionWidthOnRimMm(rimIn));
            Compare("maximumSectionWidthMm", tyre.Dimensions.MaximumSectionWidthOnRimMm(rimIn));
            Compare("minimumDiameterMm", tyre.Dimensions.MinimumOverallDiameterMm);
            Compare("maximumDiameterMm", tyre.Dimensions.MaximumOverallDiameterMm);
            Compare("permittedMinimumIn", tyre.PermittedRimWidth.MinimumIn);
            Compare("permittedMaximumIn", tyre.PermittedRimWidth.MaximumIn);
            Compare("rollingCircumferenceMm", tyre.RollingCircumferenceMm);
            Compare("rollingCircumferenceAtSpeedMm", RollingCircumference.AtSpeedMm(tyre.RollingCircumferenceMm, speedKmh));
            Compare("loadCapacityKg", tyre.LoadCapacityKg);
            Compare("capacityKg", LoadCapacity.AtKg(tyre, pressureKpa, speedKmh));
            Compare("pressureKpa", LoadCapacity.PressureForKpa(tyre, loadKg, speedKmh));
            differences.Word(
                number, $"{tyre} permittedListed", expected.GetProperty("permittedListed").ToString(), tyre.PermittedRimWidth.IsListed.ToString());

            void Compare(string member, double? actual) => differences.Number(number, $"{tyre} {member}", expected, member, actual);
        }

        differences.AssertNone(atLeastCompared: 15 * 400);
    }

    [Fact]
    public void Comparisons_agree()
    {
        var differences = new Disagreements();
        foreach (var (number, request, expected) in All("comparison"))
        {
            var axle = OracleCar.Vehicle(request.GetProperty("vehicle")).At(AxleOf(request));
            var current = new Fitting(axle.Wheel!, axle.Tyre!);
            var comparison = Comparison.Between(
                current,
                OracleCar.Fitting(request.GetProperty("candidate")),
                OracleCar.Number(request, "steeringAxisInclinationDeg"),
                request.GetProperty("indicatedKmh").GetDouble());
            Compare("outboardChangeMm", comparison.OutboardChangeMm);
            Compare("inboardChangeMm", comparison.InboardChangeMm);
            Compare("trackChangeMm", comparison.TrackChangeMm);
            Compare("scrubRadiusChangeMm", comparison.ScrubRadiusChangeMm);
            Compare("overallDiameterChangeMm", comparison.OverallDiameterChangeMm);
            Compare("overallDiameterChangePct", comparison.OverallDiameterChangePct);
            Compare("rideHeightChangeMm", comparison.RideHeightChangeMm);
            Compare("gearingChangePct", comparison.GearingChangePct);
            Compare("massChangeKg", comparison.MassChangeKg);
            Compare("trueKmh", comparison.TrueKmh);

            void Compare(string member, double? actual) => differences.Number(number, member, expected, member, actual);
        }

        differences.AssertNone(atLeastCompared: 10 * 300);
    }

    [Fact]
    public void Checks_agree()
    {
        var differences = new Disagreements();
        var sheet = new CheckSheet();
        foreach (var (number, request, expected) in All("check"))
        {
            var car = FitmentContext.Prepare(
                OracleCar.Vehicle(request.GetProperty("vehicle")), AxleOf(request), OracleCar.Settings(request));
            FitmentCheck.Evaluate(car, OracleCar.Fitting(request.GetProperty("candidate")), sheet);
            differences.Word(number, "verdict", expected.GetProperty("verdict").GetString(), sheet.Verdict.ToString());
            differences.Word(number, "governing", OracleCar.Part(expected, "governing")?.GetString(), sheet.Governing?.ToString());
            differences.Word(number, "unknown", Names(OracleCar.Ids(expected.GetProperty("unknown"))), Names(sheet.Unknown));
            foreach (var id in Enum.GetValues<CheckId>())
            {
                var wanted = OracleCar.Part(expected.GetProperty("checks"), char.ToLowerInvariant(id.ToString()[0]) + id.ToString()[1..]);
                var applies = sheet.Applicable.Contains(id);
                differences.Word(number, $"{id} applies", (wanted is not null).ToString(), applies.ToString());
                if (wanted is { } answer && applies) Compare(differences, number, id, answer, sheet[id]);
            }
        }

        differences.AssertNone(atLeastCompared: 17 * 400);
    }

    [Fact]
    public void Windows_agree()
    {
        var differences = new Disagreements();
        foreach (var (number, request, expected) in All("windows"))
        {
            var car = FitmentContext.Prepare(
                OracleCar.Vehicle(request.GetProperty("vehicle")),
                AxleOf(request),
                OracleCar.Settings(request) with { CamberChange = null });
            var tyre = OracleCar.Fitting(request.GetProperty("candidate")).Tyre;
            foreach (var wanted in expected.EnumerateArray())
            {
                var window = OffsetWindow.Compute(car, tyre, wanted.GetProperty("rimWidthIn").GetDouble());
                var name = $"window on {window.RimWidthIn} in";
                differences.Word(number, $"{name} status", wanted.GetProperty("status").GetString(), window.Status.ToString());
                differences.Number(number, $"{name} least", wanted, "fromOffsetMm", window.FromOffsetMm);
                differences.Number(number, $"{name} greatest", wanted, "toOffsetMm", window.ToOffsetMm);
            }
        }

        differences.AssertNone(atLeastCompared: 3 * 3 * 400);
    }

    private static void Compare(Disagreements differences, int number, CheckId id, JsonElement wanted, in CheckResult result)
    {
        // Of an unknown only the status is defined; the half that is known may stand beside it.
        differences.Word(number, $"{id} status", wanted.GetProperty("status").GetString(), result.Status.ToString());
        if (result.Status != CheckStatus.Unknown) differences.Number(number, $"{id} value", wanted, "value", result.Value);
        if (result.Status != CheckStatus.Unknown && id is (CheckId.LoadCapacity or CheckId.WheelLoadRating))
        {
            differences.Number(number, $"{id} limit", wanted, "limit", result.Limit);
        }

        differences.Number(number, $"{id} nominal", wanted, "nominalMm", result.Margin?.NominalMm);
        differences.Number(number, $"{id} probable", wanted, "probableMm", result.Margin?.ProbableMm);
        differences.Number(number, $"{id} worst case", wanted, "worstCaseMm", result.Margin?.WorstCaseMm);
    }

    private static IEnumerable<(int Number, JsonElement Request, JsonElement Expected)> All(string part) =>
        from one in Cases
        let expected = OracleCar.Part(one.GetProperty("expected"), part)
        where expected is not null
        select (one.GetProperty("case").GetInt32(), one.GetProperty("request"), expected.Value);

    private static CarAxle AxleOf(JsonElement request) => OracleCar.Word<CarAxle>(request, "axle")!.Value;

    private static string Names(CheckIdSet ids) => string.Join(' ', Enum.GetValues<CheckId>().Where(ids.Contains));

    private static JsonElement[] ReadCases()
    {
        using var file = File.OpenRead(Path.Combine(AppContext.BaseDirectory, "Oracle", "fitment_cases.json"));
        using var document = JsonDocument.Parse(file);
        return [.. document.RootElement.Clone().EnumerateArray()];
    }
}
