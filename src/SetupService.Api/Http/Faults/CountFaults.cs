using System.Globalization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Http.Faults;

/// <summary>Checks the number of elements of an array.</summary>
internal static class CountFaults
{
    public static Fault? Find(ArraySchema schema, int count, string pointer, string label)
    {
        if (count >= schema.Minimum && count <= schema.Maximum)
            return null;

        var wanted = schema.Minimum == schema.Maximum
            ? string.Create(CultureInfo.InvariantCulture, $"exactly {schema.Minimum}")
            : string.Create(CultureInfo.InvariantCulture, $"from {schema.Minimum} to {schema.Maximum}");
        return Fault.At(
            pointer,
            count < schema.Minimum ? FaultCodes.TooFew : FaultCodes.TooMany,
            string.Create(CultureInfo.InvariantCulture, $"{label} has {count} {(count == 1 ? "element" : "elements")}; {wanted} are accepted."),
            new FaultLimits { Minimum = schema.Minimum, Maximum = schema.Maximum });
    }
}
