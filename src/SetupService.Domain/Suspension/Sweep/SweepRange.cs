namespace SetupService.Domain.Suspension.Sweep;

/// <summary>Equally spaced values from one end to the other, both included where the step meets the end.</summary>
/// <param name="From">First value.</param>
/// <param name="To">The end not to be passed.</param>
/// <param name="Step">From one value to the next; of the sign that leads to the end. Not 0.</param>
public readonly record struct SweepRange(double From, double To, double Step)
{
    // A step that misses the end by rounding meets it.
    private const double StepSlack = 1e-9;

    /// <summary>One value only.</summary>
    public static SweepRange Only(double value) => new(value, value, 1);

    /// <summary>How many values there are: 0 where the step leads away from the end, and never more than 2 147 483 647.</summary>
    public int Count
    {
        get
        {
            var steps = Math.Floor(((To - From) / Step) + StepSlack);
            return steps < 0 ? 0 : (int)Math.Min(steps, int.MaxValue - 1) + 1;
        }
    }

    /// <summary>The value at a place, counted from 0.</summary>
    public double this[int index] => From + (index * Step);
}
