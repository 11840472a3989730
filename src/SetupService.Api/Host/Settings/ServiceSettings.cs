using Microsoft.Extensions.Options;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Http.Work;

namespace SetupService.Api.Host.Settings;

/// <summary>The settings of the service, each section read once, at start. What is not known or out of its range stops the start and is named.</summary>
internal static class ServiceSettings
{
    public const string Work = "Work";
    public const string Batch = "Batch";

    public static void AddServiceSettings(this IServiceCollection services)
    {
        services.AddSingleton(static known => Checked(Work, Section(known, Work).Get<WorkSettings>(Strictly) ?? new(), new WorkSettingsValidator()));
        services.AddSingleton(static known => Checked(Batch, Section(known, Batch).Get<BatchSettings>(Strictly) ?? new(), new BatchSettingsValidator()));
    }

    /// <summary>Reads every section now.</summary>
    /// <exception cref="InvalidOperationException">A setting is not known, cannot be read or is out of its range.</exception>
    public static void CheckSettings(this IServiceProvider services)
    {
        services.GetRequiredService<WorkSettings>();
        services.GetRequiredService<BatchSettings>();
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
