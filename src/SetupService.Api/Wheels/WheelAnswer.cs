using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Wheels;

/// <summary>What a wheel's marking says, named as in a wheel document, and its spacings.</summary>
public sealed record WheelAnswer
{
    /// <summary>The marking as sent.</summary>
    [Sample("8.5Jx18 ET44")]
    public required string Marking { get; init; }

    /// <summary>Nominal rim diameter code.</summary>
    [Sample(18.0)]
    public required double RimDiameterIn { get; init; }

    /// <summary>Rim width between the flanges.</summary>
    [Sample(8.5)]
    public required double RimWidthIn { get; init; }

    /// <summary>Wheel offset, positive = mounting face outboard of the rim's centre plane; null where none is stamped.</summary>
    [Sample(44.0)]
    public required double? OffsetMm { get; init; }

    /// <summary>Holes and their circle in mm, both circles of a wheel drilled for two; null where none is stamped.</summary>
    [Sample("5x108")]
    public required string? BoltCircle { get; init; }

    /// <summary>Diameter of the centre hole; null where none is stamped.</summary>
    [Sample(66.6)]
    public required double? CentreBoreMm { get; init; }

    /// <summary>Load the wheel is rated for; null where none is stamped.</summary>
    [Sample(690.0)]
    public required double? LoadRatingKg { get; init; }

    /// <summary>The marking in its usual spelling.</summary>
    [Sample("8.5Jx18 ET44")]
    public required string StandardMarking { get; init; }

    /// <summary>Flange contour as stamped; null where none is.</summary>
    [Sample("J")]
    public required string? Contour { get; init; }

    /// <summary>Hump as stamped; null where none is.</summary>
    [Sample("H2")]
    public required string? Hump { get; init; }

    /// <summary>The wheel from flange edge to flange edge, with the standard's least flange width.</summary>
    [Sample(237.9)]
    public required double OverFlangesMm { get; init; }

    /// <summary>Mounting face to the inboard flange edge; null without an offset.</summary>
    [Sample(162.95)]
    public required double? BackspacingMm { get; init; }

    /// <summary>Mounting face to the outboard flange edge; null without an offset.</summary>
    [Sample(74.95)]
    public required double? FrontspacingMm { get; init; }

    /// <summary>The page under /docs/methods that says how markings are read.</summary>
    [Sample("wheel-marking")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was taken although the marking does not say it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>The answer for a marking that was read.</summary>
    internal static WheelAnswer From(WheelMarking marking, UnitSystem units) => new()
    {
        Marking = marking.Text,
        RimDiameterIn = marking.RimDiameterIn,
        RimWidthIn = marking.RimWidthIn,
        OffsetMm = marking.OffsetMm,
        BoltCircle = marking.BoltCircle?.ToString(),
        CentreBoreMm = marking.CentreBoreMm,
        LoadRatingKg = marking.LoadRatingKg,
        StandardMarking = marking.StandardText,
        Contour = marking.Contour,
        Hump = marking.Hump,
        OverFlangesMm = marking.OverFlangesMm,
        BackspacingMm = marking.BackspacingMm,
        FrontspacingMm = marking.FrontspacingMm,
        Method = "wheel-marking",
        Edition = Domain.Answers.Edition.Current,
        Assumptions = marking.IsFlangeAssumed ? [AssumedFlange(units)] : [],
    };

    private static AssumptionResponse AssumedFlange(UnitSystem units) => new()
    {
        Input = "/marking",
        Value = null,
        Text = "J flange",
        Source = "JIS D 4218:2021 Table 3 (ISO 4000-2:2013); that it is J is common practice, no source",
        Reason = Prose.Write(units, $"No flange contour that the standard lists is stamped; the spacings count flanges of at least {11.0:mm}."),
    };
}
