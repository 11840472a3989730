namespace SetupService.Domain.Suspension.Search;

/// <summary>A corner as it stands after something was adjusted, whatever it is known by.</summary>
public abstract class AdjustableCorner
{
    private protected AdjustableCorner()
    {
    }

    /// <summary>Camber as it stands, degrees.</summary>
    public abstract double CamberDeg { get; }

    /// <summary>Caster as it stands, degrees; null where it has none or it is not known.</summary>
    public abstract double? CasterDeg { get; }

    /// <summary>Toe of the wheel, degrees; null where it is not known.</summary>
    public abstract double? ToeDeg { get; }

    /// <summary>How far outboard the tyre's top stands, mm; null where it is not known.</summary>
    public abstract double? TyreTopOutboardMm { get; }

    /// <summary>Everything that is told of it as it stands.</summary>
    public abstract AdjustedFigures Told { get; }

    /// <summary>The corner as it is described; null where its suspension contradicts itself, does not hold its wheel, or is not known at the stated height.</summary>
    public static AdjustableCorner? AsStated(SuspensionModel suspension, WheelSetup setup)
    {
        ArgumentNullException.ThrowIfNull(suspension);
        ArgumentNullException.ThrowIfNull(setup);
        return suspension switch
        {
            _ when suspension.Contradictions.Count > 0 => null,
            HardpointSuspension points => AdjustedCorner.AsStated(points.Mechanism(setup), setup.RideHeightChangeMm, setup.StatedAxis?.CasterDeg),
            MeasuredSuspension { Corner: { } corner } => AdjustedReadings.AsStated(corner, setup),
            FigureSuspension => AdjustedAngles.AsStated(setup),
            _ => null,
        };
    }

    /// <summary>The corner with adjustments made, all from how it stands now; null where it then does not close or is not known.</summary>
    /// <param name="adjustments">What is adjusted, by how much.</param>
    /// <param name="resetToe">Whether toe is then set to what it is now.</param>
    public abstract AdjustableCorner? With(ReadOnlySpan<Adjustment> adjustments, bool resetToe);

    /// <summary>Why what is asked of it is not known; null where it is, or whether it is shows only when it is done.</summary>
    /// <param name="used">What is or may be adjusted.</param>
    /// <param name="target">The angles wanted.</param>
    /// <param name="keepsArchGap">Whether a gap to the arch is to be kept.</param>
    public abstract string? NotTold(ReadOnlySpan<Adjustment> used, AngleTarget target, bool keepsArchGap);

    /// <summary>Why adjustments for which <see cref="With"/> gives nothing cannot be made, as a clause, and by how much the parts miss each other, mm.</summary>
    public abstract (string Reason, double ResidualMm) WhyNot(ReadOnlySpan<Adjustment> adjustments, bool resetToe);

    /// <summary>The figures left out of it and of what it becomes, and why.</summary>
    public abstract IReadOnlyList<FigureGap> Gaps(AdjustableCorner after);
}
