using System.Text.Json;

namespace SetupService.Api.Http.Contract;

/// <summary>An object with named members and no others.</summary>
internal sealed class ObjectShape(Type type, string? teller = null) : ContractShape
{
    private const int MostMembers = 64;

    public Type Type => type;

    /// <summary>In a change to an object of several kinds, the name of the member that tells the kind; else null.</summary>
    public string? Teller => teller;

    public IReadOnlyList<MemberShape> Members { get; private set; } = [];

    public override string Wanted => "an object";

    /// <summary>Fills the members in; a shape stands before its members do so that documents may nest themselves.</summary>
    public void Complete(IReadOnlyList<MemberShape> members)
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
