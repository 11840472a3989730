using SetupService.Api.Http.Contract;

namespace SetupService.Api.Http.Shared;

/// <summary>A call that usually follows.</summary>
public sealed record NextCallResponse
{
    /// <summary>Its path.</summary>
    [Sample("/v1/handling/what-if")]
    public required string Path { get; init; }

    /// <summary>What it is for.</summary>
    [Sample("what each part does in one turn, alone and together")]
    public required string Why { get; init; }

    /// <summary>The members its body has in place of, or beside, those of the body sent here that both calls know.</summary>
    [Sample("changes")]
    public required string[] Adds { get; init; }
}

/// <summary>The way through the calls, from a worn tyre to the proof that a change worked: what usually follows each.</summary>
internal static class NextCalls
{
    public static readonly NextCallResponse[] AfterComparison =
    [
        Call("/v1/fitment/check", "whether it fits and carries the axle, with the car's gaps and loads", "axle", "vehicle", "candidate"),
    ];

    public static readonly NextCallResponse[] AfterWindow =
    [
        Call("/v1/fitment/check", "one wheel and tyre within the window: every check with its room", "candidate"),
    ];

    public static readonly NextCallResponse[] AfterCheck =
    [
        Call("/v1/fitment/check/report", "the same as a page to print, with the drawing"),
        Call("/v1/fitment/car-check", "both axles together", "front", "rear"),
        Call("/v1/handling/what-if", "what the wheel and tyre do to grip, balance and ride", "lateralG", "turn", "cornerRadiusM", "changes"),
    ];

    public static readonly NextCallResponse[] AfterCarCheck =
    [
        Call("/v1/fitment/check/report", "an axle's check as a page to print, with the drawing", "axle", "candidate"),
        Call("/v1/handling/what-if", "what wheels and tyres do to grip, balance and ride", "lateralG", "turn", "cornerRadiusM", "changes"),
        Call("/v1/plans", "whether they are worth their price beside other parts", "bends", "use", "parts"),
    ];

    public static readonly NextCallResponse[] AfterCasterFromReadings =
    [
        Call("/v1/geometry/steer-sweep", "camber over steer with this caster and inclination", "casterDeg", "steeringAxisInclinationDeg", "camberDeg", "toeDeg", "steerDeg"),
    ];

    public static readonly NextCallResponse[] AfterAlignment =
    [
        Call("/v1/wear/diagnosis", "whether the tyres' wear asks for other angles", "use", "tyres"),
        Call("/v1/geometry/adjustment", "what to turn to get an axle's angles into their ranges", "axle", "target", "adjusters"),
    ];

    public static readonly NextCallResponse[] AfterAdjustment =
    [
        Call("/v1/geometry/travel-sweep", "what the wheel does over its travel", "travelMm"),
        Call("/v1/handling/camber-target", "the camber to aim at", "corners"),
    ];

    public static readonly NextCallResponse[] AfterRide =
    [
        Call("/v1/handling/what-if", "what springs, dampers and bars do in a turn, one by one and together", "lateralG", "turn", "cornerRadiusM", "changes"),
    ];

    public static readonly NextCallResponse[] AfterCornering =
    [
        Call("/v1/handling/what-if", "what a change does in the same turn", "changes"),
        Call("/v1/handling/camber-target", "the camber to run in this turn", "axle"),
    ];

    public static readonly NextCallResponse[] AfterCamberTarget =
    [
        Call("/v1/geometry/adjustment", "what to turn to get there", "target", "adjusters"),
        Call("/v1/wear/diagnosis", "what the treads themselves say about it", "use", "tyres"),
        Call("/v1/plans", "which part lets it be set, if the car's own adjusters do not; the corners are its bends", "bends", "use", "parts"),
    ];

    public static readonly NextCallResponse[] AfterWhatIf =
    [
        Call("/v1/plans", "which of these changes are worth their price; a change is a part's change", "bends", "use", "parts"),
        Call("/v1/fitment/car-check", "whether other wheels and tyres fit", "front", "rear"),
    ];

    public static readonly NextCallResponse[] AfterDiagnosis =
    [
        Call("/v1/handling/camber-target", "the camber to run, by the bends the car is driven in", "axle", "corners"),
        Call("/v1/plans", "which parts mend it for the money; use and tyres of this body are its wear", "wear", "bends", "use", "parts"),
        Call("/v1/wear/before-after", "whether a change worked, from depths read before and after it", "before", "after"),
    ];

    public static readonly NextCallResponse[] AfterTemperatures =
    [
        Call("/v1/wear/diagnosis", "why the treads wear as they do; the tyres with depths and patterns", "tyres", "use"),
    ];

    public static readonly NextCallResponse[] AfterForecast =
    [
        Call("/v1/wear/diagnosis", "why the place that ends a tyre wears faster; the tyres' last readings", "tyres", "use"),
        Call("/v1/wear/before-after", "whether a change worked, from readings before and after it", "before", "after"),
    ];

    public static readonly NextCallResponse[] AfterBeforeAfter =
    [
        Call("/v1/wear/forecast", "how long the tyres last now, from the readings since the change", "tyres"),
        Call("/v1/wear/diagnosis", "what is left to mend; the tyres' last readings", "tyres", "use"),
    ];

    public static readonly NextCallResponse[] AfterRanking =
    [
        Call("/v1/fitment/car-check", "whether the chosen tyre fits and carries both axles", "vehicle", "front", "rear"),
        Call("/v1/plans", "the tyre beside other parts for the same money", "vehicle", "bends", "use", "parts"),
    ];

    /// <summary>After a plan.</summary>
    /// <param name="changesWheels">Whether a package answered has other wheels or tyres.</param>
    public static NextCallResponse[] AfterPlan(bool changesWheels) =>
    [
        Call("/v1/handling/what-if", "what each part does in one turn, alone and together, with the ranges", "lateralG", "turn", "cornerRadiusM", "changes"),
        Call("/v1/handling/camber-target", "the camber's interval, and what it hangs on", "axle", "corners"),
        .. changesWheels ? (NextCallResponse[])[Call("/v1/fitment/car-check", "whether the wheels and tyres fit, check by check, with the room at each place", "front", "rear")] : [],
        Call("/v1/plans/sheets", "how the package chosen is fitted, set and proven: the workshop's sheets", "chosen"),
        Call("/v1/wear/before-after", "whether the change worked, from depths read before and after it", "before", "after"),
    ];

    public static readonly NextCallResponse[] AfterSheets =
    [
        Call("/v1/plans/sheets/page", "the same as a page to print, with the drawings and boxes to fill in"),
        Call("/v1/wear/temperatures", "what the first hot readings say, and the next cold setting", "tyres"),
        Call("/v1/wear/before-after", "whether the change worked, from depths read before and after it", "before", "after"),
    ];

    private static NextCallResponse Call(string path, string why, params string[] adds) => new() { Path = path, Why = why, Adds = adds };
}
