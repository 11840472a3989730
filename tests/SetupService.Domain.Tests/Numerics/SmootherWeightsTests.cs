using CsCheck;
using SetupService.Domain.Numerics.Smoothing;

namespace SetupService.Domain.Tests.Numerics;

public sealed class SmootherWeightsTests
{
    // Another way to the same weights: the penalised least-squares problem written out as dense matrices, fitted to one unit
    // reading after the other at the spline's own smoothing (P. J. Green, B. W. Silverman, Nonparametric Regression and Generalized
    // Linear Models, 1994, chapter 2; from memory).
    [Fact]
    public void The_standard_error_is_that_of_the_weights_found_with_dense_matrices() =>
        Gen.Select(Gen.Double[-3, 3].Array[7], Gen.Double[0.05, 0.3].Array[7], Gen.Double[3, 25].Array[7]).Sample((values, errors, gaps) =>
        {
            double[] places = [.. gaps.Select((_, i) => gaps[..(i + 1)].Sum())];
            var spline = SmoothingSpline.Fit(places, values, errors)!;
            if (spline.IsStraight) return;

            var system = PenaltyOf(places);
            for (var i = 0; i < 7; i++)
            {
                for (var k = 0; k < 7; k++) system[i, k] *= spline.Smoothing;
                system[i, i] += 1 / (errors[i] * errors[i]);
            }

            for (var at = 0; at < 7; at++)
            {
                var (value, variance) = (0.0, 0.0);
                for (var reading = 0; reading < 7; reading++)
                {
                    var right = new double[7];
                    right[reading] = 1 / (errors[reading] * errors[reading]);
                    var weight = Solve(system, right)[at];
                    value += weight * values[reading];
                    variance += weight * weight * errors[reading] * errors[reading];
                }

                Assert.Equal(value, spline.ValueAt(places[at]), 1e-6);
                Assert.Equal(Math.Sqrt(variance), spline.StandardErrorAt(places[at]), 1e-6);
            }
        });

    [Fact]
    public void Beyond_the_ends_the_error_grows_as_that_of_a_line_through_the_end()
    {
        var spline = SmoothingSpline.Fit([0, 10, 20, 30], [0, 2, 1, 3], [0.1, 0.1, 0.1, 0.1])!;
        var (end, near, far) = (spline.StandardErrorAt(30), spline.StandardErrorAt(50), spline.StandardErrorAt(70));
        var slope = spline.SlopeStandardErrorAt(30);

        // Variance of a + b d is a parabola in d whose second difference is twice the slope's variance times the step squared.
        Assert.Equal(2 * slope * slope * 400, (far * far) - (2 * near * near) + (end * end), 1e-9);
    }

    private static double[,] PenaltyOf(double[] places)
    {
        var count = places.Length;
        var (differences, tents) = (new double[count - 2, count], new double[count - 2, count - 2]);
        for (var i = 0; i < count - 2; i++)
        {
            var (before, after) = (places[i + 1] - places[i], places[i + 2] - places[i + 1]);
            (differences[i, i], differences[i, i + 1], differences[i, i + 2]) = (1 / before, -(1 / before) - (1 / after), 1 / after);
            tents[i, i] = (before + after) / 3;
            if (i + 1 < count - 2) tents[i, i + 1] = tents[i + 1, i] = after / 6;
        }

        var penalty = new double[count, count];
        for (var column = 0; column < count; column++)
        {
            var curvatures = Solve(tents, [.. Enumerable.Range(0, count - 2).Select(row => differences[row, column])]);
            for (var row = 0; row < count; row++)
            {
                for (var k = 0; k < count - 2; k++) penalty[row, column] += differences[k, row] * curvatures[k];
            }
        }

        return penalty;
    }

    // Gauss's elimination, without exchanges since the matrices are positive definite.
    private static double[] Solve(double[,] matrix, double[] right)
    {
        var count = right.Length;
        var (left, solution) = ((double[,])matrix.Clone(), (double[])right.Clone());
        for (var pivot = 0; pivot < count; pivot++)
        {
            for (var row = pivot + 1; row < count; row++)
            {
                var factor = left[row, pivot] / left[pivot, pivot];
                for (var k = pivot; k < count; k++) left[row, k] -= factor * left[pivot, k];
                solution[row] -= factor * solution[pivot];
            }
        }

        for (var row = count - 1; row >= 0; row--)
        {
            for (var k = row + 1; k < count; k++) solution[row] -= left[row, k] * solution[k];
            solution[row] /= left[row, row];
        }

        return solution;
    }
}
