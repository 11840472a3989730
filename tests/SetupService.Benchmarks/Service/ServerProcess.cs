using System.Globalization;

namespace SetupService.Benchmarks.Service;

/// <summary>What the operating system tells of the server: processor time does not depend on who else wants the processor.</summary>
/// <param name="pid">The server's process id.</param>
internal sealed class ServerProcess(string pid)
{
    private const double TicksPerSecond = 100;

    /// <summary>Processor time used so far, seconds.</summary>
    public double CpuSeconds()
    {
        var fields = File.ReadAllText($"/proc/{pid}/stat").Split(") ")[1].Split(' ');
        return (double.Parse(fields[11], CultureInfo.InvariantCulture) + double.Parse(fields[12], CultureInfo.InvariantCulture)) / TicksPerSecond;
    }

    /// <summary>Memory resident now, MiB.</summary>
    public double ResidentMib() => Status("VmRSS:");

    /// <summary>The most memory ever resident, MiB.</summary>
    public double PeakMib() => Status("VmHWM:");

    private double Status(string name)
    {
        string line = File.ReadLines($"/proc/{pid}/status").Single(line => line.StartsWith(name, StringComparison.Ordinal));
        return long.Parse(line[name.Length..].Replace("kB", "", StringComparison.Ordinal).Trim(), CultureInfo.InvariantCulture) / 1024.0;
    }
}
