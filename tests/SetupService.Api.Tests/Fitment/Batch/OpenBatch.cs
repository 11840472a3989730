using System.Globalization;
using System.IO.Compression;
using System.Net.Sockets;
using System.Text;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>
/// A batch over a bare connection (HTTP/1.1, both bodies chunked, RFC 9112, section 7.1), which can read answers while it still
/// sends; the framework's client reads none before its request is sent whole.
/// </summary>
internal sealed class OpenBatch : IDisposable
{
    private static readonly TimeSpan Soon = TimeSpan.FromSeconds(10);

    private readonly TcpClient _connection;
    private readonly Stream _stream;
    private readonly MemoryStream _text = new();
    private Stream? _body;
    private bool _isWhole;

    private OpenBatch(TcpClient connection)
    {
        _connection = connection;
        _stream = new BufferedStream(connection.GetStream(), 65_536);
    }

    /// <summary>The status line and headers, once a line was read.</summary>
    public string Head { get; private set; } = "";

    public static async Task<OpenBatch> StartAsync(HttpClient client, string mediaType = BatchCalls.Ndjson, string path = Calls.Batch, string? acceptEncoding = null, string headers = "")
    {
        TcpClient connection = new() { NoDelay = true };
        await connection.ConnectAsync(client.BaseAddress!.Host, client.BaseAddress.Port);
        OpenBatch batch = new(connection);
        await batch.WriteAsync($"POST {path} HTTP/1.1\r\nHost: test\r\nContent-Type: {mediaType}\r\nTransfer-Encoding: chunked\r\n{(acceptEncoding is null ? "" : $"Accept-Encoding: {acceptEncoding}\r\n")}{headers}\r\n");
        return batch;
    }

    /// <summary>Sends a piece of the body.</summary>
    public Task SendAsync(string piece) =>
        WriteAsync(string.Create(CultureInfo.InvariantCulture, $"{Encoding.UTF8.GetByteCount(piece):x}\r\n{piece}\r\n"));

    public Task EndAsync() => WriteAsync("0\r\n\r\n");

    /// <summary>The next line of the answer without its end, or null after the last; fails where none comes soon.</summary>
    public Task<string?> ReadLineAsync() => TakeLineAsync().WaitAsync(Soon);

    public async Task<string> ReadToEndAsync()
    {
        StringBuilder text = new();
        while (await ReadLineAsync() is { } line)
            text.Append(line).Append('\n');
        return text.ToString();
    }

    /// <summary>Goes away without a word.</summary>
    public void HangUp() => _connection.Client.Close(timeout: 0);

    public void Dispose() => _connection.Dispose();

    /// <summary>The status line and headers; fails where none come soon.</summary>
    public async Task<string> ReadHeadAsync()
    {
        _body ??= await OpenBodyAsync().WaitAsync(Soon);
        return Head;
    }

    private async Task WriteAsync(string text)
    {
        // Past the buffer, which serves reading alone.
        await _connection.GetStream().WriteAsync(Encoding.UTF8.GetBytes(text));
    }

    private async Task<string?> TakeLineAsync()
    {
        while (true)
        {
            var bytes = _text.GetBuffer();
            var from = (int)_text.Position;
            var end = Array.IndexOf(bytes, (byte)'\n', from, (int)_text.Length - from);
            if (end >= 0)
            {
                _text.Position = end + 1;
                return Encoding.UTF8.GetString(bytes, from, end - from).TrimEnd('\r');
            }

            if (_isWhole)
                return null;
            await ReadMoreAsync();
        }
    }

    private async Task ReadMoreAsync()
    {
        _body ??= await OpenBodyAsync();
        var piece = new byte[65_536];
        var count = await _body.ReadAsync(piece);
        var rest = _text.ToArray()[(int)_text.Position..];
        _text.SetLength(0);
        _text.Write(rest);
        _text.Write(piece, 0, count);
        _text.Position = 0;
        _isWhole = count == 0;
    }

    private async Task<Stream> OpenBodyAsync()
    {
        StringBuilder head = new();
        for (var line = await HeaderLineAsync(); line.Length > 0; line = await HeaderLineAsync())
            head.Append(line).Append('\n');
        Head = head.ToString();
        if (!Head.Contains("Transfer-Encoding: chunked", StringComparison.OrdinalIgnoreCase))
            throw new InvalidOperationException("No stream came: " + Head);
        Chunks chunks = new(this);
        return Head.Contains("Content-Encoding: br", StringComparison.OrdinalIgnoreCase) ? new BrotliStream(chunks, CompressionMode.Decompress)
            : Head.Contains("Content-Encoding: gzip", StringComparison.OrdinalIgnoreCase) ? new GZipStream(chunks, CompressionMode.Decompress)
            : chunks;
    }

    private async Task<string> HeaderLineAsync()
    {
        StringBuilder line = new();
        var one = new byte[1];
        while (one[0] != '\n')
        {
            await _stream.ReadExactlyAsync(one);
            line.Append((char)one[0]);
        }

        return line.ToString().TrimEnd('\r', '\n');
    }

    /// <summary>The bytes of the chunks as one stream; a read waits for no more than one chunk.</summary>
    private sealed class Chunks(OpenBatch batch) : Stream
    {
        private int _left;
        private bool _isOver;

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

        public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
        {
            if (_isOver || buffer.Length == 0)
                return 0;
            if (_left == 0)
            {
                _left = int.Parse(await batch.HeaderLineAsync(), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
                if (_left == 0)
                {
                    _isOver = true;
                    await batch.HeaderLineAsync();
                    return 0;
                }
            }

            var count = await batch._stream.ReadAsync(buffer[..Math.Min(buffer.Length, _left)], cancellationToken);
            _left -= count;
            if (_left == 0)
                await batch.HeaderLineAsync();
            return count;
        }

        public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        public override void Flush() => throw new NotSupportedException();

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
