using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Fitment.Batch;

/// <summary>How much a line of a batch's answer tells.</summary>
[JsonConverter(typeof(WordConverter<BatchDetail>))]
public enum BatchDetail
{
    /// <summary>Verdict, governing place and its room, what failed and what is unknown.</summary>
    Compact,

    /// <summary>The whole answer of the single call as well.</summary>
    Full,
}
