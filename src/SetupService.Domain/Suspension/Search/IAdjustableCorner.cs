namespace SetupService.Domain.Suspension.Search;

/// <summary>A corner that can be adjusted: one solved from its points, or one known by measuring.</summary>
/// <typeparam name="TSelf">The corner itself.</typeparam>
public interface IAdjustableCorner<TSelf>
    where TSelf : class, IAdjustableCorner<TSelf>
{
    /// <summary>Camber as it stands, degrees.</summary>
    double CamberDeg { get; }

    /// <summary>Caster as it stands, degrees; null where it has none or it is not known.</summary>
    double? CasterDeg { get; }

    /// <summary>How far outboard the tyre's top stands, mm; null where it is not known.</summary>
    double? TyreTopOutboardMm { get; }

    /// <summary>The corner with adjustments made, all from how it stands now; null where it then does not close or is not known.</summary>
    TSelf? With(ReadOnlySpan<Adjustment> adjustments, bool resetToe);
}
