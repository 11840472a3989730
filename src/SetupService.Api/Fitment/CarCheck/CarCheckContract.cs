using System.Text.Json.Serialization;
using SetupService.Api.Fitment.Check;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Fitment.CarCheck;

/// <summary>Wheels and tyres for a whole car: for both axles, or for one with the other left as it is.</summary>
public sealed record CarCheckRequest
{
    /// <summary>The car, as far as it is known. What is missing makes checks unknown, never an error.</summary>
    [JsonRequired]
    public VehicleDocument Vehicle { get; set; } = null!;

    /// <summary>The wheel and tyre for the front axle; where left out the front stays as it is.</summary>
    public FittingDocument? Front { get; set; }

    /// <summary>The wheel and tyre for the rear axle; where left out the rear stays as it is.</summary>
    public FittingDocument? Rear { get; set; }

    /// <summary>What the caller wants of the margins.</summary>
    public TolerancesDocument? Tolerances { get; set; }

    /// <summary>The checks whose being unknown makes the verdict unknown; where left out, the usual ones of a check.</summary>
    [Count(0, 17)]
    [Sample("inboardClearance")]
    public CheckId[]? Required { get; set; }
}

/// <summary>The answer to a check of a whole car.</summary>
public sealed record CarCheckAnswer
{
    /// <summary>The answer for a customer: the verdict on the car, what decided it at which axle, what to do by hand; at most five sentences.</summary>
    [Sample("Fits front and rear. Turn every wheel by hand over full travel and lock before driving.")]
    public required string Summary { get; init; }

    /// <summary>The gravest verdict of both axles.</summary>
    [Sample("pass")]
    public required CheckStatus Verdict { get; init; }

    /// <summary>The checks the verdict was made by, each with its axle; empty for a pass.</summary>
    public required AxleCheckResponse[] DecidedBy { get; init; }

    /// <summary>JSON Pointers to the inputs that would settle what is unknown, those the verdict waits for first.</summary>
    [Sample("/vehicle/front/clearance/springSeatMm")]
    public required string[] Needs { get; init; }

    /// <summary>The check of the front axle; null where the front stays as it is.</summary>
    public required CheckAnswer? Front { get; init; }

    /// <summary>The check of the rear axle; null where the rear stays as it is.</summary>
    public required CheckAnswer? Rear { get; init; }

    /// <summary>The checks between the axles: each new tyre is held against the other axle's new one, or the one that stays.</summary>
    public required BetweenAxlesResponse Car { get; init; }

    /// <summary>The page under /docs/methods that says how each check is made.</summary>
    [Sample("fitment-check")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>The calls that usually follow; with <c>detail=full</c>, and not within another answer.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public NextCallResponse[]? Next { get; init; }
}

/// <summary>A check of one axle.</summary>
public sealed record AxleCheckResponse
{
    /// <summary>Which axle.</summary>
    [Sample("front")]
    public required CarAxle Axle { get; init; }

    /// <summary>Which check.</summary>
    [Sample("outboardClearance")]
    public required CheckId Id { get; init; }
}

/// <summary>What is judged between the axles.</summary>
public sealed record BetweenAxlesResponse
{
    /// <summary>Front and rear rolling alike, with the tyres of after the change.</summary>
    public required CheckItem[] Checks { get; init; }
}
