namespace SetupService.Domain.Numerics.Statistics;

/// <summary>The k-th smallest of many numbers without sorting them: Hoare's selection (Communications of the ACM 4(7), 1961, algorithm 65, from memory).</summary>
internal static class OrderStatistic
{
    /// <summary>The number that would stand at a rank, from 0, if they were sorted; allocates nothing and leaves them in another order. None may be NaN.</summary>
    public static double Select(Span<double> numbers, int rank)
    {
        var (from, to) = (0, numbers.Length - 1);
        while (from < to)
        {
            var pivot = numbers[rank];
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
}
