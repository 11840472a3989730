namespace SetupService.Api.Http.Contract;

/// <summary>A finite number within limits.</summary>
internal sealed class NumberShape(double minimum, double maximum, bool isWhole, string? unit) : ContractShape
{
    public double Minimum => minimum;

    public double Maximum => maximum;

    public bool IsWhole => isWhole;

    public string? Unit => unit;

    public override string Wanted => isWhole ? "a whole number" : "a number";
}
