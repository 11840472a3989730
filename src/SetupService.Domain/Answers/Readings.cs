namespace SetupService.Domain.Answers;

/// <summary>Makes the two outcomes of reading a text.</summary>
public static class Readings
{
    /// <summary>The text was read.</summary>
    public static Reading<T> Of<T>(T value)
        where T : class => new(value, null);

    /// <summary>The text was not read; <paramref name="part"/> at <paramref name="position"/> is why.</summary>
    public static Reading<T> Failed<T>(string part, int position, string message)
        where T : class => new(null, new ReadingFault(part, position, message));
}
