namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>What each cause does to the signs and marks of an axle, from the rows of <see cref="WearTable"/>.</summary>
internal static class CauseEffects
{
    /// <summary>The edge dragged across the road, behind the marks that are read: two of those tell it.</summary>
    public const int Edge = AxleSigns.MarkCount;

    private static readonly SignShift[][] Shifts = ByCause<SignShift>(cause => [.. WearTable.Shifts.Where(shift => shift.Cause == cause)]);
    private static readonly MarkEffect[][] Marks = ByCause(Find);

    /// <summary>What is seen of marks where there is no cause.</summary>
    public static MarkEffect[] OnMarksWithoutCause { get; } = Find(WearCause.Normal);

    /// <summary>How a cause misses each mark it makes; shared, not to be written to.</summary>
    public static MarkEffect[] OnMarks(int cause) => Marks[cause];

    /// <summary>What a cause does to each sign at a use, rows of one sign added up.</summary>
    public static SignEffect[] OnSigns(int cause, double trackShare)
    {
        var shifts = Shifts[cause];
        var effects = new List<SignEffect>(shifts.Length);
        foreach (var shift in shifts)
        {
            var share = shift.By switch { UseShare.Track => trackShare, UseShare.Road => 1 - trackShare, _ => 1 };
            var (mean, variance) = (share * shift.Mean, share * share * shift.Spread * shift.Spread);
            var at = effects.FindIndex(effect => effect.Sign == (int)shift.Sign);
            if (at < 0) effects.Add(new((int)shift.Sign, mean, variance));
            else effects[at] = new((int)shift.Sign, effects[at].Mean + mean, effects[at].Variance + variance);
        }

        return [.. effects];
    }

    private static T[][] ByCause<T>(Func<WearCause, T[]> rows)
    {
        var all = new T[AxlePosterior.CauseCount][];
        for (var cause = 0; cause < all.Length; cause++) all[cause] = rows((WearCause)cause);
        return all;
    }

    private static MarkEffect[] Find(WearCause cause) =>
        [
            .. WearTable.Marks.Where(mark => mark.Cause == cause).Select(mark => new MarkEffect((int)mark.Mark, 1 - mark.Probability)),
            .. WearTable.DraggedEdge.Where(edge => edge.Cause == cause).Select(edge => new MarkEffect(Edge, 1 - edge.Probability)),
        ];
}

/// <summary>What a cause adds to a sign: its mean, in the sign's unit, and its variance.</summary>
internal readonly record struct SignEffect(int Sign, double Mean, double Variance);

/// <summary>The chance that a cause does not make a mark.</summary>
internal readonly record struct MarkEffect(int Mark, double Miss);
