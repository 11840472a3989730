using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Api.Tyres;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Fitment.Window;

/// <summary>A tyre, and the rim widths for which the feasible offsets are wanted.</summary>
public sealed record WindowRequest
{
    /// <summary>Which axle.</summary>
    [JsonRequired]
    [Sample("front")]
    public CarAxle Axle { get; set; }

    /// <summary>The car; its gaps and present wheel and tyre decide.</summary>
    [JsonRequired]
    public VehicleDocument Vehicle { get; set; } = null!;

    /// <summary>The tyre to be fitted.</summary>
    [JsonRequired]
    public TyreDocument Tyre { get; set; } = null!;

    /// <summary>The rim widths asked about.</summary>
    [JsonRequired]
    [Range(3, 16)]
    [Count(1, 50)]
    [Sample(8.0)]
    public double[] RimWidthsIn { get; set; } = [];

    /// <summary>A change of static camber made at the same time.</summary>
    public CamberChangeDocument? CamberChange { get; set; }

    /// <summary>What the caller wants of the margins.</summary>
    public TolerancesDocument? Tolerances { get; set; }
}

/// <summary>The answer to a question for feasible offsets.</summary>
public sealed record WindowAnswer
{
    /// <summary>One window a rim width, in the order asked.</summary>
    public required WindowResponse[] Windows { get; init; }

    /// <summary>The ends left null, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>The page under /docs/methods that derives the ends.</summary>
    [Sample("fitment-window")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>The calls that usually follow.</summary>
    public required NextCallResponse[] Next { get; init; }

    /// <summary>What was taken although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

/// <summary>The feasible offsets of one rim width.</summary>
public sealed record WindowResponse
{
    /// <summary>The rim width.</summary>
    [Sample(8.0)]
    public required double RimWidthIn { get; init; }

    /// <summary>Whether any offset fits: unknown where neither end is known.</summary>
    [Sample("pass")]
    public required WindowStatus Status { get; init; }

    /// <summary>The offsets that fail no check of room.</summary>
    public required OffsetRange OffsetMm { get; init; }

    /// <summary>The places that set the ends.</summary>
    public required WindowLimits LimitedBy { get; init; }

    /// <summary>The place that no offset can clear; null where there is none.</summary>
    [Sample("radialClearance")]
    public required CheckId? BlockedBy { get; init; }

    /// <summary>Whether the tyre permits a rim of this width, as the check of the rim width tells it.</summary>
    [Sample("pass")]
    public required CheckStatus RimWidthStatus { get; init; }
}

/// <summary>Offsets from one end to the other; <c>from</c> above <c>to</c> where nothing fits between them.</summary>
public sealed record OffsetRange
{
    /// <summary>The least offset: with any less the wheel stands out too far; null where no outboard gap is known.</summary>
    [Sample(31.2)]
    public required double? From { get; init; }

    /// <summary>The greatest offset: with any more the wheel stands in too far; null where no inboard gap is known.</summary>
    [Sample(49.6)]
    public required double? To { get; init; }
}

/// <summary>The places that set the ends of a window.</summary>
public sealed record WindowLimits
{
    /// <summary>The place that sets the least offset; null where that end is not known.</summary>
    [Sample("outboardClearance")]
    public required CheckId? From { get; init; }

    /// <summary>The place that sets the greatest offset; null where that end is not known.</summary>
    [Sample("inboardClearance")]
    public required CheckId? To { get; init; }
}
