using System.Diagnostics;
using System.Globalization;
using System.Net.Sockets;
using System.Text;

namespace SetupService.Benchmarks.Service;

/// <summary>
/// Sends a long body and reads the answer at the same time, as a caller of a batch must; keeps only the answer's end.
/// </summary>
internal static class StreamClient
{
    private const int TailBytes = 4096;

    /// <summary>The seconds it took, and the end of the answer.</summary>
    public static async Task<(double Seconds, string Tail)> PostAsync(Uri url, string path, string contentType, params byte[][] parts)
    {
        using Socket socket = new(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        await socket.ConnectAsync(url.Host, url.Port);
        var head = string.Create(
            CultureInfo.InvariantCulture,
            $"POST {path} HTTP/1.1\r\nHost: {url.Authority}\r\nContent-Type: {contentType}\r\nContent-Length: {parts.Sum(static part => (long)part.Length)}\r\nConnection: close\r\n\r\n");
        var watch = Stopwatch.StartNew();
        var answer = ReadAsync(socket);
        await socket.SendAsync(Encoding.ASCII.GetBytes(head));
        foreach (var part in parts)
            await SendAsync(socket, part);
        var tail = await answer;
        return (watch.Elapsed.TotalSeconds, tail);
    }

    private static async Task SendAsync(Socket socket, ReadOnlyMemory<byte> bytes)
    {
        while (!bytes.IsEmpty)
            bytes = bytes[await socket.SendAsync(bytes[..Math.Min(bytes.Length, 65_536)])..];
    }

    private static async Task<string> ReadAsync(Socket socket)
    {
        var buffer = new byte[65_536 + TailBytes];
        var kept = 0;
        while (true)
        {
            var read = await socket.ReceiveAsync(buffer.AsMemory(kept));
            if (read == 0)
                return Encoding.UTF8.GetString(buffer, 0, kept);
            kept += read;
            if (kept <= TailBytes)
                continue;
            buffer.AsSpan(kept - TailBytes, TailBytes).CopyTo(buffer);
            kept = TailBytes;
        }
    }
}
