namespace SetupService.Domain.Answers;

/// <summary>The units of texts and drawings made for people. Numbers in answers always keep their own unit.</summary>
public enum UnitSystem
{
    /// <summary>Millimetres, kilograms, kilopascals, kilometres per hour, degrees Celsius.</summary>
    Metric,

    /// <summary>Inches, pounds, pounds per square inch, miles per hour, degrees Fahrenheit.</summary>
    Us,
}
