using System.Text.Json;

namespace SetupService.Domain.Tests.Oracle;

/// <summary>
/// Corners of every kind, plain, random and hard, solved a second time by another formulation: every figure of every row. See
/// README.md beside this file. A corner is a test by its name.
/// </summary>
public sealed class CornerOracleTests
{
    public static TheoryData<string> Corners() => GeometryCases.Names("corners");

    [Theory]
    [MemberData(nameof(Corners))]
    public void A_corner_moves_as_the_second_working_says(string name)
    {
        var corner = GeometryCases.Named("corners", name);
        var request = corner.GetProperty("request");
        var differences = new Disagreements();
        foreach (var row in corner.GetProperty("rows").EnumerateArray()) Compare(differences, request, row);
        differences.AssertNone(atLeastCompared: 4 * (GeometryCases.Columns.Count - 1));
    }

    [Fact]
    public void No_hard_case_is_missing()
    {
        string[] hard =
        [
            "near-singular pose", "full droop", "long travel", "long travel of a strut", "zero scrub", "negative scrub", "high caster", "big lock",
            "arm nearly in line", "upright steering axis", "steep trailing arm", "much camber and toe", "five links that steer", "frame far from origin",
        ];

        Assert.Empty(hard.Except(GeometryCases.All("corners").Select(corner => corner.GetProperty("name").GetString())));
    }

    private static void Compare(Disagreements differences, JsonElement request, JsonElement expected)
    {
        var (travelMm, rackMm) = (expected[0].GetDouble(), expected[1].GetDouble());
        var (reached, unreachable) = OracleCorner.At(request, travelMm, rackMm);
        Assert.True(reached is not null, $"travel {travelMm}, rack {rackMm}: {unreachable}");
        for (var i = 0; i < GeometryCases.Columns.Count; i++)
        {
            var column = GeometryCases.Columns[i];
            var wanted = GeometryCases.Number(expected[i]);

            // Where no diameter is given the domain's caller takes a default one, the second working none.
            if (column == "bumpSteerMmPer10Mm" && wanted is null) continue;

            // Of a twist beam whose wheels move alike the second working tells what roll would make of that motion; the domain tells no such thing.
            if (reached.Value.Wheel.IsBeamInHeave && column is ("rollCentreHeightMm" or "camberGainPerRoll")) wanted = null;
            differences.Number(
                $"travel {travelMm}, rack {rackMm}, {column}", wanted, SweepFigures.Of(reached.Value, column), SweepFigures.Tolerance(column, wanted ?? 0));
        }
    }
}
