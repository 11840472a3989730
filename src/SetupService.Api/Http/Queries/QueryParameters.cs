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
}
