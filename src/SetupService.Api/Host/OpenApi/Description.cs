using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using SetupService.Api.Http;

namespace SetupService.Api.Host.OpenApi;

/// <summary>The API description as a file, in its two forms.</summary>
internal interface IDescription
{
    /// <summary>The file as JSON, UTF-8.</summary>
    Task<byte[]> JsonAsync();

    /// <summary>The file as YAML, UTF-8.</summary>
    Task<byte[]> YamlAsync();
}

/// <summary>
/// The committed files of the folder api, built into the service, with the caps that the operator has set. The contract test holds the files to what the code says with
/// the caps it has by itself.
/// </summary>
internal sealed class CommittedDescription(CapSettings caps) : IDescription
{
    public Task<byte[]> JsonAsync() => ReadAsync("api/openapi.json");

    public Task<byte[]> YamlAsync() => ReadAsync("api/openapi.yaml");

    private async Task<byte[]> ReadAsync(string name)
    {
        var file = typeof(CommittedDescription).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} is not built in.");
        await using (file.ConfigureAwait(false))
        {
            var bytes = new byte[file.Length];
            await file.ReadExactlyAsync(bytes).ConfigureAwait(false);
            return WithCaps(bytes);
        }
    }

    private byte[] WithCaps(byte[] description)
    {
        CapSettings standing = new();
        if (CapSettings.Sentences.All(tell => tell(caps) == tell(standing)))
            return description;
        StringBuilder text = new(Encoding.UTF8.GetString(description));
        foreach (var tell in CapSettings.Sentences)
            text.Replace(tell(standing), tell(caps));
        return Encoding.UTF8.GetBytes(text.ToString());
    }
}

/// <summary>What the code says of itself. The tests ask for it and write the committed files from it; the service itself never makes it, so that the native build leaves the maker out.</summary>
internal sealed class GeneratedDescription(IServiceProvider services) : IDescription
{
    public async Task<byte[]> JsonAsync()
    {
        var document = await DocumentAsync().ConfigureAwait(false);
        using MemoryStream stream = new();
        await document.SerializeAsJsonAsync(stream, OpenApiSpecVersion.OpenApi3_1, CancellationToken.None).ConfigureAwait(false);
        using var json = JsonDocument.Parse(stream.ToArray());
        return Encoding.UTF8.GetBytes(CompactLayout.Format(json.RootElement));
    }

    public async Task<byte[]> YamlAsync()
    {
        var document = await DocumentAsync().ConfigureAwait(false);
        using MemoryStream stream = new();
        await document.SerializeAsYamlAsync(stream, OpenApiSpecVersion.OpenApi3_1, CancellationToken.None).ConfigureAwait(false);
        return stream.ToArray();
    }

    private Task<OpenApiDocument> DocumentAsync() => services.GetRequiredKeyedService<IOpenApiDocumentProvider>(ApiDescription.DocumentName).GetOpenApiDocumentAsync();
}
