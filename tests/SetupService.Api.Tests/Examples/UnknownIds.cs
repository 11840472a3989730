using System.Text.Json;

namespace SetupService.Api.Tests.Examples;

/// <summary>Holds what is told as unknown to its one form: a JSON Pointer to a member that is null, or the bare name of a check or of a member of many rows.</summary>
internal static class UnknownIds
{
    /// <summary>Every list of what is unknown, at any depth.</summary>
    public static void Check(JsonElement answer)
    {
        if (answer.ValueKind == JsonValueKind.Array)
        {
            foreach (var one in answer.EnumerateArray()) Check(one);
        }
        else if (answer.ValueKind == JsonValueKind.Object)
        {
            if (answer.TryGetProperty("unknown", out var unknown) && unknown.ValueKind == JsonValueKind.Array)
            {
                foreach (var one in unknown.EnumerateArray().Where(one => one.ValueKind == JsonValueKind.Object)) CheckOne(answer, one.GetProperty("id").GetString()!);
            }

            foreach (var member in answer.EnumerateObject()) Check(member.Value);
        }
    }

    private static void CheckOne(JsonElement holder, string id)
    {
        if (!id.StartsWith('/'))
        {
            Assert.True(id.Length > 0 && id.All(char.IsAsciiLetterOrDigit), $"'{id}' is neither a JSON Pointer nor a name.");
            return;
        }

        var at = holder;
        foreach (var step in id[1..].Split('/'))
        {
            Assert.True(
                at.ValueKind == JsonValueKind.Array ? int.TryParse(step, out var index) && index < at.GetArrayLength() : at.ValueKind == JsonValueKind.Object && at.TryGetProperty(step, out _),
                $"'{id}' is said to be unknown and leads nowhere in {holder}");
            at = at.ValueKind == JsonValueKind.Array ? at[int.Parse(step, System.Globalization.CultureInfo.InvariantCulture)] : at.GetProperty(step);
        }

        Assert.True(at.ValueKind == JsonValueKind.Null, $"'{id}' is said to be unknown and is {at}");
    }
}
