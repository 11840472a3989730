using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Diagnosis.Advice;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>A cause, with how likely it is; several may hold together.</summary>
public sealed record CauseResponse
{
    /// <summary>Which.</summary>
    [Sample("lowNegativeCamber")]
    public required WearCause Cause { get; init; }

    /// <summary>The axle it holds of; null for normal.</summary>
    [Sample("front")]
    public required CarAxle? Axle { get; init; }

    /// <summary>How likely it is, from 0 to 1.</summary>
    [Sample(0.86)]
    public required double Probability { get; init; }

    /// <summary>The same in plain words.</summary>
    [Sample("the front has too little negative camber")]
    public required string Meaning { get; init; }

    /// <summary>The tyres that show it.</summary>
    public required WheelPosition[] Tyres { get; init; }

    /// <summary>What speaks for and against it, the heaviest first.</summary>
    public required EvidenceResponse[] Evidence { get; init; }

    /// <summary>What to do; empty where a likelier cause in the same wear comes first.</summary>
    public required ActionResponse[] Actions { get; init; }
}

/// <summary>One observation for or against a cause.</summary>
public sealed record EvidenceResponse
{
    /// <summary>What was observed, with its numbers.</summary>
    [Sample("front: the outer shoulder is worn more than the inner one")]
    public required string Observation { get; init; }

    /// <summary>Whether it speaks for the cause.</summary>
    [Sample(true)]
    public required bool Supports { get; init; }

    /// <summary>How heavily: common logarithm of the likelihood ratio; 1 = ten times, 0.3 = twice.</summary>
    [Sample(0.8)]
    public required double Weight { get; init; }
}

/// <summary>What to do about a cause; amounts are null where nothing known gives one.</summary>
public sealed record ActionResponse
{
    /// <summary>As an instruction.</summary>
    [Sample("Set the front camber to −2.2°, 1.5° more negative than now.")]
    public required string Text { get; init; }

    /// <summary>Change to make now: of camber, or of toe per wheel.</summary>
    [Sample(-1.5)]
    public required double? StepDeg { get; init; }

    /// <summary>The same as total toe.</summary>
    [Sample(-2.0)]
    public required double? StepMm { get; init; }

    /// <summary>Change of the cold pressure to make now.</summary>
    [Sample(-20.0)]
    public required double? StepKpa { get; init; }

    /// <summary>Angle it leads to; null where left and right differ.</summary>
    [Sample(-2.2)]
    public required double? SettingDeg { get; init; }

    /// <summary>Total toe it leads to.</summary>
    [Sample(0.9)]
    public required double? SettingMm { get; init; }

    /// <summary>Cold pressure it leads to.</summary>
    [Sample(200.0)]
    public required double? SettingKpa { get; init; }

    /// <summary>What to read before the next step.</summary>
    [Sample("Read both front treads in 25 laps.")]
    public required string? Until { get; init; }

    /// <summary>Cambers as now, after the step, where it is heading.</summary>
    public required CamberTradeResponse[] TradeOff { get; init; }

    /// <summary>Whole change of the static camber it is heading for.</summary>
    public required UncertaintyResponse? CamberDeg { get; init; }

    /// <summary>Whole change of the toe of each wheel.</summary>
    public required UncertaintyResponse? ToeDeg { get; init; }

    /// <summary>The same as total toe across the rims.</summary>
    public required UncertaintyResponse? TotalToeMm { get; init; }

    /// <summary>Whole change of the cold pressure.</summary>
    public required UncertaintyResponse? ColdPressureKpa { get; init; }

    internal static ActionResponse From(WearAction action) => new()
    {
        Text = action.Text,
        StepDeg = action.StepDeg,
        StepMm = action.StepMm,
        StepKpa = action.StepKpa,
        SettingDeg = action.SettingDeg,
        SettingMm = action.SettingMm,
        SettingKpa = action.SettingKpa,
        Until = action.Until,
        TradeOff = [.. action.TradeOff.Select(CamberTradeResponse.From)],
        CamberDeg = Part(action.CamberDeg),
        ToeDeg = Part(action.ToeDeg),
        TotalToeMm = Part(action.TotalToeMm),
        ColdPressureKpa = Part(action.ColdPressureKpa),
    };

    private static UncertaintyResponse? Part(Estimate? estimate) => UncertaintyResponse.From(estimate);
}

/// <summary>What a static camber does at the same use.</summary>
public sealed record CamberTradeResponse
{
    /// <summary>Change of the static camber.</summary>
    [Sample(-1.5)]
    public required double CamberChangeDeg { get; init; }

    /// <summary>The static camber.</summary>
    [Sample(-2.2)]
    public required double? StaticCamberDeg { get; init; }

    /// <summary>By what the tread's life is multiplied.</summary>
    [Sample(1.2)]
    public required double? TreadLifeFactor { get; init; }

    /// <summary>Change of the axle's grip in its bends.</summary>
    public required UncertaintyResponse? GripChangePct { get; init; }

    /// <summary>Change of the most its tyres brake with.</summary>
    public required UncertaintyResponse? BrakingChangePct { get; init; }

    internal static CamberTradeResponse From(CamberTrade trade) => new()
    {
        GripChangePct = UncertaintyResponse.From(trade.GripChangePct),
        BrakingChangePct = UncertaintyResponse.From(trade.BrakingChangePct),
        CamberChangeDeg = trade.ChangeDeg,
        StaticCamberDeg = trade.StaticCamberDeg,
        TreadLifeFactor = trade.TreadLifeFactor,
    };
}
