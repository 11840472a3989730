namespace SetupService.Domain.Wear.TreadWear;

/// <summary>One depth the wear model learns from.</summary>
/// <param name="IsLeft">Whether it is the left tyre's.</param>
/// <param name="Y">The strip, from −1 at the outer edge to 1 at the inner one.</param>
/// <param name="WornMm">Wear there, mm, by the stated or the usual new depth.</param>
/// <param name="ErrorMm">Its standard deviation, mm.</param>
/// <param name="IsFreshStated">Whether the new depth is stated.</param>
internal readonly record struct TreadDepthObservation(bool IsLeft, double Y, double WornMm, double ErrorMm, bool IsFreshStated);
