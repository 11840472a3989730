using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Http.Faults;

/// <summary>One fault of a request: where it is, which kind it is, and what to do about it.</summary>
public sealed record Fault
{
    /// <summary>JSON Pointer (RFC 6901) into the body sent; "" is the whole body. Left out for a query parameter.</summary>
    [Sample("/candidate/wheel/rimWidthIn")]
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Pointer { get; init; }

    /// <summary>Name of the query parameter or header at fault. Left out where the body is at fault.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    [Sample("marking")]
    public string? Parameter { get; init; }

    /// <summary>The kind of fault, one of the codes explained at /docs/problems/codes. Codes never change meaning.</summary>
    [Sample(FaultCodes.OutOfRange)]
    public required string Code { get; init; }

    /// <summary>A sentence for a person, quoting the value sent. Its wording may change.</summary>
    [Sample("rimWidthIn is 21; it must be from 3 to 16 in.")]
    public required string Message { get; init; }

    /// <summary>The limits broken; left out where the fault has none.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public FaultLimits? Limits { get; init; }

    /// <summary>The length the parts lack at best; only with the code <c>unreachable</c>, where parts do not meet.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    [Sample(4.2)]
    public double? ResidualMm { get; init; }

    /// <summary>Line in the body, from 1; only where the body is not JSON or nests too deeply.</summary>
    [Sample(1)]
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public int? Line { get; init; }

    /// <summary>Character in that line, from 1; only where the body is not JSON or nests too deeply.</summary>
    [Sample(14)]
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public int? Column { get; init; }

    /// <summary>A fault at a place of the body.</summary>
    public static Fault At(string pointer, string code, string message, FaultLimits? limits = null) =>
        new() { Pointer = pointer, Code = code, Message = message, Limits = limits };

    /// <summary>A fault of a query parameter or header.</summary>
    public static Fault ForParameter(string parameter, string code, string message, FaultLimits? limits = null) =>
        new() { Parameter = parameter, Code = code, Message = message, Limits = limits };
}
