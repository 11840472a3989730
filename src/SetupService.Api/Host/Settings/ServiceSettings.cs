using Microsoft.Extensions.Options;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Http;
using SetupService.Api.Http.Work;

namespace SetupService.Api.Host.Settings;

/// <summary>A setting stops the start; the message names it and says what is allowed.</summary>
public sealed class SettingException(string message, Exception? inner = null) : InvalidOperationException(message, inner);

/// <summary>The settings of the service, each section read once, at start. What is not known or out of its range stops the start and is named.</summary>
internal static class ServiceSettings
{
    public const string Work = "Work";
    public const string Caps = "Caps";
    public const string Batch = "Batch";
    public const string Access = "Access";
    public const string Limits = "Limits";
    public const string Proxy = "Proxy";
    public const string Log = "Log";
    public const string Telemetry = "Telemetry";
    public const string Shutdown = "Shutdown";

    public static void AddServiceSettings(this IServiceCollection services)
    {
        services.AddSingleton(static known => Checked(Work, () => Section(known, Work).Get<WorkSettings>(Strictly), new WorkSettingsValidator()));
        services.AddSingleton(static known => Checked(Caps, () => Section(known, Caps).Get<CapSettings>(Strictly), new CapSettingsValidator()));
        services.AddSingleton(static known => Checked(Batch, () => Section(known, Batch).Get<BatchSettings>(Strictly), new BatchSettingsValidator()));
        services.AddSingleton(static known => Checked(Access, () => Section(known, Access).Get<AccessSettings>(Strictly), new AccessSettingsValidator()));
        services.AddSingleton(static known => Checked(Limits, () => Section(known, Limits).Get<QuotaSettings>(Strictly), new QuotaSettingsValidator()));
        services.AddSingleton(static known => Checked(Proxy, () => Section(known, Proxy).Get<ProxySettings>(Strictly), new ProxySettingsValidator()));
        services.AddSingleton(static known => Checked(Log, () => Section(known, Log).Get<LogSettings>(Strictly), new LogSettingsValidator()));
        services.AddSingleton(static known => ReadTelemetry(known.GetRequiredService<IConfiguration>()));
        services.AddSingleton(static known => Checked(Shutdown, () => Section(known, Shutdown).Get<ShutdownSettings>(Strictly), new ShutdownSettingsValidator()));
    }

    /// <summary>Reads every section now.</summary>
    /// <exception cref="SettingException">A setting is not known, cannot be read or is out of its range.</exception>
    public static void CheckSettings(this IServiceProvider services)
    {
        services.GetRequiredService<WorkSettings>();
        services.GetRequiredService<CapSettings>();
        services.GetRequiredService<BatchSettings>();
        services.GetRequiredService<AccessSettings>();
        services.GetRequiredService<QuotaSettings>();
        services.GetRequiredService<ProxySettings>();
        services.GetRequiredService<LogSettings>();
        services.GetRequiredService<TelemetrySettings>();
        services.GetRequiredService<ShutdownSettings>();
    }

    /// <summary>The settings of telemetry, which are wanted before the others.</summary>
    public static TelemetrySettings ReadTelemetry(IConfiguration configuration)
    {
        var settings = Checked(Telemetry, () => configuration.GetSection(Telemetry).Get<TelemetrySettings>(Strictly), new TelemetrySettingsValidator());
        return settings.OtlpEndpoint is null || (Uri.TryCreate(settings.OtlpEndpoint, UriKind.Absolute, out var endpoint) && endpoint.Scheme is "http" or "https")
            ? settings
            : throw new SettingException($"{Telemetry}:{nameof(TelemetrySettings.OtlpEndpoint)} is no address of a collector: http://host:4318, or https.");
    }

    private static void Strictly(BinderOptions options) => options.ErrorOnUnknownConfiguration = true;

    private static IConfigurationSection Section(IServiceProvider services, string name) => services.GetRequiredService<IConfiguration>().GetSection(name);

    private static T Checked<T>(string section, Func<T?> read, IValidateOptions<T> validator)
        where T : class, new()
    {
        T settings;
        try
        {
            settings = read() ?? new();
        }
        catch (InvalidOperationException fault)
        {
            // The binder quotes what it did not find, and where what it could not read stands.
            throw new SettingException($"A setting of {section} is not known, or has a value of another kind; docs/configuration.md lists them. {fault.Message}", fault);
        }

        // The validator names a member section.member; a setting is written section:member.
        var result = validator.Validate(section, settings);
        return result.Succeeded
            ? settings
            : throw new SettingException("A setting is out of its range. " + string.Join(' ', result.Failures!).Replace(section + ".", section + ":", StringComparison.Ordinal));
    }
}

/// <summary>Holds <see cref="WorkSettings"/> to its ranges.</summary>
[OptionsValidator]
internal sealed partial class WorkSettingsValidator : IValidateOptions<WorkSettings>;

/// <summary>Holds <see cref="CapSettings"/> to its ranges.</summary>
[OptionsValidator]
internal sealed partial class CapSettingsValidator : IValidateOptions<CapSettings>;

/// <summary>Holds <see cref="BatchSettings"/> to its ranges.</summary>
[OptionsValidator]
internal sealed partial class BatchSettingsValidator : IValidateOptions<BatchSettings>;

/// <summary>Holds <see cref="AccessSettings"/> to its ranges.</summary>
[OptionsValidator]
internal sealed partial class AccessSettingsValidator : IValidateOptions<AccessSettings>;

/// <summary>Holds <see cref="QuotaSettings"/> to its ranges.</summary>
[OptionsValidator]
internal sealed partial class QuotaSettingsValidator : IValidateOptions<QuotaSettings>;

/// <summary>Holds <see cref="ProxySettings"/> to its ranges.</summary>
[OptionsValidator]
internal sealed partial class ProxySettingsValidator : IValidateOptions<ProxySettings>;

/// <summary>Holds <see cref="LogSettings"/> to its ranges.</summary>
[OptionsValidator]
internal sealed partial class LogSettingsValidator : IValidateOptions<LogSettings>;

/// <summary>Holds <see cref="TelemetrySettings"/> to its ranges.</summary>
[OptionsValidator]
internal sealed partial class TelemetrySettingsValidator : IValidateOptions<TelemetrySettings>;

/// <summary>Holds <see cref="ShutdownSettings"/> to its ranges.</summary>
[OptionsValidator]
internal sealed partial class ShutdownSettingsValidator : IValidateOptions<ShutdownSettings>;
