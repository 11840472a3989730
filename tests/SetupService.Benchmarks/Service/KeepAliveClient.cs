using System.Net.Sockets;
using System.Text;

namespace SetupService.Benchmarks.Service;

/// <summary>
/// Sends one request again and again over a connection that stays open and reads the answers by their length: little
/// enough work that the server, not the client, is measured.
/// </summary>
internal sealed class KeepAliveClient : IDisposable
{
    private readonly Socket _socket = new(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
    private readonly byte[] _request;
    private readonly byte[] _buffer = new byte[128 * 1024];

    public KeepAliveClient(Uri url, string path, byte[] body)
    {
        var head = $"POST {path} HTTP/1.1\r\nHost: {url.Authority}\r\nContent-Type: application/json\r\nContent-Length: {body.Length}\r\n\r\n";
        _request = [.. Encoding.ASCII.GetBytes(head), .. body];
        _socket.Connect(url.Host, url.Port);
    }

    /// <summary>Sends requests until the time is up; the number of them answered with 200.</summary>
    public async Task<long> RunAsync(CancellationToken timeIsUp)
    {
        long answered = 0;
        while (!timeIsUp.IsCancellationRequested)
        {
            await _socket.SendAsync(_request, CancellationToken.None).ConfigureAwait(false);
            var have = 0;
            var need = int.MaxValue;
            while (have < need)
            {
                var read = await _socket.ReceiveAsync(_buffer.AsMemory(have), CancellationToken.None).ConfigureAwait(false);
                if (read == 0)
                    throw new IOException("The server closed the connection.");
                have += read;
                if (need == int.MaxValue)
                    need = Length(_buffer.AsSpan(0, have));
            }

            answered++;
        }

        return answered;
    }

    public void Dispose() => _socket.Dispose();

    private static int Length(ReadOnlySpan<byte> answer)
    {
        var end = answer.IndexOf("\r\n\r\n"u8);
        if (end < 0)
            return int.MaxValue;
        var head = Encoding.ASCII.GetString(answer[..end]);
        if (!head.StartsWith("HTTP/1.1 200", StringComparison.Ordinal))
            throw new InvalidOperationException(Encoding.UTF8.GetString(answer));
        if (head.Contains("chunked", StringComparison.OrdinalIgnoreCase))
            return answer.EndsWith("0\r\n\r\n"u8) ? answer.Length : int.MaxValue;
        const string name = "content-length:";
        var at = head.IndexOf(name, StringComparison.OrdinalIgnoreCase) + name.Length;
        var stop = head.IndexOf('\r', at);
        return end + 4 + int.Parse(stop < 0 ? head[at..] : head[at..stop], System.Globalization.CultureInfo.InvariantCulture);
    }
}
