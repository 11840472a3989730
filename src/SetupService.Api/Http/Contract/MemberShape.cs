using System.Text;

namespace SetupService.Api.Http.Contract;

/// <summary>One member of an object of a request.</summary>
internal sealed class MemberShape(string name, bool isRequired, ContractShape shape)
{
    public string Name => name;

    public byte[] NameUtf8 { get; } = Encoding.UTF8.GetBytes(name);

    public bool IsRequired => isRequired;

    public ContractShape Shape => shape;
}
