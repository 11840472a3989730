using System.Text.Json.Serialization;

namespace SetupService.Client;

/// <summary>A line that asks about one candidate: <see cref="Candidate"/>, or <see cref="Front"/>, <see cref="Rear"/> or both of them.</summary>
public sealed class BatchCandidateLine
{
    /// <summary>What the caller calls this candidate: a text of up to 64 characters, given back as it came.</summary>
    [JsonPropertyName("id")]
    public string? Id { get; set; }

    /// <summary>The wheel and tyre for the axle that the car's line names; in a catalogue, where it names none, for all four wheels.</summary>
    [JsonPropertyName("candidate")]
    public FittingDocument? Candidate { get; set; }

    /// <summary>What goes on the front of the whole car; where left out it stays as it is.</summary>
    [JsonPropertyName("front")]
    public FittingDocument? Front { get; set; }

    /// <summary>What goes on the rear of the whole car; where left out it stays as it is.</summary>
    [JsonPropertyName("rear")]
    public FittingDocument? Rear { get; set; }
}

/// <summary>A car that every candidate of a catalogue is held against.</summary>
public sealed class CatalogueCarLine
{
    /// <summary>The caller's name for this car, given back with each pair; no two have the same.</summary>
    [JsonPropertyName("id")]
    public required string Id { get; set; }

    /// <summary>The car, as far as it is known.</summary>
    [JsonPropertyName("vehicle")]
    public required VehicleDocument Vehicle { get; set; }

    /// <summary>Which axle a candidate goes on; where left out it goes on all four wheels.</summary>
    [JsonPropertyName("axle")]
    public CarAxle? Axle { get; set; }

    /// <summary>A change of static camber made at the same time at <see cref="Axle"/>, which it needs.</summary>
    [JsonPropertyName("camberChange")]
    public CamberChangeDocument? CamberChange { get; set; }

    /// <summary>What the caller wants of the margins.</summary>
    [JsonPropertyName("tolerances")]
    public TolerancesDocument? Tolerances { get; set; }

    /// <summary>The checks whose being unknown makes a verdict unknown.</summary>
    [JsonPropertyName("required")]
    public ICollection<CheckId>? Required { get; set; }
}

/// <summary>A line of a batch's answer: a verdict, a problem, or the closing summary. What a kind of line has not is null.</summary>
public sealed class BatchAnswerLine
{
    /// <summary>Number of the line answered, from 1, as it stands in what was sent.</summary>
    [JsonPropertyName("line")]
    public int? Line { get; set; }

    /// <summary>The caller's own name for the line; a number as its digits.</summary>
    [JsonPropertyName("id")]
    [JsonConverter(typeof(LineIdConverter))]
    public string? Id { get; set; }

    /// <summary>The gravest status, as in the single call. For a whole car the members down to <see cref="Unknown"/> are of both axles together.</summary>
    [JsonPropertyName("verdict")]
    public CheckStatus? Verdict { get; set; }

    /// <summary>The checks the verdict was made by.</summary>
    [JsonPropertyName("decidedBy")]
    public IReadOnlyList<CheckId>? DecidedBy { get; set; }

    /// <summary>The place with least room in the worst case; null where no room is known.</summary>
    [JsonPropertyName("governing")]
    public CheckId? Governing { get; set; }

    /// <summary>Probable room there, mm; null where no room is known.</summary>
    [JsonPropertyName("probableMm")]
    public double? ProbableMm { get; set; }

    /// <summary>Worst-case room there, mm; null where no room is known.</summary>
    [JsonPropertyName("worstCaseMm")]
    public double? WorstCaseMm { get; set; }

    /// <summary>The checks that failed.</summary>
    [JsonPropertyName("failed")]
    public IReadOnlyList<CheckId>? Failed { get; set; }

    /// <summary>The checks that are cautions.</summary>
    [JsonPropertyName("cautioned")]
    public IReadOnlyList<CheckId>? Cautioned { get; set; }

    /// <summary>The checks that could not be told.</summary>
    [JsonPropertyName("unknown")]
    public IReadOnlyList<CheckId>? Unknown { get; set; }

    /// <summary>Of a whole car: the front axle.</summary>
    [JsonPropertyName("front")]
    public BatchAxleResponse? Front { get; set; }

    /// <summary>Of a whole car: the rear axle.</summary>
    [JsonPropertyName("rear")]
    public BatchAxleResponse? Rear { get; set; }

    /// <summary>With more detail: the answer of the single call in that detail.</summary>
    [JsonPropertyName("result")]
    public CheckAnswer? Result { get; set; }

    /// <summary>The same of a whole car.</summary>
    [JsonPropertyName("carResult")]
    public CarCheckAnswer? CarResult { get; set; }

    /// <summary>Why the line could not be answered.</summary>
    [JsonPropertyName("problem")]
    public Problem? Problem { get; set; }

    /// <summary>The closing line.</summary>
    [JsonPropertyName("summary")]
    public BatchSummary? Summary { get; set; }
}

/// <summary>A line of a catalogue's answer: a pair, a problem, or the closing summary. What a kind of line has not is null.</summary>
public sealed class CatalogueAnswerLine
{
    /// <summary>The car's id; null where it could not be read.</summary>
    [JsonPropertyName("car")]
    [JsonConverter(typeof(LineIdConverter))]
    public string? Car { get; set; }

    /// <summary>The candidate's id; null where it has none.</summary>
    [JsonPropertyName("candidate")]
    [JsonConverter(typeof(LineIdConverter))]
    public string? Candidate { get; set; }

    /// <summary>Number of the candidate's line in its part, from 1; of a car that cannot be read, of the car's.</summary>
    [JsonPropertyName("line")]
    public int? Line { get; set; }

    /// <summary>The verdict of the single check.</summary>
    [JsonPropertyName("verdict")]
    public CheckStatus? Verdict { get; set; }

    /// <summary>The checks the verdict was made by.</summary>
    [JsonPropertyName("decidedBy")]
    public IReadOnlyList<CheckId>? DecidedBy { get; set; }

    /// <summary>Probable room at the tightest place, mm; null where it is not known.</summary>
    [JsonPropertyName("probableMm")]
    public double? ProbableMm { get; set; }

    /// <summary>Why a car or candidate cannot be read; its pairs have no lines.</summary>
    [JsonPropertyName("problem")]
    public Problem? Problem { get; set; }

    /// <summary>The closing line.</summary>
    [JsonPropertyName("summary")]
    public CatalogueSummary? Summary { get; set; }
}
