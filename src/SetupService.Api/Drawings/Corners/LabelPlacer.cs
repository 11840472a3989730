namespace SetupService.Api.Drawings.Corners;

/// <summary>Finds places for labels: inside the view, never on another label, and clear of lines where there is room.</summary>
internal sealed class LabelPlacer(PictureBox region)
{
    private const double OutsideCost = 1e6;
    private const double OnLabelCost = 1e4;
    private const double OnLineCost = 10;

    private readonly List<PictureBox> _labels = [];
    private readonly List<((double X, double Y) From, (double X, double Y) To)> _lines = [];

    public PictureBox Region => region;

    /// <summary>Keeps labels off a rectangle.</summary>
    public void Keep(PictureBox box) => _labels.Add(box);

    /// <summary>Keeps labels off a line as far as there is room elsewhere.</summary>
    public void Keep((double X, double Y) from, (double X, double Y) to) => _lines.Add((from, to));

    /// <summary>The best of several places, the nearest given first.</summary>
    /// <param name="width">Width of the label.</param>
    /// <param name="height">Its height.</param>
    /// <param name="centres">Places for its middle.</param>
    /// <param name="stepCost">What each step down the list costs; standing on a line costs 10.</param>
    public PictureBox Place(double width, double height, IEnumerable<(double X, double Y)> centres, double stepCost)
    {
        var nearest = centres.ToList();
        var (best, cost) = Best(nearest, width, height, stepCost);

        // Where all of them are taken, anywhere in the view, the nearer the better.
        if (cost >= OnLabelCost) (best, _) = Best(Everywhere(nearest[0], height), width, height, stepCost);
        _labels.Add(best);
        return best;
    }

    /// <summary>Places on rings around a point, the nearest first.</summary>
    public static IEnumerable<(double X, double Y)> Around((double X, double Y) point, double firstRadius, double widthShare)
    {
        const int Rings = 9;
        const int Directions = 16;
        for (var ring = 0; ring < Rings; ring++)
        {
            var radius = firstRadius * (1 + (0.45 * ring));
            for (var i = 0; i < Directions; i++)
            {
                var (sin, cos) = Math.SinCos((2 * Math.PI * i / Directions) - (Math.PI / 4));
                yield return (point.X + (radius * widthShare * cos), point.Y + (radius * sin));
            }
        }
    }

    private (PictureBox Box, double Cost) Best(IEnumerable<(double X, double Y)> centres, double width, double height, double stepCost)
    {
        var (best, least) = (default(PictureBox), double.PositiveInfinity);
        var steps = 0;
        foreach (var centre in centres)
        {
            var box = PictureBox.Around(centre, width, height);
            var cost = Cost(box) + (stepCost * steps++);
            if (cost < least) (best, least) = (box, cost);
        }

        return (best, least);
    }

    private List<(double X, double Y)> Everywhere((double X, double Y) from, double step)
    {
        var places = new List<(double X, double Y)>();
        for (var y = region.Top + (step / 2); y < region.Bottom; y += step)
        {
            for (var x = region.Left + (step / 2); x < region.Right; x += step) places.Add((x, y));
        }

        return [.. places.OrderBy(place => Math.Abs(place.X - from.X) + Math.Abs(place.Y - from.Y))];
    }

    private double Cost(PictureBox box)
    {
        var cost = region.Contains(box) ? 0 : OutsideCost;
        foreach (var label in _labels)
        {
            if (label.Overlaps(box)) cost += OnLabelCost;
        }

        foreach (var (from, to) in _lines)
        {
            if (box.Clip(from, to) is not null) cost += OnLineCost;
        }

        return cost;
    }
}
