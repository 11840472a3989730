namespace SetupService.Domain.Answers;

/// <summary>The edition of model and tables every answer names, so that a result can be reproduced later.</summary>
public static class Edition
{
    /// <summary>The edition in force: year and month of the last change to a formula, a constant or a table.</summary>
    public const string Current = "2026.11";
}
