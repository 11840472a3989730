using SetupService.Domain.Answers;
using SetupService.Domain.Tyres;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.TreadWear;

/// <summary>
/// What the wear model does not know beforehand, each with what is believed of it before any tread is read. The spreads are judgement unless the source gives one.
/// </summary>
public static class TreadWearParameters
{
    /// <summary>How many there are.</summary>
    public const int Count = 8;

    /// <summary>Natural logarithm of mean wear of a thousand kilometres of road, mm, tread upright and straight.</summary>
    public const int Road = 0;

    /// <summary>Natural logarithm of mean wear of a thousand kilometres of track, mm.</summary>
    public const int Track = 1;

    /// <summary>
    /// Natural logarithm of how strongly lean moves the pressure across the patch, by that of a bed of springs with the tyre's vertical rate: less where the belt bends towards
    /// the road, more where it is stiff and most of the tyre's give is the patch growing longer.
    /// </summary>
    public const int PressureShift = 2;

    /// <summary>Inclination of the outer wheel on the track that the cornering model misses, degrees.</summary>
    public const int UnmodelledInclination = 3;

    /// <summary>Share by which a middle of the tread is pressed more than the mean, by inflation for the load.</summary>
    public const int CrownPressure = 4;

    /// <summary>Share by which the outer edge wears more than the mean for reasons not modelled.</summary>
    public const int OuterEdgeExcess = 5;

    /// <summary>What a new tyre had more than is usual, mm, where its depth is not stated.</summary>
    public const int NewDepthExcess = 6;

    /// <summary>
    /// Natural logarithm of <see cref="CamberSlip.Share"/>. Only its size by the road's own slip shows in a tread, so its spread holds what is not known of both: 0.1 to 0.5 for the one, 0.003 to
    /// 0.01 for the other.
    /// </summary>
    public const int LeanSlip = 7;

    /// <summary>
    /// What is believed beforehand. Road: some 6.5 mm in 45 000 miles (average tread life, NHTSA tyre-pressure rule), a factor 1.8 either way. Track: ten times that, a factor 2.7.
    /// OuterEdgeExcess: outer grooves wear 10 to 50 % more than inner ones on aligned cars (US DOT, treadwear statistics, 1984-85).
    /// </summary>
    public static IReadOnlyList<Estimate> Priors { get; } =
    [
        new(Math.Log(0.09), 0.6),
        new(Math.Log(0.9), 1),
        new(Math.Log(1.5), 0.5),
        new(0, AxleUse.UnseenInclinationDeg),
        new(0, 0.12),
        new(0.08, 0.11),
        new(0, TreadFigures.UsualNewDepthMm.StandardError),
        new(Math.Log(CamberSlip.Share), 0.6),
    ];
}
