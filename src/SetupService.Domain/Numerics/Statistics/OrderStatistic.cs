namespace SetupService.Domain.Numerics.Statistics;

/// <summary>
/// The k-th smallest of many numbers without sorting them: Hoare's selection (Communications of the ACM 4(7), 1961, algorithm 65, from memory), of many with a pivot that a sample of them puts
/// near the rank.
/// </summary>
internal static class OrderStatistic
{
    // Fewer are partitioned as they come; a sample takes one of so many.
    private const int Many = 256;
    private const int OneOf = 16;

    /// <summary>The number that would stand at a rank, from 0, if they were sorted; allocates nothing and leaves them in another order. None may be NaN.</summary>
    public static double Select(Span<double> numbers, int rank)
    {
        var (from, to) = (0, numbers.Length - 1);
        while (from < to)
        {
            var pivot = to - from < Many ? numbers[rank] : Sampled(numbers[from..(to + 1)], rank - from);
            var (left, right) = (from, to);
            while (left <= right)
            {
                while (numbers[left] < pivot) left++;
                while (pivot < numbers[right]) right--;
                if (left > right) break;
                (numbers[left], numbers[right]) = (numbers[right], numbers[left]);
                left++;
                right--;
            }

            if (right < rank) from = left;
            if (rank < left) to = right;
        }

        return numbers[rank];
    }

    private static double Sampled(ReadOnlySpan<double> numbers, int rank)
    {
        Span<double> sample = stackalloc double[Many / OneOf];
        var apart = numbers.Length / sample.Length;
        for (var i = 0; i < sample.Length; i++) sample[i] = numbers[i * apart];
        return Select(sample, rank / apart < sample.Length ? rank / apart : sample.Length - 1);
    }
}
