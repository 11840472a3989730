namespace SetupService.Api.Http.Contract;

/// <summary>A truth value.</summary>
internal sealed class FlagShape : ContractShape
{
    public override string Wanted => "true or false";
}
