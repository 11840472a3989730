using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Fitment;

/// <summary>Where static camber is changed.</summary>
[JsonConverter(typeof(WordConverter<CamberChangeAt>))]
public enum CamberChangeAt
{
    /// <summary>The strut's top is moved; strut, upright and wheel turn together.</summary>
    StrutTop,

    /// <summary>The upright is turned on the strut.</summary>
    StrutToKnuckle,

    /// <summary>The lower ball joint is moved.</summary>
    LowerJoint,
}
