using Microsoft.Extensions.Options;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Host.Access;
using SetupService.Api.Http.Work;

namespace SetupService.Api.Host.Settings;

/// <summary>The settings of the service, each section read once, at start. What is not known or out of its range stops the start and is named.</summary>
internal static class ServiceSettings
{
    public const string Work = "Work";
    public const string Batch = "Batch";
    public const string Access = "Access";
    public const string Limits = "Limits";
    public const string Proxy = "Proxy";

    public static void AddServiceSettings(this IServiceCollection services)
    {
        services.AddSingleton(static known => Checked(Work, Section(known, Work).Get<WorkSettings>(Strictly) ?? new(), new WorkSettingsValidator()));
        services.AddSingleton(static known => Checked(Batch, Section(known, Batch).Get<BatchSettings>(Strictly) ?? new(), new BatchSettingsValidator()));
        services.AddSingleton(static known => Checked(Access, Section(known, Access).Get<AccessSettings>(Strictly) ?? new(), new AccessSettingsValidator()));
        services.AddSingleton(static known => Checked(Limits, Section(known, Limits).Get<QuotaSettings>(Strictly) ?? new(), new QuotaSettingsValidator()));
        services.AddSingleton(static known => Checked(Proxy, Section(known, Proxy).Get<ProxySettings>(Strictly) ?? new(), new ProxySettingsValidator()));
    }

    /// <summary>Reads every section now.</summary>
    /// <exception cref="InvalidOperationException">A setting is not known, cannot be read or is out of its range.</exception>
    public static void CheckSettings(this IServiceProvider services)
    {
        services.GetRequiredService<WorkSettings>();
        services.GetRequiredService<BatchSettings>();
        services.GetRequiredService<AccessSettings>();
        services.GetRequiredService<QuotaSettings>();
        services.GetRequiredService<ProxySettings>();
    }

    private static void Strictly(BinderOptions options) => options.ErrorOnUnknownConfiguration = true;

    private static IConfigurationSection Section(IServiceProvider services, string name) => services.GetRequiredService<IConfiguration>().GetSection(name);

    private static T Checked<T>(string section, T settings, IValidateOptions<T> validator)
        where T : class
    {
        // The validator names a member section.member; a setting is written section:member.
        var result = validator.Validate(section, settings);
        return result.Succeeded
            ? settings
            : throw new InvalidOperationException("A setting is out of its range. " + string.Join(' ', result.Failures!).Replace(section + ".", section + ":", StringComparison.Ordinal));
    }
}

/// <summary>Holds <see cref="WorkSettings"/> to its ranges.</summary>
[OptionsValidator]
internal sealed partial class WorkSettingsValidator : IValidateOptions<WorkSettings>;

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
