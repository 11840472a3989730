using System.Text;
using System.Text.Json;

namespace SetupService.Api.Http.Faults;

/// <summary>Turns the path of a rule (<c>Candidate.Wheel.BoltCircle</c>, <c>Items[1].X</c>) into the JSON Pointer of the body sent.</summary>
public static class PointerOf
{
    /// <summary>The JSON Pointer of a C# member path; "" for an empty path.</summary>
    public static string Path(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        StringBuilder pointer = new();
        foreach (var step in path.Split(['.', '['], StringSplitOptions.RemoveEmptyEntries))
            pointer.Append('/').Append(step.EndsWith(']') ? step[..^1] : JsonNamingPolicy.CamelCase.ConvertName(step));
        return pointer.ToString();
    }
}
