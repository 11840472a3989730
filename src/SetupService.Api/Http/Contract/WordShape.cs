namespace SetupService.Api.Http.Contract;

/// <summary>One word of a closed set.</summary>
internal sealed class WordShape(IReadOnlyList<string> words) : ContractShape
{
    public IReadOnlyList<string> Words => words;

    public override string Wanted => "one of the words " + string.Join(", ", words);
}
