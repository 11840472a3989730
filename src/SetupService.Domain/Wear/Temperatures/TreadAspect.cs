namespace SetupService.Domain.Wear.Temperatures;

/// <summary>What of a tread's temperatures is looked at.</summary>
public enum TreadAspect
{
    /// <summary>Outer less inner shoulder.</summary>
    OuterLessInner,

    /// <summary>The hottest place less the coldest.</summary>
    WidestSpread,

    /// <summary>The middle less the mean of the shoulders.</summary>
    CentreLessShoulders,

    /// <summary>The mean of the three places against the range the tyre works in.</summary>
    MeanInWindow,
}
