// Changes the domain's code in one place at a time and asks whether a test notices: a sample by seed, so that two runs try the same places.
//
//   dotnet run --project tests/SetupService.Mutants -- [ROOM,...] [--count 60] [--seed 1] [--at FILE:LINE,...]
//
// ROOM: a folder of src/SetupService.Domain; all where left out. --at: every change of these lines instead of a sample, FILE from the
// domain's folder. A mutant is killed where a test that comes by its place fails, ends the process or runs over its time. The checkout is
// not touched. Exit status 1 where a room has less than 85 % killed.
//
// tests/mutants.survivors.txt lists survivors that no test can kill: "file: before -> after: why", a line each. They do not count.
using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using SetupService.Mutants;

const double WantedShare = 0.85;
const int MutantsPerProcess = 60;
var root = AppContext.BaseDirectory;
while (!File.Exists(Path.Combine(root, "SetupService.sln")))
    root = Path.GetDirectoryName(root) ?? throw new InvalidOperationException("the checkout is not found");
if (args is ["--worker", var planned, var build, var first, var last])
    return Worker.Run(root, File.ReadAllBytes(build), JsonSerializer.Deserialize<Trial[]>(File.ReadAllText(planned))!, Number(first), Number(last));

var clock = Stopwatch.StartNew();
var code = new DomainCode(root);
var rooms = args.FirstOrDefault(arg => !arg.StartsWith('-') && Array.IndexOf(args, arg) == 0)?.Split(',') ?? [.. code.Rooms];
var lines = Option("--at")?.Split(',').Select(line => $"{DomainCode.Folder}/{line}").ToHashSet();
var mutants = lines is null
    ? Plan.Draw(code, rooms, Number(Option("--count") ?? "60"), Number(Option("--seed") ?? "1"))
    : [.. code.Rooms.SelectMany(code.Mutants).Where(mutant => lines.Contains($"{mutant.File}:{mutant.Line}")).Where(code.Compiles)];
Console.WriteLine($"{mutants.Count} mutants drawn, {clock.Elapsed.TotalSeconds:0} s");
var switches = new Switches(code, mutants);
var trials = Plan.Make(code, mutants, switches.Held, Console.WriteLine);
var places = trials.Count(trial => trial.Tests.Count > 0);
Console.WriteLine($"{places} of them are met by a test, {clock.Elapsed.TotalSeconds:0} s");
var folder = Directory.CreateTempSubdirectory("mutants-").FullName;
string[] verdicts;
try
{
    var plan = Path.Combine(folder, "plan.json");
    var together = Path.Combine(folder, "together.dll");
    File.WriteAllText(plan, JsonSerializer.Serialize(trials));
    File.WriteAllBytes(together, switches.Assembly());
    verdicts = TryAll(plan, together);
}
finally
{
    Directory.Delete(folder, recursive: true);
}

return Report() ? 0 : 1;

string? Option(string name) => Array.IndexOf(args, name) is >= 0 and var at && at + 1 < args.Length ? args[at + 1] : null;

static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);

// One process after the other: one that crashes or runs over its time has killed its mutant, the next goes on behind it.
string[] TryAll(string plan, string together)
{
    var found = new string[trials.Count];
    for (var next = 0; next < found.Length;)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var arg in new[] { "--worker", plan, together, $"{next}", $"{Math.Min(next + MutantsPerProcess, found.Length)}" })
            start.ArgumentList.Add(arg);
        start.Environment["DOTNET_PROCESSOR_COUNT"] = "1";
        start.Environment["DOTNET_GCHeapHardLimit"] = "0x80000000";
        using var worker = Process.Start(start)!;
        worker.ErrorDataReceived += (_, _) => { };
        worker.BeginErrorReadLine();
        var open = -1;
        while (worker.StandardOutput.ReadLine() is { } line)
        {
            if (line.Split(' ') is not [var what, var number] || !int.TryParse(number, CultureInfo.InvariantCulture, out var at))
                continue;
            if (what == Worker.Begins)
            {
                open = at;
                continue;
            }

            found[at] = what;
            open = -1;
            if (what == Worker.Lives)
                Console.WriteLine($"  lives ({trials[at].Tests.Count} tests come by) {trials[at].Mutant.File}:{trials[at].Mutant.Line}: {trials[at].Mutant.Told}");
            next = at + 1;
        }

        worker.WaitForExit();
        if (open < 0 && worker.ExitCode is not (0 or 3))
            throw new InvalidOperationException($"a worker ended with {worker.ExitCode} before its first mutant");
        if (open >= 0)
        {
            found[open] = Worker.Killed;
            next = open + 1;
        }
    }

    return found;
}

bool Report()
{
    var list = Path.Combine(root, "tests/mutants.survivors.txt");
    var known = File.ReadLines(list).Where(line => line.Length > 0 && line[0] != '#').ToArray();
    var isGood = true;
    Console.WriteLine($"\nroom | killed | tried | no test can | share\n--- | --- | --- | --- | ---");
    foreach (var room in trials.Select((trial, at) => (trial.Mutant, Verdict: verdicts[at])).Where(each => each.Verdict != Worker.Invalid).GroupBy(each => each.Mutant.Room))
    {
        var equivalent = room.Count(each => each.Verdict == Worker.Lives && known.Any(line => line.StartsWith($"{each.Mutant.Key}: ", StringComparison.Ordinal)));
        var killed = room.Count(each => each.Verdict != Worker.Lives);
        var counted = room.Count() - equivalent;
        var share = counted == 0 ? 1 : (double)killed / counted;
        isGood &= share >= WantedShare;
        Console.WriteLine($"{room.Key} | {killed} | {room.Count()} | {equivalent} | {share:P0}");
    }

    Console.WriteLine($"\n{clock.Elapsed.TotalMinutes:0} minutes, {verdicts.Count(verdict => verdict == Worker.OutOfTime)} over their time");
    return isGood;
}
