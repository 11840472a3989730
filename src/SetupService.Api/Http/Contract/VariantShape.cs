using System.Text;
using System.Text.Json;

namespace SetupService.Api.Http.Contract;

/// <summary>An object that comes in several kinds, told apart by one member that may stand anywhere in it.</summary>
internal sealed class VariantShape(Type type, string teller) : ContractShape
{
    public Type Type => type;

    /// <summary>The name of the member that tells the kind.</summary>
    public string Teller => teller;

    public byte[] TellerUtf8 { get; } = Encoding.UTF8.GetBytes(teller);

    public IReadOnlyList<string> Kinds { get; private set; } = [];

    public IReadOnlyList<ObjectShape> Shapes { get; private set; } = [];

    public override string Wanted => "an object";

    public void Complete(IReadOnlyList<string> kinds, IReadOnlyList<ObjectShape> shapes)
    {
        Kinds = kinds;
        Shapes = shapes;
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
