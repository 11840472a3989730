using System.Text;
using System.Text.Json;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;

namespace SetupService.Api.Tests.Http.Changes;

/// <summary>
/// RFC 7396, the table of Appendix A: its cases of an object merged into an object without null. A change here is always an object;
/// what the table does with other texts, and with null, is refused or means nothing (<see cref="ChangeFaultTests"/>, <see cref="ChangeTests"/>).
/// </summary>
public sealed class JsonMergeTests
{
    [Theory]
    [InlineData("""{"a":"b"}""", """{"a":"c"}""", """{"a":"c"}""")]
    [InlineData("""{"a":"b"}""", """{"b":"c"}""", """{"a":"b","b":"c"}""")]
    [InlineData("""{"a":["b"]}""", """{"a":"c"}""", """{"a":"c"}""")]
    [InlineData("""{"a":"c"}""", """{"a":["b"]}""", """{"a":["b"]}""")]
    [InlineData("""{"a":[{"b":"c"}]}""", """{"a":[1]}""", """{"a":[1]}""")]
    [InlineData("""{"e":null}""", """{"a":1}""", """{"e":null,"a":1}""")]
    [InlineData("""{"a":{"b":"c"}}""", """{"a":{"b":"d"}}""", """{"a":{"b":"d"}}""")] // the table's own has "c":null beside it
    public void The_published_cases_hold(string document, string change, string merged)
    {
        using var read = JsonDocument.Parse(JsonMerge.Apply(Schema(), JsonElement.Parse(document), JsonElement.Parse(change)));
        using var wanted = JsonDocument.Parse(merged);

        Assert.True(JsonElement.DeepEquals(wanted.RootElement, read.RootElement), read.RootElement.GetRawText());
    }

    [Theory]
    [InlineData("""{"kind":"x","b":"1"}""", """{"b":"2"}""", """{"kind":"x","b":"2"}""")]
    [InlineData("""{"kind":"x","b":"1"}""", """{"kind":"x","c":"2"}""", """{"kind":"x","b":"1","c":"2"}""")]
    [InlineData("""{"kind":"x","b":"1"}""", """{"kind":"y","c":"2"}""", """{"kind":"y","c":"2"}""")]
    [InlineData("""{"b":"1"}""", """{"kind":"y"}""", """{"kind":"y"}""")]
    public void An_object_of_several_kinds_is_merged_within_its_kind_and_replaced_by_another(string document, string change, string merged)
    {
        ObjectSchema outer = new(typeof(object));
        outer.Complete([Member("of", Schema("kind"))]);

        var applied = JsonMerge.Apply(outer, JsonElement.Parse($$"""{"of":{{document}}}"""), JsonElement.Parse($$"""{"of":{{change}}}"""));

        Assert.Equal($$"""{"of":{{merged}}}""", Encoding.UTF8.GetString(applied.Span));
    }

    private static ObjectSchema Schema(string? discriminator = null)
    {
        ObjectSchema schema = new(typeof(object), discriminator);
        StringSchema text = new(10);
        schema.Complete([Member("kind", text), Member("a", schema), Member("b", text), Member("c", text), Member("e", text)]);
        return schema;
    }

    private static MemberSchema Member(string name, ContractSchema schema) => new(name, isRequired: false, schema);
}
