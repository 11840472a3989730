using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Temperatures;

/// <summary>A range of temperatures, or of differences of them, °C; both ends belong to it.</summary>
/// <param name="FromC">Lower end.</param>
/// <param name="ToC">Upper end.</param>
public readonly record struct TemperatureRange(double FromC, double ToC)
{
    /// <summary>Where a value lies.</summary>
    public RangeVerdict Judge(double valueC) => valueC < FromC ? RangeVerdict.Below : valueC > ToC ? RangeVerdict.Above : RangeVerdict.Within;

    /// <summary>Where a reading lies: outside only where its whole 90 % range does, unknown where its own error may put it within.</summary>
    public RangeVerdict Judge(in Estimate readC)
    {
        var (verdict, range) = (Judge(readC.Value), readC.Ninety);
        return verdict == RangeVerdict.Within || (Judge(range.Lower) == verdict && Judge(range.Upper) == verdict) ? verdict : RangeVerdict.Unknown;
    }
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
