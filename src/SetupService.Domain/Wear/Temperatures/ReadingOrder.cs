namespace SetupService.Domain.Wear.Temperatures;

/// <summary>What the order in which wheels were read does to a comparison.</summary>
public enum ReadingOrder
{
    /// <summary>They were read about equally long after the lap.</summary>
    Alike,

    /// <summary>One side had longer to cool.</summary>
    Apart,

    /// <summary>Nobody said when each was read.</summary>
    NotTimed,
}
