namespace SetupService.Domain.Tests.Wear.Vignettes;

/// <summary>Where the claims of the vignettes stand.</summary>
internal static class Guidance
{
    /// <summary>Wear diagnosis passages of workshop manuals of four vehicle makers and one of the 1940s, generic statements.</summary>
    public const string Service = "SERVICE: wear diagnosis in workshop manuals";

    /// <summary>Said by the trade and its handbooks; no text of it could be read.</summary>
    public const string Practice = "common practice, no source";

    /// <summary>Convoy tests at controlled alignment: outer grooves wore 10 to 50 % more than inner ones.</summary>
    public const string Convoy = "ROSAP5836: groove wear patterns in treadwear statistics, US DOT 1984-85, abstract";

    /// <summary>Under-inflation puts the load on the shoulders; tread life falls with it.</summary>
    public const string TreadLife = "TPMS: NHTSA tyre-pressure monitoring rule, final economic assessment, tread life";
}
