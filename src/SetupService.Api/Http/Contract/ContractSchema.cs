using System.Text;
using System.Text.Json;

namespace SetupService.Api.Http.Contract;

/// <summary>What the contract allows at one place of a request body.</summary>
internal abstract class ContractSchema
{
    /// <summary>What a caller is told to send here, such as "a number" or "an object".</summary>
    public abstract string Expected { get; }
}

/// <summary>A truth value.</summary>
internal sealed class BooleanSchema : ContractSchema
{
    public override string Expected => "true or false";
}

/// <summary>A text of a limited length.</summary>
internal sealed class StringSchema(int maximumLength) : ContractSchema
{
    public int MaximumLength => maximumLength;

    public override string Expected => "a text";
}

/// <summary>A finite number within limits.</summary>
internal sealed class NumberSchema(double minimum, double maximum, bool isWhole, string? unit) : ContractSchema
{
    public double Minimum => minimum;

    public double Maximum => maximum;

    public bool IsWhole => isWhole;

    public string? Unit => unit;

    public override string Expected => isWhole ? "a whole number" : "a number";
}

/// <summary>One word of a closed set.</summary>
internal sealed class EnumSchema(IReadOnlyList<string> words) : ContractSchema
{
    public IReadOnlyList<string> Words => words;

    public override string Expected => "one of the words " + string.Join(", ", words);
}

/// <summary>A caller's own name for something: a text of a limited length, or a whole number.</summary>
internal sealed class LineIdSchema(int maximumLength) : ContractSchema
{
    public int MaximumLength => maximumLength;

    public override string Expected => "a text or a whole number";
}

/// <summary>An array whose elements all have one schema.</summary>
internal sealed class ArraySchema(ContractSchema element, int minimum, int maximum) : ContractSchema
{
    public ContractSchema Element => element;

    public int Minimum => minimum;

    public int Maximum => maximum;

    public override string Expected => "an array";
}

/// <summary>One member of an object of a request.</summary>
internal sealed class MemberSchema(string name, bool isRequired, ContractSchema schema)
{
    public string Name => name;

    public byte[] NameUtf8 { get; } = Encoding.UTF8.GetBytes(name);

    public bool IsRequired => isRequired;

    public ContractSchema Schema => schema;
}

/// <summary>An object with named members and no others.</summary>
internal sealed class ObjectSchema(Type type, string? discriminator = null) : ContractSchema
{
    private const int MostMembers = 64;

    public Type Type => type;

    /// <summary>In a change to an object of several kinds, the name of the member that tells the kind; else null.</summary>
    public string? Discriminator => discriminator;

    public IReadOnlyList<MemberSchema> Members { get; private set; } = [];

    public override string Expected => "an object";

    /// <summary>Fills the members in; a schema stands before its members do so that documents may nest themselves.</summary>
    public void Complete(IReadOnlyList<MemberSchema> members)
    {
        // The second reader keeps the members it has seen in the bits of one word.
        if (members.Count > MostMembers)
            throw new InvalidOperationException($"{Type.Name} has more than {MostMembers} members.");
        Members = members;
    }

    /// <summary>The index of the member whose name the reader stands on, or −1.</summary>
    public int IndexOf(ref Utf8JsonReader reader)
    {
        for (var index = 0; index < Members.Count; index++)
        {
            if (reader.ValueTextEquals(Members[index].NameUtf8))
                return index;
        }

        return -1;
    }
}

/// <summary>An object that comes in several kinds, told apart by one member that may stand anywhere in it.</summary>
internal sealed class VariantSchema(Type type, string discriminator) : ContractSchema
{
    public Type Type => type;

    /// <summary>The name of the member that tells the kind.</summary>
    public string Discriminator => discriminator;

    public byte[] DiscriminatorUtf8 { get; } = Encoding.UTF8.GetBytes(discriminator);

    public IReadOnlyList<string> Kinds { get; private set; } = [];

    public IReadOnlyList<ObjectSchema> Schemas { get; private set; } = [];

    public override string Expected => "an object";

    public void Complete(IReadOnlyList<string> kinds, IReadOnlyList<ObjectSchema> schemas)
    {
        Kinds = kinds;
        Schemas = schemas;
    }

    /// <summary>The names a member of any kind may have, the one that tells the kind first.</summary>
    public IReadOnlyList<string> Names => [Discriminator, .. Schemas.SelectMany(static schema => schema.Members).Select(static member => member.Name).Where(name => name != Discriminator).Distinct()];

    /// <summary>Whether any kind has a member of the name the reader stands on.</summary>
    public bool Knows(ref Utf8JsonReader reader)
    {
        foreach (var schema in Schemas)
        {
            if (schema.IndexOf(ref reader) >= 0)
                return true;
        }

        return false;
    }

    /// <summary>The index of the kind whose word the reader stands on, or −1.</summary>
    public int IndexOf(ref Utf8JsonReader reader)
    {
        for (var index = 0; index < Kinds.Count; index++)
        {
            if (reader.ValueTextEquals(Kinds[index]))
                return index;
        }

        return -1;
    }
}
