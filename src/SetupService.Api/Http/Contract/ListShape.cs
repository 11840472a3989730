namespace SetupService.Api.Http.Contract;

/// <summary>An array whose elements all have one shape.</summary>
internal sealed class ListShape(ContractShape element, int minimum, int maximum) : ContractShape
{
    public ContractShape Element => element;

    public int Minimum => minimum;

    public int Maximum => maximum;

    public override string Wanted => "an array";
}
