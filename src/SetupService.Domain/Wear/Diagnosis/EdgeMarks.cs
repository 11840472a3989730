namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>
/// Grains on the outer shoulder and scuffs past it, which are one finding of an edge dragged in bends and not two: whether it was dragged is not read itself.
/// </summary>
/// <param name="Grains">Whether grains were found; null = not looked at.</param>
/// <param name="Past">Whether the tread is worn past the shoulder; null = not looked at.</param>
internal readonly record struct EdgeMarks(bool? Grains, bool? Past)
{
    // Edges are hardly dragged where nobody drives on a track: so much as often; judgement.
    private const double DraggedOnRoad = 0.25;

    /// <summary>True where any of the two was looked for.</summary>
    public bool IsSeen => Grains is not null || Past is not null;

    /// <summary>True of the two marks.</summary>
    public static bool Holds(int mark) => mark is (int)WearMark.ShoulderGraining or (int)WearMark.WornPastShoulder;

    /// <summary>How likely a mark shows a dragged edge; 0 of a mark that does not.</summary>
    public static double Shows(int mark) => (WearMark)mark switch
    {
        WearMark.ShoulderGraining => WearTable.GrainsOnDraggedEdge,
        WearMark.WornPastShoulder => WearTable.PastDraggedEdge,
        _ => 0,
    };

    /// <summary>How often edges are dragged, against a car that sees the track.</summary>
    public static double DraggedShare(double seesTrack) => DraggedOnRoad + ((1 - DraggedOnRoad) * seesTrack);

    /// <summary>How likely what was found is: the edge was dragged, which shows in either mark, or was not.</summary>
    /// <param name="grains">How likely nothing else makes grains.</param>
    /// <param name="past">How likely nothing else wears past the shoulder.</param>
    /// <param name="missed">How likely the edge was not dragged.</param>
    public double Likelihood(double grains, double past, double missed)
    {
        var dragged = ChanceOf(Grains, grains * (1 - WearTable.GrainsOnDraggedEdge)) * ChanceOf(Past, past * (1 - WearTable.PastDraggedEdge));
        return ((1 - missed) * dragged) + (missed * ChanceOf(Grains, grains) * ChanceOf(Past, past));

        static double ChanceOf(bool? found, double miss) => found switch { true => 1 - miss, false => miss, null => 1 };
    }
}
