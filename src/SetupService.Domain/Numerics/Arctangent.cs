using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace SetupService.Domain.Numerics;

/// <summary>The arctangent of two numbers at once, rad: reduced by quarters of a right angle to ±0.66 and there a rational function (Moshier's Cephes library, atan.c, coefficients from memory; some 2e-16).</summary>
internal static class Arctangent
{
    // The tangents of three quarters of a right angle, and of where the middle range begins.
    private const double Steep = 2.414213562373095;
    private const double Middle = 0.66;

    /// <summary>Computes both.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector128<double> Of(Vector128<double> tangent)
    {
        var one = Vector128<double>.One;
        var size = Vector128.Abs(tangent);
        var isSteep = Vector128.GreaterThan(size, Vector128.Create(Steep));
        var isMiddle = Vector128.GreaterThan(size, Vector128.Create(Middle));
        var x = Vector128.ConditionalSelect(isSteep, -one, Vector128.ConditionalSelect(isMiddle, size - one, size))
            / Vector128.ConditionalSelect(isSteep, size, Vector128.ConditionalSelect(isMiddle, size + one, one));
        var turned = Vector128.ConditionalSelect(isSteep, Vector128.Create(Math.PI / 2), Vector128.ConditionalSelect(isMiddle, Vector128.Create(Math.PI / 4), Vector128<double>.Zero));

        // Both polynomials by pairs of terms (Estrin's scheme), so that little of them waits for the rest.
        var square = x * x;
        var fourth = square * square;
        var over = Sum(fourth, Sum(fourth, Vector128.Create(-8.750608600031904e-1), Sum(square, -1.615753718733365e1, -7.500855792314705e1)), Sum(square, -1.2288666844901362e2, -6.485021904942025e1));
        var under = Sum(fourth * fourth, square + Vector128.Create(2.485846490142306e1), Sum(fourth, Sum(square, 1.650270098316988e2, 4.328810604912903e2), Sum(square, 4.853903996359137e2, 1.945506571482614e2)));
        return Vector128.CopySign(turned + (x + (x * (square * over / under))), tangent);
    }

    private static Vector128<double> Sum(Vector128<double> power, double factor, double rest) => Sum(power, Vector128.Create(factor), Vector128.Create(rest));

    private static Vector128<double> Sum(Vector128<double> power, Vector128<double> factor, Vector128<double> rest) => Vector128.MultiplyAddEstimate(power, factor, rest);
}
