namespace SetupService.Domain.Wear.Readings;

/// <summary>One value at each of the three places across a tread; outer and inner are away from and towards the car's centre plane.</summary>
/// <typeparam name="T">What is known there.</typeparam>
/// <param name="Outer">At the outer shoulder.</param>
/// <param name="Centre">In the middle.</param>
/// <param name="Inner">At the inner shoulder.</param>
public readonly record struct AcrossTread<T>(T Outer, T Centre, T Inner)
{
    /// <summary>The value at a place.</summary>
    public T At(TreadPlace place) => place switch
    {
        TreadPlace.Outer => Outer,
        TreadPlace.Centre => Centre,
        _ => Inner,
    };

    /// <summary>What a function makes of each value.</summary>
    public AcrossTread<TOther> Select<TOther>(Func<T, TOther> of)
    {
        ArgumentNullException.ThrowIfNull(of);
        return new(of(Outer), of(Centre), of(Inner));
    }
}

/// <summary>Where across a tread; outer and inner are away from and towards the car's centre plane.</summary>
public enum TreadPlace
{
    /// <summary>The outer shoulder.</summary>
    Outer,

    /// <summary>The middle.</summary>
    Centre,

    /// <summary>The inner shoulder.</summary>
    Inner,
}
