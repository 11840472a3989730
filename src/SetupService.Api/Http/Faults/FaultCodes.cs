namespace SetupService.Api.Http.Faults;

/// <summary>Every code a fault of a request can have. Part of the contract: a code never changes its meaning.</summary>
public static class FaultCodes
{
    /// <summary>The body is not JSON text in UTF-8.</summary>
    public const string Syntax = "syntax";

    /// <summary>The body nests deeper than the service reads.</summary>
    public const string TooDeep = "tooDeep";

    /// <summary>Something that has to be there is missing or null.</summary>
    public const string Required = "required";

    /// <summary>An object has a member the contract does not know.</summary>
    public const string UnknownMember = "unknownMember";

    /// <summary>An object names the same member twice.</summary>
    public const string DuplicateMember = "duplicateMember";

    /// <summary>A value is of another JSON type than the contract says.</summary>
    public const string WrongType = "wrongType";

    /// <summary>A number is too large for double precision.</summary>
    public const string NotFinite = "notFinite";

    /// <summary>A number is outside its limits.</summary>
    public const string OutOfRange = "outOfRange";

    /// <summary>A text is none of the words of a closed set.</summary>
    public const string UnknownWord = "unknownWord";

    /// <summary>A text is longer than accepted.</summary>
    public const string TooLong = "tooLong";

    /// <summary>An array has more elements than accepted.</summary>
    public const string TooMany = "tooMany";

    /// <summary>An array has fewer elements than needed.</summary>
    public const string TooFew = "tooFew";

    /// <summary>A text people type (a marking, a bolt circle, a thread) cannot be read.</summary>
    public const string Unreadable = "unreadable";

    /// <summary>Two values of the request contradict each other.</summary>
    public const string Inconsistent = "inconsistent";

    /// <summary>What is described can not take the position, or come to the angle, asked for.</summary>
    public const string Unreachable = "unreachable";

    /// <summary>What is given leaves open what is asked for.</summary>
    public const string Undetermined = "undetermined";

    /// <summary>The request takes more work than the service does for one.</summary>
    public const string WorkExceeded = "workExceeded";

    /// <summary>A key is none of a client's.</summary>
    public const string UnknownKey = "unknownKey";

    /// <summary>A signed address does not hold.</summary>
    public const string BadSignature = "badSignature";

    /// <summary>The work allowed is used up for now.</summary>
    public const string LimitReached = "limitReached";

    /// <summary>The call has no query parameter of this name.</summary>
    public const string UnknownParameter = "unknownParameter";

    /// <summary>A query parameter is given more than once.</summary>
    public const string RepeatedParameter = "repeatedParameter";

    /// <summary>There are more faults than one answer lists.</summary>
    public const string MoreFaults = "moreFaults";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        Syntax, TooDeep, Required, UnknownMember, DuplicateMember, WrongType, NotFinite, OutOfRange, UnknownWord, TooLong,
        TooMany, TooFew, Unreadable, Inconsistent, Unreachable, Undetermined, WorkExceeded, UnknownKey, BadSignature, LimitReached, UnknownParameter, RepeatedParameter, MoreFaults,
    ];
}
