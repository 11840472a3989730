namespace SetupService.Domain.Tyres;

/// <summary>A number found in a marking.</summary>
/// <param name="Value">Its value.</param>
/// <param name="Start">Index of its first digit in the text.</param>
/// <param name="End">Index after its last digit.</param>
internal readonly record struct TyreMarkingNumber(double Value, int Start, int End)
{
    public bool IsWhole => Value == Math.Floor(Value);

    public bool IsWholeOrHalf => Value * 2 == Math.Floor(Value * 2);

    public bool IsWithin(double minimum, double maximum) => Value >= minimum && Value <= maximum;
}
