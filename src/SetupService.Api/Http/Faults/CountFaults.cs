using System.Globalization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Http.Faults;

/// <summary>Checks the number of elements of an array.</summary>
internal static class CountFaults
{
    public static Fault? Find(ListShape shape, int count, string pointer, string label)
    {
        if (count >= shape.Minimum && count <= shape.Maximum)
            return null;

        var wanted = shape.Minimum == shape.Maximum
            ? string.Create(CultureInfo.InvariantCulture, $"exactly {shape.Minimum}")
            : string.Create(CultureInfo.InvariantCulture, $"from {shape.Minimum} to {shape.Maximum}");
        return Fault.At(
            pointer,
            count < shape.Minimum ? FaultCodes.TooFew : FaultCodes.TooMany,
            string.Create(CultureInfo.InvariantCulture, $"{label} has {count} {(count == 1 ? "element" : "elements")}; {wanted} are accepted."),
            new FaultLimits { Minimum = shape.Minimum, Maximum = shape.Maximum });
    }
}
