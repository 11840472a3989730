using System.Buffers;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using Serilog.Core;
using Serilog.Events;

namespace SetupService.Api.Host.Watching;

/// <summary>
/// Writes the log as JSON, an object a line, to a stream: time, level where it is not information, template, properties by their names, exception. Lines are gathered for a
/// moment, because a write to the stream costs more than a line; what is graver than information goes out at once. Written by hand because a busy service has a line for
/// each request: each thread makes its lines by itself, threads meet only to put them behind each other, and while one of them writes the others go on, until so much is
/// gathered that they wait with it.
/// </summary>
internal sealed class JsonLines : ILogEventSink, IDisposable
{
    private const int GatheredBytes = 32_768;
    private const int MostGatheredBytes = 8 * GatheredBytes;

    private static readonly TimeSpan Longest = TimeSpan.FromMilliseconds(200);

    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, SkipValidation = true };

    [ThreadStatic]
    private static ArrayBufferWriter<byte>? _line;

    [ThreadStatic]
    private static Utf8JsonWriter? _writer;

    // Taken in this order where both are: sending, then gathering.
    private readonly Lock _sending = new();
    private readonly Lock _gathering = new();
    private readonly Stream _stream;
    private readonly Timer _timer;
    private ArrayBufferWriter<byte> _gathered = new(2 * GatheredBytes);
    private ArrayBufferWriter<byte> _spare = new(2 * GatheredBytes);
    private bool _isAwaited;
    private bool _isClosed;

    /// <summary>Writes to a stream and closes it in the end.</summary>
    public JsonLines(Stream stream)
    {
        _stream = stream;
        _timer = new Timer(static lines => ((JsonLines)lines!).Send(), this, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
    }

    public void Emit(LogEvent logEvent)
    {
        var line = ToLine(logEvent);
        int gatheredBytes;
        bool isFirst;
        lock (_gathering)
        {
            _gathered.Write(line);
            gatheredBytes = _gathered.WrittenCount;
            isFirst = !_isAwaited;
            _isAwaited = true;
        }

        if (logEvent.Level > LogEventLevel.Information || gatheredBytes >= MostGatheredBytes)
            Send();
        else if (gatheredBytes >= GatheredBytes && _sending.TryEnter())
            SendAndExit();
        else if (isFirst)
            _timer.Change(Longest, Timeout.InfiniteTimeSpan);
    }

    public void Dispose()
    {
        Send();
        lock (_sending)
        {
            if (_isClosed)
                return;
            _isClosed = true;
            _stream.Dispose();
        }

        _timer.Dispose();
    }

    private void Send()
    {
        _sending.Enter();
        SendAndExit();
    }

    private void SendAndExit()
    {
        try
        {
            if (_isClosed)
                return;
            lock (_gathering)
            {
                (_gathered, _spare) = (_spare, _gathered);
                _isAwaited = false;
            }

            _stream.Write(_spare.WrittenSpan);
            _stream.Flush();
        }
        catch (IOException)
        {
            // Where the log has no room, its lines are lost, and not the service, nor the memory to keep them.
        }
        finally
        {
            _spare.ResetWrittenCount();
            _sending.Exit();
        }
    }

    private static ReadOnlySpan<byte> ToLine(LogEvent logEvent)
    {
        var line = _line ??= new ArrayBufferWriter<byte>(1024);
        line.ResetWrittenCount();
        var writer = _writer ??= new Utf8JsonWriter(line, Options);
        writer.Reset(line);
        writer.WriteStartObject();
        writer.WriteString("time"u8, logEvent.Timestamp.UtcDateTime);
        if (logEvent.Level != LogEventLevel.Information)
            writer.WriteString("level"u8, logEvent.Level.ToString());
        writer.WriteString("template"u8, logEvent.MessageTemplate.Text);
        foreach ((var name, var value) in logEvent.Properties)
        {
            writer.WritePropertyName(name);
            Write(writer, value);
        }

        if (logEvent.Exception is { } exception)
            writer.WriteString("exception"u8, exception.ToString());
        writer.WriteEndObject();
        writer.Flush();
        line.Write("\n"u8);
        return line.WrittenSpan;
    }

    private static void Write(Utf8JsonWriter writer, LogEventPropertyValue value)
    {
        switch ((value as ScalarValue)?.Value)
        {
            case string text: writer.WriteStringValue(text); break;
            case int number: writer.WriteNumberValue(number); break;
            case long number: writer.WriteNumberValue(number); break;
            case double number when double.IsFinite(number): writer.WriteNumberValue(number); break;
            case bool flag: writer.WriteBooleanValue(flag); break;
            case null when value is ScalarValue: writer.WriteNullValue(); break;
            default: writer.WriteStringValue(value.ToString("l", CultureInfo.InvariantCulture)); break;
        }
    }
}
