namespace SetupService.Api.Drawings.Charts;

/// <summary>Neighbouring places of the shared axis at which no panel has a value.</summary>
/// <param name="First">The first place.</param>
/// <param name="Last">The last place.</param>
/// <param name="From">Where the shading begins: halfway to the neighbour that has one.</param>
/// <param name="To">Where it ends.</param>
internal readonly record struct MissingStretch(double First, double Last, double From, double To)
{
    /// <summary>The stretches among all places, given in order.</summary>
    public static List<MissingStretch> All(double[] places, HashSet<double> known)
    {
        var stretches = new List<MissingStretch>();
        for (var i = 0; i < places.Length; i++)
        {
            if (known.Contains(places[i])) continue;
            var first = i;
            while (i + 1 < places.Length && !known.Contains(places[i + 1])) i++;
            stretches.Add(new(
                places[first],
                places[i],
                first == 0 ? places[first] : (places[first - 1] + places[first]) / 2,
                i + 1 == places.Length ? places[i] : (places[i] + places[i + 1]) / 2));
        }

        return stretches;
    }
}
