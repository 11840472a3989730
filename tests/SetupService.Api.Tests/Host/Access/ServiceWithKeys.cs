using System.Buffers.Text;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using SetupService.Api.Host.Access;

namespace SetupService.Api.Tests.Host.Access;

/// <summary>A service with two clients, one of them with two keys and a secret to sign with.</summary>
internal static class ServiceWithKeys
{
    public static readonly byte[] Secret = [.. Enumerable.Range(0, 32).Select(i => (byte)i)];
    public static readonly byte[] SigningSecret = [.. Enumerable.Range(100, 32).Select(i => (byte)i)];
    public static readonly string First = KeyOf(1);
    public static readonly string Second = KeyOf(2);
    public static readonly string OfOther = KeyOf(3);

    public static Task<RunningService> StartAsync(TimeProvider? clock = null, params (string Name, string Value)[] settings) =>
        RunningService.StartAsync(configure: builder =>
        {
            Configure(builder);
            foreach ((var name, var value) in settings)
                builder.Configuration[name] = value;
            if (clock is not null)
                builder.Services.AddSingleton(clock);
        });

    public static void Configure(WebApplicationBuilder builder)
    {
        builder.Configuration["Access:HashSecret"] = Convert.ToBase64String(Secret);
        builder.Configuration["Access:Clients:shop:Keys:0"] = HashOf(First);
        builder.Configuration["Access:Clients:shop:Keys:1"] = HashOf(Second);
        builder.Configuration["Access:Clients:shop:SigningSecret"] = Convert.ToBase64String(SigningSecret);
        builder.Configuration["Access:Clients:other:Keys:0"] = HashOf(OfOther);
    }

    public static async Task<HttpResponseMessage> SendAsync(this RunningService service, string method, string path, string? key, string? body = null)
    {
        using HttpRequestMessage request = new(new HttpMethod(method), new Uri(path, UriKind.Relative));
        if (key is not null) request.Headers.TryAddWithoutValidation(AccessCheck.Header, key);
        if (body is not null) request.Content = new StringContent(body, Encoding.UTF8, "application/json");
        return await service.Client.SendAsync(request);
    }

    /// <summary>An address signed as a shop's server would, by the words of docs/security.md.</summary>
    public static string Sign(string path, DateTimeOffset expires, string client = "shop", byte[]? secret = null)
    {
        var text = string.Create(CultureInfo.InvariantCulture, $"{path}&expires={expires.ToUnixTimeSeconds()}");
        return $"{text}&signature={client}.{Convert.ToHexStringLower(HMACSHA256.HashData(secret ?? SigningSecret, Encoding.UTF8.GetBytes(text)))}";
    }

    private static string KeyOf(byte number) => Base64Url.EncodeToString(Enumerable.Repeat(number, 32).ToArray());

    private static string HashOf(string key) => Convert.ToHexStringLower(HMACSHA256.HashData(Secret, Base64Url.DecodeFromChars(key)));
}
