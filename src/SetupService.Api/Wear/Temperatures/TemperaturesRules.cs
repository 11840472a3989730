using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Vehicles;
using SetupService.Domain.Wear.Pressures;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>What readings must keep beyond types and ranges: each wheel once, windows and aims that have an inside, air that belongs to the place.</summary>
public sealed class TemperaturesRules : AbstractValidator<TemperaturesRequest>
{
    // The weather moves the air's pressure by less than this, kPa; a figure reduced to sea level is further off from some 700 m up.
    private const double WeatherMostKpa = 8;

    /// <summary>Makes the rules; they hold no state.</summary>
    public TemperaturesRules()
    {
        RuleFor(request => request).Custom(static (request, context) =>
        {
            CheckReadings(request, context);
            CheckAir(request, context);
        });
    }

    private static void CheckReadings(TemperaturesRequest request, ValidationContext<TemperaturesRequest> context)
    {
        var seen = new int?[4];
        for (var i = 0; i < request.Readings?.Length; i++)
        {
            if (request.Readings[i] is not { } reading) continue;
            var place = FormattableString.Invariant($"Readings[{i}]");
            if ((int)reading.Position is >= 0 and < 4 and var wheel && !context.IsRefused(place + ".Position"))
            {
                if (seen[wheel] is { } first) Add(context, place + ".Position", $"readings {first} and {i} are of the same wheel: give each once.");
                seen[wheel] ??= i;
            }

            if (reading.TemperatureWindowC is { } window && window.From > window.To && !context.IsRefused(place + ".TemperatureWindowC"))
                Add(context, place + ".TemperatureWindowC.To", FormattableString.Invariant($"to is {window.To} °C, below from, which is {window.From} °C."));
            if (reading.PressureKpa is { } pressure && pressure.AimHot < pressure.AimCold)
                Add(context, place + ".PressureKpa.AimHot", FormattableString.Invariant($"aimHot is {pressure.AimHot} kPa, below aimCold, which is {pressure.AimCold} kPa: a tyre that gets warm gains pressure."));
        }
    }

    private static void CheckAir(TemperaturesRequest request, ValidationContext<TemperaturesRequest> context)
    {
        if (request is not { AltitudeM: { } altitudeM, AirPressureKpa: { } airKpa }) return;
        var standardKpa = StandardAtmosphere.PressureKpa(altitudeM);
        if (Math.Abs(airKpa - standardKpa) <= WeatherMostKpa) return;
        Add(context, "AirPressureKpa", FormattableString.Invariant($"{airKpa} kPa is not the pressure at {altitudeM} m, where it is about {standardKpa:0.0}: weather services reduce it to sea level. Give the pressure at the place, or leave it out."));
    }

    private static void Add(ValidationContext<TemperaturesRequest> context, string place, string message) =>
        context.AddFailure(new ValidationFailure(place, message) { ErrorCode = FaultCodes.Inconsistent });
}
