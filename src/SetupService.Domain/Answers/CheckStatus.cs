namespace SetupService.Domain.Answers;

/// <summary>How one check of an answer turned out.</summary>
public enum CheckStatus
{
    /// <summary>Nothing speaks against it.</summary>
    Pass,

    /// <summary>It can go wrong within the stated uncertainty, or somebody else has to decide.</summary>
    Caution,

    /// <summary>It does not fit, does not carry, or breaks a stated limit.</summary>
    Fail,

    /// <summary>Something needed for the check was not given; nothing is guessed in its place.</summary>
    Unknown,
}
