namespace SetupService.Domain.Wear.StraightWear;

/// <summary>What wear is counted against.</summary>
public enum WearClock
{
    /// <summary>Nothing: neither clock moves between the readings.</summary>
    None,

    /// <summary>Kilometres on the road alone; the laps stand still.</summary>
    Road,

    /// <summary>Laps alone; the kilometres stand still.</summary>
    Track,

    /// <summary>Both, told apart.</summary>
    Both,

    /// <summary>Both, always in the same proportion: only what they do together can be told.</summary>
    InProportion,
}
