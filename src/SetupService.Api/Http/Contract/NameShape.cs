namespace SetupService.Api.Http.Contract;

/// <summary>A caller's own name for something: a text of a limited length, or a whole number.</summary>
internal sealed class NameShape(int maximumLength) : ContractShape
{
    public int MaximumLength => maximumLength;

    public override string Wanted => "a text or a whole number";
}
