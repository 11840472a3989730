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
/// each request, and the line would otherwise cost it more than a twentieth of its processor.
/// </summary>
internal sealed class JsonLines : ILogEventSink, IDisposable
{
    private const int GatheredBytes = 32_768;

    private static readonly TimeSpan Longest = TimeSpan.FromMilliseconds(200);

    private readonly Lock _lock = new();
    private readonly ArrayBufferWriter<byte> _gathered = new(2 * GatheredBytes);
    private readonly Utf8JsonWriter _writer;
    private readonly Stream _stream;
    private readonly Timer _timer;
    private bool _isGathering;
    private bool _isClosed;

    /// <summary>Writes to a stream and closes it in the end.</summary>
    public JsonLines(Stream stream)
    {
        _stream = stream;
        _writer = new Utf8JsonWriter(_gathered, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, SkipValidation = true });
        _timer = new Timer(static lines => ((JsonLines)lines!).SendGathered(), this, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
    }

    public void Emit(LogEvent logEvent)
    {
        lock (_lock)
        {
            if (_isClosed)
                return;
            Write(logEvent);
            if (logEvent.Level > LogEventLevel.Information || _gathered.WrittenCount >= GatheredBytes)
                Send();
            else if (!_isGathering)
                _isGathering = _timer.Change(Longest, Timeout.InfiniteTimeSpan);
        }
    }

    public void Dispose()
    {
        lock (_lock)
        {
            if (_isClosed)
                return;
            _isClosed = true;
            Send();
            _writer.Dispose();
            _stream.Dispose();
        }

        _timer.Dispose();
    }

    private void Write(LogEvent logEvent)
    {
        _writer.Reset(_gathered);
        _writer.WriteStartObject();
        _writer.WriteString("time"u8, logEvent.Timestamp.UtcDateTime);
        if (logEvent.Level != LogEventLevel.Information)
            _writer.WriteString("level"u8, logEvent.Level.ToString());
        _writer.WriteString("template"u8, logEvent.MessageTemplate.Text);
        foreach ((var name, var value) in logEvent.Properties)
        {
            _writer.WritePropertyName(name);
            Write(value);
        }

        if (logEvent.Exception is { } exception)
            _writer.WriteString("exception"u8, exception.ToString());
        _writer.WriteEndObject();
        _writer.Flush();
        _gathered.Write("\n"u8);
    }

    private void Write(LogEventPropertyValue value)
    {
        switch ((value as ScalarValue)?.Value)
        {
            case string text: _writer.WriteStringValue(text); break;
            case int number: _writer.WriteNumberValue(number); break;
            case long number: _writer.WriteNumberValue(number); break;
            case double number when double.IsFinite(number): _writer.WriteNumberValue(number); break;
            case bool flag: _writer.WriteBooleanValue(flag); break;
            case null when value is ScalarValue: _writer.WriteNullValue(); break;
            default: _writer.WriteStringValue(value.ToString("l", CultureInfo.InvariantCulture)); break;
        }
    }

    private void SendGathered()
    {
        lock (_lock)
        {
            _isGathering = false;
            if (!_isClosed)
                Send();
        }
    }

    private void Send()
    {
        _stream.Write(_gathered.WrittenSpan);
        _stream.Flush();
        _gathered.ResetWrittenCount();
    }
}
