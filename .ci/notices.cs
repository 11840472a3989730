#:property PublishAot=false
#:property RestorePackagesWithLockFile=false
#:property RestoreLockedMode=false
#:property GenerateDocumentationFile=false
#:property EnforceCodeStyleInBuild=false

// dotnet run notices.cs -- project.assets.json packages.tsv COMMIT FOLDER
// Writes into the folder what the service is made of: sbom.cdx.json (CycloneDX 1.6) and THIRD-PARTY-NOTICES.txt. Takes the packages that were restored, with the versions and
// hashes of the lock file, the runtime that is compiled in, and the system's packages (lines of distribution, name, version, architecture). What only builds is listed as excluded.
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml.Linq;

if (args is not [var assetsFile, var systemFile, var commit, var folder])
{
    Console.Error.WriteLine("usage: notices.cs project.assets.json packages.tsv COMMIT FOLDER");
    return 2;
}

var assets = JsonNode.Parse(File.ReadAllText(assetsFile))!.AsObject();
var caches = assets["packageFolders"]!.AsObject().Select(static cache => cache.Key).ToList();
var target = assets["targets"]!.AsObject().Single(static target => target.Key.EndsWith("/linux-x64", StringComparison.Ordinal)).Value!.AsObject();
var framework = assets["project"]!["frameworks"]!.AsObject().Single().Value!;

List<Package> packages = [];
foreach (var (key, library) in target)
{
    if ((string?)library!["type"] != "package")
        continue;
    var slash = key.IndexOf('/', StringComparison.Ordinal);
    var ships = library["runtime"] is JsonObject { Count: > 0 };
    packages.Add(Package.Read(caches, key[..slash], key[(slash + 1)..], ships, [.. (library["dependencies"]?.AsObject() ?? []).Select(static needed => needed.Key)]));
}

// The runtime and the web framework are compiled in; they are no packages of the target, and their version is that of the SDK.
foreach (var downloaded in framework["downloadDependencies"]!.AsArray())
{
    var name = (string)downloaded!["name"]!;
    var version = ((string)downloaded["version"]!).Trim('[', ']').Split(',')[0];
    if (name.Contains(".Runtime.", StringComparison.Ordinal))
        packages.Add(Package.Read(caches, name, version, ships: true, []));
}

packages = [.. packages.OrderBy(static package => package.Name, StringComparer.OrdinalIgnoreCase)];
var system = File.ReadAllLines(systemFile).Select(static line => line.Split('\t')).ToList();

JsonArray components = [.. packages.Select(static package => package.Component()), .. system.Select(static part => SystemComponent(part))];
var references = packages.ToDictionary(static package => package.Name, static package => package.Reference, StringComparer.OrdinalIgnoreCase);
var service = $"setup-service@{commit}";
JsonArray dependencies =
[
    new JsonObject { ["ref"] = service, ["dependsOn"] = new JsonArray([.. components.Select(static component => JsonValue.Create((string)component!["bom-ref"]!))]) },
    .. packages.Select(package => new JsonObject
    {
        ["ref"] = package.Reference,
        ["dependsOn"] = new JsonArray([.. package.Needs.Where(references.ContainsKey).Select(needed => JsonValue.Create(references[needed]))]),
    }),
];
JsonObject bill = new()
{
    ["bomFormat"] = "CycloneDX",
    ["specVersion"] = "1.6",
    ["version"] = 1,
    ["metadata"] = new JsonObject { ["component"] = new JsonObject { ["bom-ref"] = service, ["type"] = "application", ["name"] = "setup-service", ["version"] = commit } },
    ["components"] = components,
    ["dependencies"] = dependencies,
};
File.WriteAllText(Path.Combine(folder, "sbom.cdx.json"), bill.ToJsonString(new JsonSerializerOptions { WriteIndented = true }));

StringBuilder notices = new("What the service is made of beside its own code, and under which licences. Those of the system's libraries stand in the folder licences.\n");
foreach (var package in packages.Where(static package => package.Ships))
    notices.Append(package.Notice());
HashSet<string> told = [];
foreach (var (title, text) in packages.Where(static package => package.Ships).SelectMany(static package => package.Texts))
{
    if (told.Add(text))
        notices.Append($"\n{new string('=', 100)}\n{title}\n{new string('=', 100)}\n\n{text.ReplaceLineEndings("\n").Trim()}\n");
}

foreach (var id in packages.Where(static package => package.Ships).Select(static package => package.License.Id).Distinct().Order(StringComparer.Ordinal))
{
    if (LicenceText(id) is { } text)
        notices.Append($"\n{new string('=', 100)}\n{id}\n{new string('=', 100)}\n\n{text.Trim()}\n");
}

File.WriteAllText(Path.Combine(folder, "THIRD-PARTY-NOTICES.txt"), notices.ToString());
Console.WriteLine($"{packages.Count(static package => package.Ships)} packages that ship, {packages.Count(static package => !package.Ships)} that build, {system.Count} of the system");
return 0;

static JsonObject SystemComponent(string[] part)
{
    var reference = $"pkg:deb/{part[0]}/{part[1]}@{Uri.EscapeDataString(part[2])}?arch={part[3]}";
    return new() { ["bom-ref"] = reference, ["type"] = "library", ["name"] = part[1], ["version"] = part[2], ["purl"] = reference, ["scope"] = "required" };
}

// Apache-2.0 stands on every Debian and Ubuntu; MIT is short.
static string? LicenceText(string id) => id switch
{
    "Apache-2.0" => File.ReadAllText("/usr/share/common-licenses/Apache-2.0"),
    "MIT" =>
        """
        Permission is hereby granted, free of charge, to any person obtaining a copy of this software and associated documentation files (the "Software"), to deal in the Software
        without restriction, including without limitation the rights to use, copy, modify, merge, publish, distribute, sublicense, and/or sell copies of the Software, and to permit
        persons to whom the Software is furnished to do so, subject to the following conditions:

        The above copyright notice and this permission notice shall be included in all copies or substantial portions of the Software.

        THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF MERCHANTABILITY, FITNESS FOR A PARTICULAR
        PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR
        OTHERWISE, ARISING FROM, OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE.
        """,
    _ => null,
};

internal sealed record Licence(string Id, bool IsExpression);

internal sealed record Package(string Name, string Version, bool Ships, IReadOnlyList<string> Needs, Licence License, string Hash, string Copyright, string Page)
{
    public string Reference => $"pkg:nuget/{Name}@{Version}";

    public required IReadOnlyList<(string Title, string Text)> Texts { get; init; }

    public static Package Read(IEnumerable<string> caches, string name, string version, bool ships, IReadOnlyList<string> needs)
    {
        var id = name.ToLowerInvariant();
        var folder = caches.Select(cache => Path.Combine(cache, id, version)).First(Directory.Exists);
        var facts = XDocument.Load(Path.Combine(folder, id + ".nuspec")).Root!.Elements().Single(static element => element.Name.LocalName == "metadata");
        string Fact(string fact) => facts.Elements().FirstOrDefault(element => element.Name.LocalName == fact)?.Value.Trim() ?? "";
        var licence = facts.Elements().FirstOrDefault(static element => element.Name.LocalName == "license");
        var isExpression = (string?)licence?.Attribute("type") == "expression";
        string[] kinds = ["LICENSE", "LICENCE", "NOTICE", "THIRD-PARTY"];
        var texts = Directory.EnumerateFiles(folder)
            .Where(file => kinds.Any(kind => Path.GetFileName(file).StartsWith(kind, StringComparison.OrdinalIgnoreCase)))
            .Order(StringComparer.Ordinal)
            .Select(file => ($"{name}: {Path.GetFileName(file)}", File.ReadAllText(file)));
        return new Package(
            name,
            version,
            ships,
            needs,
            new Licence(isExpression ? licence!.Value.Trim() : Fact("licenseUrl") is { Length: > 0 } url ? url : "licence in the package", isExpression),
            Convert.ToHexStringLower(Convert.FromBase64String(File.ReadAllText(Path.Combine(folder, $"{id}.{version}.nupkg.sha512")))),
            Fact("copyright") is { Length: > 0 } copyright ? copyright : $"Copyright {Fact("authors")}",
            Fact("projectUrl"))
        {
            Texts = [.. texts],
        };
    }

    public JsonObject Component() => new()
    {
        ["bom-ref"] = Reference,
        ["type"] = "library",
        ["name"] = Name,
        ["version"] = Version,
        ["scope"] = Ships ? "required" : "excluded",
        ["hashes"] = new JsonArray(new JsonObject { ["alg"] = "SHA-512", ["content"] = Hash }),
        ["licenses"] = new JsonArray(License.IsExpression
            ? new JsonObject { ["expression"] = License.Id }
            : new JsonObject { ["license"] = new JsonObject { ["name"] = License.Id } }),
        ["purl"] = Reference,
    };

    public string Notice() => $"\n{Name} {Version}\n  {License.Id}\n  {Copyright}\n{(Page.Length > 0 ? $"  {Page}\n" : "")}";
}
