using System.Net.Sockets;
using System.Text;

namespace SetupService.Api.Tests.Host;

/// <summary>A bare connection, for what the framework's own client would never send. Texts are sent in ISO 8859-1, a byte a character.</summary>
internal sealed class RawConnection : IDisposable
{
    private readonly TcpClient _connection = new() { NoDelay = true };

    // Kept, because the connection gives it no more once sending has ended.
    private NetworkStream _stream = null!;

    private RawConnection()
    {
    }

    public static async Task<RawConnection> OpenAsync(HttpClient client)
    {
        RawConnection opened = new();
        await opened._connection.ConnectAsync(client.BaseAddress!.Host, client.BaseAddress.Port);
        opened._stream = opened._connection.GetStream();
        return opened;
    }

    /// <summary>Sends a request and reads until the service closes the connection or says no more; fails where nothing comes soon.</summary>
    public static async Task<string> ExchangeAsync(HttpClient client, string request)
    {
        using var connection = await OpenAsync(client);
        await connection.SendAsync(request);
        return await connection.ReadToEndAsync();
    }

    public async Task SendAsync(string text) => await _stream.WriteAsync(Encoding.Latin1.GetBytes(text));

    /// <summary>Says that nothing more is sent; answers can still be read.</summary>
    public void EndSending() => _connection.Client.Shutdown(SocketShutdown.Send);

    /// <summary>Drops the connection by a reset (RFC 9293, section 3.5.2).</summary>
    public void Reset() => _connection.Client.Close(timeout: 0);

    /// <summary>Everything that comes until the service closes the connection.</summary>
    public async Task<string> ReadToEndAsync()
    {
        using CancellationTokenSource soon = new(TimeSpan.FromSeconds(10));
        using MemoryStream all = new();
        await _stream.CopyToAsync(all, soon.Token);
        return Encoding.UTF8.GetString(all.ToArray());
    }

    /// <summary>Reads until a text has come.</summary>
    public async Task<string> ReadUntilAsync(string text)
    {
        using CancellationTokenSource soon = new(TimeSpan.FromSeconds(10));
        StringBuilder read = new();
        var buffer = new byte[4096];
        while (!read.ToString().Contains(text, StringComparison.Ordinal))
        {
            var count = await _stream.ReadAsync(buffer, soon.Token);
            if (count == 0)
                throw new InvalidOperationException($"The connection ended before “{text}” came: {read}");
            read.Append(Encoding.UTF8.GetString(buffer, 0, count));
        }

        return read.ToString();
    }

    public void Dispose() => _connection.Dispose();
}
