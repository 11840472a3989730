using System.Globalization;
using System.Text;

namespace SetupService.Api.Http.Faults;

/// <summary>The place a reader stands at; its JSON Pointer (RFC 6901) is only spelled out when a fault needs it.</summary>
internal sealed class PointerPath
{
    private readonly List<(string? Name, int Index)> _segments = [];

    public void Push(string name) => _segments.Add((name, 0));

    public void Push(int index) => _segments.Add((null, index));

    public void Pop() => _segments.RemoveAt(_segments.Count - 1);

    /// <summary>How a sentence calls this place: the member's name, or the element's number in it.</summary>
    public string Label
    {
        get
        {
            for (var at = _segments.Count - 1; at >= 0; at--)
            {
                if (_segments[at].Name is not { } name)
                    continue;
                return at == _segments.Count - 1
                    ? name
                    : string.Create(CultureInfo.InvariantCulture, $"Element {_segments[^1].Index} of {name}");
            }

            return "The body";
        }
    }

    public override string ToString() => Build(new StringBuilder()).ToString();

    public string Then(string name)
    {
        var text = Build(new StringBuilder());
        return Escape(text.Append('/'), name).ToString();
    }

    private StringBuilder Build(StringBuilder text)
    {
        foreach ((var name, var index) in _segments)
        {
            text.Append('/');
            if (name is null)
                text.Append(CultureInfo.InvariantCulture, $"{index}");
            else
                Escape(text, name);
        }

        return text;
    }

    private static StringBuilder Escape(StringBuilder text, string name)
    {
        foreach (var letter in name)
        {
            _ = letter switch
            {
                '~' => text.Append("~0"),
                '/' => text.Append("~1"),
                _ => text.Append(letter),
            };
        }

        return text;
    }
}
