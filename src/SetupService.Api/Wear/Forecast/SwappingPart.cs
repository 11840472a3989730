namespace SetupService.Api.Wear.Forecast;

/// <summary>What swapping with the other tyre brings, each going on at the other's rates; outer stays outer. By the estimates, in this tyre's proportion of road and track.</summary>
public sealed record SwappingPart
{
    /// <summary>The best time, and how long until the first of both is done.</summary>
    public required ChangeOfPlacePart Change { get; init; }

    /// <summary>This tyre where it is.</summary>
    public required TyreLifePart ThisHere { get; init; }

    /// <summary>This tyre in the other's place from now on.</summary>
    public required TyreLifePart ThisThere { get; init; }

    /// <summary>The other tyre where it is.</summary>
    public required TyreLifePart OtherThere { get; init; }

    /// <summary>The other tyre in this one's place from now on.</summary>
    public required TyreLifePart OtherHere { get; init; }
}
