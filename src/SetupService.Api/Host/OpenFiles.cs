using System.Globalization;

namespace SetupService.Api.Host;

/// <summary>How many files, and with them connections, the process may have open.</summary>
internal static class OpenFiles
{
    // Libraries, pages, the collector of telemetry and connections that are being closed.
    private const int ForItself = 128;

    /// <summary>The soft limit of this process (RLIMIT_NOFILE of POSIX.1-2017, getrlimit); null where the system does not tell, or there is none.</summary>
    public static long? Limit()
    {
        const string Limits = "/proc/self/limits";
        return OperatingSystem.IsLinux() && File.Exists(Limits) ? Read(File.ReadAllText(Limits)) : null;
    }

    /// <summary>The soft limit as the system's table of limits has it: the first number behind the name.</summary>
    public static long? Read(string limits)
    {
        const string Name = "Max open files";
        var line = limits.Split('\n').FirstOrDefault(static line => line.StartsWith(Name, StringComparison.Ordinal));
        return long.TryParse(line?[Name.Length..].Split(' ', StringSplitOptions.RemoveEmptyEntries)[0], NumberStyles.None, CultureInfo.InvariantCulture, out var files) ? files : null;
    }

    /// <summary>Most connections at an address: as asked for, or half of what may be open, so that two addresses do not use it up.</summary>
    /// <param name="wanted">The cap of the settings.</param>
    /// <param name="files">Files the process may have open; null = any number.</param>
    public static long MostConnections(int wanted, long? files) => files is { } most ? Math.Clamp((most - ForItself) / 2, 1, wanted) : wanted;
}
