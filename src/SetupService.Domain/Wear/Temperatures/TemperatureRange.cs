namespace SetupService.Domain.Wear.Temperatures;

/// <summary>A range of temperatures, or of differences of them, °C; both ends belong to it.</summary>
/// <param name="FromC">Lower end.</param>
/// <param name="ToC">Upper end.</param>
public readonly record struct TemperatureRange(double FromC, double ToC)
{
    /// <summary>Where a value lies.</summary>
    public RangeVerdict Judge(double valueC) => valueC < FromC ? RangeVerdict.Below : valueC > ToC ? RangeVerdict.Above : RangeVerdict.Within;
}

/// <summary>Where a figure lies relative to its range.</summary>
public enum RangeVerdict
{
    /// <summary>Below it.</summary>
    Below,

    /// <summary>In it.</summary>
    Within,

    /// <summary>Above it.</summary>
    Above,

    /// <summary>Not known.</summary>
    Unknown,
}
