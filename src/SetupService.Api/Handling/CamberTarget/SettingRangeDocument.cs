namespace SetupService.Api.Handling.CamberTarget;

/// <summary>How far the angles can be set.</summary>
public sealed record SettingRangeDocument
{
    /// <summary>Static camber.</summary>
    public CamberRangeDocument? CamberDeg { get; set; }

    /// <summary>Caster.</summary>
    public CasterRangeDocument? CasterDeg { get; set; }
}
