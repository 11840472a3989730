namespace SetupService.Api.Http.Contract;

/// <summary>What the contract allows at one place of a request body.</summary>
internal abstract class ContractShape
{
    /// <summary>What a caller is told to send here, such as "a number" or "an object".</summary>
    public abstract string Wanted { get; }
}
