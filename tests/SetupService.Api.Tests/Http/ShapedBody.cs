using System.Globalization;
using System.Text;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Tests.Http;

/// <summary>
/// Writes bodies that follow a schema, and now and then break it in one of the ways people break it. The same seed
/// gives the same body.
/// </summary>
internal sealed class ShapedBody(int seed, double faultShare)
{
    private static readonly string[] Foreign =
        ["null", "true", "17", "-0.5", "1e999", "1e-400", "87.0", "\"x\"", "\"\"", "\"\\ud800\"", "[]", "{}", "[[1],{\"a\":null}]", "{\"kind\":\"measured\"}"];

    private readonly Random _random = new(seed);

    public string Write(ContractSchema schema)
    {
        if (Breaks())
            return Foreign[_random.Next(Foreign.Length)];
        return schema switch
        {
            ObjectSchema known => Object(known),
            VariantSchema variant => Object(variant.Schemas[_random.Next(variant.Schemas.Count)]),
            ArraySchema list => List(list),
            NumberSchema number => Number(number),
            StringSchema text => Text(text),
            EnumSchema word => Quoted(word.Words[_random.Next(word.Words.Count)]),
            _ => "true",
        };
    }

    private string Object(ObjectSchema schema)
    {
        List<string> members = [];
        foreach (var member in schema.Members)
        {
            if (member.IsRequired ? Breaks() : _random.Next(3) == 0)
                continue;
            members.Add(Quoted(member.Name) + ":" + Write(member.Schema));
            if (Breaks())
                members.Add(Quoted(member.Name) + ":" + Write(member.Schema));
        }

        if (Breaks())
            members.Add("\"x/~y\":" + Foreign[_random.Next(Foreign.Length)]);
        string[] shuffled = [.. members];
        _random.Shuffle(shuffled);
        return "{" + string.Join(_random.Next(4) == 0 ? " ,\n" : ",", shuffled) + "}";
    }

    private string List(ArraySchema list)
    {
        var count = Breaks() ? _random.Next(0, list.Maximum + 2) : _random.Next(list.Minimum, Math.Min(list.Maximum, list.Minimum + 3) + 1);
        return "[" + string.Join(',', Enumerable.Range(0, count).Select(_ => Write(list.Element))) + "]";
    }

    private string Number(NumberSchema schema)
    {
        var value = _random.Next(6) switch
        {
            0 => schema.Minimum,
            1 => schema.Maximum,
            _ => schema.Minimum + (_random.NextDouble() * (schema.Maximum - schema.Minimum)),
        };
        if (Breaks())
            value = _random.Next(2) == 0 ? Math.BitDecrement(schema.Minimum) : Math.BitIncrement(schema.Maximum);
        else if (schema.IsWhole)
            value = Math.Floor(value);
        return value.ToString("R", CultureInfo.InvariantCulture);
    }

    private string Text(StringSchema schema)
    {
        var length = Breaks() ? schema.MaximumLength + 1 : _random.Next(schema.MaximumLength + 1);
        return Quoted(new string('a', length));
    }

    // Some letters escaped: the same text, spelled otherwise.
    private string Quoted(string text)
    {
        if (text.Length == 0 || _random.Next(10) > 0)
            return "\"" + text + "\"";

        var at = _random.Next(text.Length);
        return new StringBuilder().Append('"').Append(text, 0, at)
            .Append(CultureInfo.InvariantCulture, $"\\u{(int)text[at]:x4}")
            .Append(text, at + 1, text.Length - at - 1).Append('"').ToString();
    }

    private bool Breaks() => _random.NextDouble() < faultShare;
}
