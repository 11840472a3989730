namespace SetupService.Api.Http.Contract;

/// <summary>A text of a limited length.</summary>
internal sealed class TextShape(int maximumLength) : ContractShape
{
    public int MaximumLength => maximumLength;

    public override string Wanted => "a text";
}
