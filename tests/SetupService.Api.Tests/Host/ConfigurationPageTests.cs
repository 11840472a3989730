using System.ComponentModel.DataAnnotations;
using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Host.Settings;
using SetupService.Api.Http;
using SetupService.Api.Http.Work;
using SetupService.Api.Tests.Contract;

namespace SetupService.Api.Tests.Host;

/// <summary>The page of settings says what the code has: each setting, its default and what is allowed.</summary>
public sealed partial class ConfigurationPageTests
{
    private static readonly (string Section, object Defaults)[] Sections =
    [
        ("Work", new WorkSettings()), ("Caps", new CapSettings()), ("Batch", new BatchSettings()), ("Access", new AccessSettings()), ("Access:Clients:NAME", new ClientSettings()), ("Limits", new QuotaSettings()),
        ("Proxy", new ProxySettings()), ("Log", new LogSettings()), ("Telemetry", new TelemetrySettings()), ("Shutdown", new ShutdownSettings()),
    ];

    private static string Docs => Path.Combine(Path.GetDirectoryName(Path.GetDirectoryName(ContractFile.Path("openapi.json")))!, "docs");

    [Fact]
    public async Task Every_setting_stands_on_the_page_with_its_default_and_its_range()
    {
        var rows = Row().Matches(await File.ReadAllTextAsync(Path.Combine(Docs, "configuration.md"))).ToDictionary(row => row.Groups[1].Value, row => (Default: row.Groups[2].Value, Allowed: row.Groups[3].Value));
        List<string> known = [];
        foreach ((var section, var defaults) in Sections)
        {
            foreach (var setting in defaults.GetType().GetProperties().Where(setting => setting.Name != nameof(AccessSettings.Clients)))
            {
                var name = $"{section}:{setting.Name}";
                known.Add(name);
                Assert.True(rows.TryGetValue(name, out var row), name);
                Assert.Equal((name, ToText(setting.GetValue(defaults), name)), (name, row.Default));
                if (setting.GetCustomAttribute<RangeAttribute>() is { } range)
                    Assert.Equal((name, $"{Number(range.Minimum)} to {Number(range.Maximum)}"), (name, row.Allowed));
            }
        }

        Assert.Equal(known.Order(StringComparer.Ordinal), rows.Keys.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_section_that_is_read_is_looked_at() =>
        Assert.Equal(
            typeof(ServiceSettings).GetFields(BindingFlags.Public | BindingFlags.Static).Select(field => (string)field.GetRawConstantValue()!).Order(StringComparer.Ordinal),
            Sections.Select(one => one.Section.Split(':')[0]).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public async Task Rules_and_dashboard_ask_for_metrics_that_are_served_and_rules_have_a_case_in_which_they_fire()
    {
        var operations = Path.Combine(Docs, "operations");
        var rules = await File.ReadAllTextAsync(Path.Combine(operations, "alerts.yml"));
        var cases = await File.ReadAllTextAsync(Path.Combine(operations, "alerts.test.yml"));
        var asked = Metric().Matches(rules + await File.ReadAllTextAsync(Path.Combine(operations, "dashboard.json"))).Select(match => match.Value).Distinct();
        Assert.All(asked, name => Assert.Contains(name, Served));
        Assert.All(Rule().Matches(rules).Select(match => match.Groups[1].Value), rule => Assert.Contains($"alertname: {rule}, exp_alerts: [ {{", cases, StringComparison.Ordinal));
    }

    /// <summary>The metrics that rules and dashboard may use; <see cref="Watching.TelemetryTests"/> sees that the service's own are served, the others are the framework's.</summary>
    private static readonly string[] Served =
    [
        "setup_solver_steps_total", "setup_refusals_total", "setup_work_computing", "setup_work_waiting", "setup_work_delay_seconds", "setup_batch_lines_total", "setup_fitment_verdicts_total",
        "http_server_request_duration_seconds_bucket", "http_server_request_duration_seconds_count",
        "dotnet_process_memory_working_set_bytes", "dotnet_process_cpu_time_seconds_total", "dotnet_gc_pause_time_seconds_total",
    ];

    private static string ToText(object? value, string name) => value switch
    {
        null when name.EndsWith("BurstUnits", StringComparison.Ordinal) => "`Limits:BurstUnits`",
        null when name.EndsWith("SustainedUnits", StringComparison.Ordinal) => "`Limits:SustainedUnits`",
        null or string[] { Length: 0 } => "none",
        bool flag => flag ? "true" : "false",
        Enum word => word.ToString(),
        _ => Number(value),
    };

    private static string Number(object value) => Convert.ToDouble(value, CultureInfo.InvariantCulture).ToString("0.####", CultureInfo.InvariantCulture);

    [GeneratedRegex("^\\| `((?:Work|Caps|Batch|Access|Limits|Proxy|Log|Telemetry|Shutdown):[A-Za-z:]+)` \\| ([^|]+) \\| ([^|]+) \\|", RegexOptions.Multiline)]
    private static partial Regex Row();

    [GeneratedRegex("\\b(?:setup|http_server|dotnet)_[a-z_]+")]
    private static partial Regex Metric();

    [GeneratedRegex("alert: (\\w+)")]
    private static partial Regex Rule();
}
