using SetupService.Api.Http.Contract;
using SetupService.Domain.Answers;

namespace SetupService.Api.Http.Queries;

/// <summary>The query parameters several calls share.</summary>
public static class QueryParameters
{
    /// <summary><c>units</c>: the units of texts and drawings made for people.</summary>
    public static EnumParameter Units { get; } = new(
        "units",
        "Units of the texts and drawings made for people; the numbers in JSON keep the unit their name ends in.",
        EnumNames<UnitSystem>.List,
        Default: "metric");

    /// <summary><c>widthPx</c>: how wide a chart will be shown.</summary>
    public static NumberParameter WidthPx { get; } = new(
        "widthPx",
        "How wide the picture will be shown, pixels; from 800 on its panels stand side by side. 400 where left out.",
        200, 4000, 900);
}
