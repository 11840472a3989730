using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>One tyre of a car with its forecast.</summary>
/// <param name="Position">Where it is.</param>
/// <param name="Tread">Its forecast.</param>
public sealed record TyreForecast(WheelPosition Position, TreadForecast Tread);

/// <summary>Two tyres of a car that may change places.</summary>
/// <param name="One">The first of them.</param>
/// <param name="Other">The other.</param>
/// <param name="Swapping">What it brings, in mixes of the first.</param>
public sealed record TyreSwap(TyreForecast One, TyreForecast Other, SwappingTyres Swapping);

/// <summary>How the tyres of a car wear and how long they last.</summary>
/// <param name="Tyres">The tyres, in the order given.</param>
/// <param name="Swaps">Pairs that may change places: front with rear on one side, then left with right on one axle.</param>
public sealed record CarForecast(IReadOnlyList<TyreForecast> Tyres, IReadOnlyList<TyreSwap> Swaps)
{
    private static readonly (WheelPosition One, WheelPosition Other)[] Pairs =
    [
        (WheelPosition.FrontLeft, WheelPosition.RearLeft),
        (WheelPosition.FrontRight, WheelPosition.RearRight),
        (WheelPosition.FrontLeft, WheelPosition.FrontRight),
        (WheelPosition.RearLeft, WheelPosition.RearRight),
    ];

    /// <summary>The forecast.</summary>
    public static CarForecast Compute(IReadOnlyList<(WheelPosition Position, ForecastQuestion Question)> tyres)
    {
        ArgumentNullException.ThrowIfNull(tyres);
        TyreForecast[] all = [.. tyres.Select(tyre => new TyreForecast(tyre.Position, TreadForecast.Compute(tyre.Question)))];
        var swaps = new List<TyreSwap>();
        foreach (var (one, other) in Pairs)
        {
            if (Array.Find(all, tyre => tyre.Position == one) is not { Tread.Fit: { } fit } first || Array.Find(all, tyre => tyre.Position == other) is not { Tread.Fit: { } otherFit } second) continue;
            if (SwappingTyres.Compute(fit, otherFit, first.Tread.LimitDepthMm) is { } swapping) swaps.Add(new(first, second, swapping));
        }

        return new(all, swaps);
    }

    /// <summary>The tyre that is done first; null where none is estimated to be.</summary>
    public TyreForecast? First()
    {
        TyreForecast? first = null;
        foreach (var tyre in Tyres)
        {
            if (tyre.Tread.Ending is not null && (first is null || IsSooner(tyre.Tread, first.Tread))) first = tyre;
        }

        return first;
    }

    /// <summary>By the laps where both count them, else by the road, else by the use between their readings.</summary>
    private static bool IsSooner(TreadForecast one, TreadForecast other)
    {
        var (left, otherLeft) = (one.Ending!.Value.MixesLeft, other.Ending!.Value.MixesLeft);
        return one.Mix.TrackLaps > 0 && other.Mix.TrackLaps > 0 ? left * one.Mix.TrackLaps < otherLeft * other.Mix.TrackLaps
            : one.Mix.RoadKm > 0 && other.Mix.RoadKm > 0 ? left * one.Mix.RoadKm < otherLeft * other.Mix.RoadKm
            : left < otherLeft;
    }
}
