using System.Globalization;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace SetupService.Client;

/// <summary>
/// Calls the setup service: a method for each of its calls, named after it. One serves a whole program and all its threads, as its <see cref="HttpClient"/> does.
/// A refusal comes as <see cref="SetupServiceException"/>, a network that fails as <see cref="HttpRequestException"/>.
/// </summary>
/// <param name="http">Whose <see cref="HttpClient.BaseAddress"/> is the service's, and whose header <c>Api-Key</c> carries the key where the service asks for one.</param>
public sealed partial class SetupClient(HttpClient http)
{
    private static readonly MediaTypeHeaderValue Json = new("application/json");

    /// <summary>How requests are written and answers read: what is null is left out, members and words of later editions are passed over.</summary>
    public static JsonSerializerOptions SerializerOptions { get; } = new()
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        AllowOutOfOrderMetadataProperties = true,
        Converters = { new JsonStringEnumConverter() },
    };

    private Task<T> GetAsync<T>(string path, CancellationToken cancellation) => AnswerAsync<T>(new(HttpMethod.Get, path), cancellation);

    private Task<T> SendAsync<T>(string path, object request, CancellationToken cancellation) => AnswerAsync<T>(Post(path, request), cancellation);

    private async Task<T> AnswerAsync<T>(HttpRequestMessage request, CancellationToken cancellation)
    {
        using (request)
        {
            using var response = await AskAsync(request, cancellation).ConfigureAwait(false);
            return (await response.Content.ReadFromJsonAsync<T>(SerializerOptions, cancellation).ConfigureAwait(false))!;
        }
    }

    private Task<string> TextAsync(string path, CancellationToken cancellation) => TextAsync(new HttpRequestMessage(HttpMethod.Get, path), cancellation);

    private Task<string> TextAsync(string path, object request, CancellationToken cancellation) => TextAsync(Post(path, request), cancellation);

    private async Task<string> TextAsync(HttpRequestMessage request, CancellationToken cancellation)
    {
        using (request)
        {
            using var response = await AskAsync(request, cancellation).ConfigureAwait(false);
            return await response.Content.ReadAsStringAsync(cancellation).ConfigureAwait(false);
        }
    }

    private static HttpRequestMessage Post(string path, object request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return new(HttpMethod.Post, path) { Content = JsonContent.Create(request, request.GetType(), Json, SerializerOptions) };
    }

    /// <summary>The answer once its headers are there, which is none that refuses.</summary>
    private async Task<HttpResponseMessage> AskAsync(HttpRequestMessage request, CancellationToken cancellation)
    {
        var response = await http.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, cancellation).ConfigureAwait(false);
        if (response.IsSuccessStatusCode)
            return response;
        using (response)
            throw await SetupServiceException.FromAsync(response, cancellation).ConfigureAwait(false);
    }

    private static string Query(params ReadOnlySpan<(string Name, object? Value)> parameters)
    {
        StringBuilder text = new();
        foreach (var (name, value) in parameters)
        {
            if (value is not null)
                text.Append(text.Length == 0 ? '?' : '&').Append(name).Append('=').Append(Uri.EscapeDataString(Word(value)));
        }

        return text.ToString();
    }

    /// <summary>A value as the contract spells it in a query: words by their names, lists with commas.</summary>
    private static string Word(object value) => value switch
    {
        string text => text,
        Enum word => JsonSerializer.Serialize(word, word.GetType(), SerializerOptions).Trim('"'),
        IEnumerable<CheckStatus> several => string.Join(',', several.Select(one => Word(one))),
        _ => Convert.ToString(value, CultureInfo.InvariantCulture)!,
    };
}

/// <summary>The service refused a request.</summary>
public sealed class SetupServiceException : Exception
{
    private SetupServiceException(string message, int status, Problem? problem, TimeSpan? retryAfter)
        : base(message) => (Status, Problem, RetryAfter) = (status, problem, retryAfter);

    /// <summary>The HTTP status.</summary>
    public int Status { get; }

    /// <summary>What the service says of it, with every fault of the request; null where something before the service answered.</summary>
    public Problem? Problem { get; }

    /// <summary>After how long the request may be sent again; null where sending it again would not help.</summary>
    public TimeSpan? RetryAfter { get; }

    internal static async Task<SetupServiceException> FromAsync(HttpResponseMessage response, CancellationToken cancellation)
    {
        var problem = response.Content.Headers.ContentType?.MediaType == "application/problem+json"
            ? await response.Content.ReadFromJsonAsync<Problem>(SetupClient.SerializerOptions, cancellation).ConfigureAwait(false)
            : null;
        var status = (int)response.StatusCode;
        return new($"{status}: {problem?.Detail ?? response.ReasonPhrase}", status, problem, response.Headers.RetryAfter?.Delta);
    }
}
