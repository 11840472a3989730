using System.Text.Json;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Domain.Tests.Oracle;

/// <summary>Builds the domain's adjustments and rooms from a case.</summary>
internal static class OracleAdjuster
{
    public static Adjustment[] Adjustments(JsonElement one) =>
        [.. one.GetProperty("adjustments").EnumerateArray().Select(adjustment => Read(adjustment) with { Amount = adjustment.GetProperty("amount").GetDouble() })];

    public static AdjusterRoom[] Rooms(JsonElement one) =>
        [.. one.GetProperty("adjusters").EnumerateArray().Select(room =>
            new AdjusterRoom(Read(room), room.GetProperty("minimum").GetDouble(), room.GetProperty("maximum").GetDouble()))];

    private static Adjustment Read(JsonElement adjuster) => new(OracleCar.Word<Adjuster>(adjuster, "adjuster")!.Value, 0)
    {
        LinkIndex = OracleCar.Part(adjuster, "link") is { } link ? link.GetInt32() - 1 : 0,
        BoltSpacingMm = OracleCar.Number(adjuster, "boltSpacingMm") ?? 0,
        Pivot = OracleCar.Part(adjuster, "pivot") is null ? null : OracleSuspension.Point(adjuster, "pivot"),
    };
}
