using System.Buffers;
using System.Text.Json;
using System.Text.Json.Serialization;
using BenchmarkDotNet.Attributes;
using SetupService.Api.Fitment.Check;
using SetupService.Api.Host;
using SetupService.Api.Http.Documents;
using SetupService.Domain.Answers;

namespace SetupService.Benchmarks.Fitment;

/// <summary>Where the time of one call goes: reading under the contract, evaluating with texts, writing; beside the framework's plain reading.</summary>
[MemoryDiagnoser]
public class CheckCallBenchmark : IDisposable
{
    private readonly byte[] _body = File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "fitment-check.request.json"));
    private readonly ContractReader<CheckRequest> _reader = ServiceContract.Instance.ReaderOf<CheckRequest>();
    private readonly ArrayBufferWriter<byte> _buffer = new(65_536);
    private readonly Utf8JsonWriter _writer;
    private readonly CheckRequest _request;
    private readonly CheckAnswer _answer;

    /// <summary>Reads and answers once, so that each part has its input.</summary>
    public CheckCallBenchmark()
    {
        _writer = new Utf8JsonWriter(_buffer, new JsonWriterOptions { SkipValidation = true });
        _request = Read();
        _answer = Answer();
    }

    /// <summary>Lets the writer go.</summary>
    [GlobalCleanup]
    public void Dispose()
    {
        _writer.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <summary>Binds and checks the body in one pass.</summary>
    [Benchmark]
    public CheckRequest Read() => _reader.TryRead(_body, out var read) ? read : throw new InvalidOperationException("The example does not read.");

    /// <summary>Binds the body and checks nothing.</summary>
    [Benchmark]
    public CheckRequest? PlainRead() => JsonSerializer.Deserialize(_body, PlainCheckContext.Default.CheckRequest);

    /// <summary>Maps to the domain, evaluates, and words the answer.</summary>
    [Benchmark]
    public CheckAnswer Answer() => CheckedFitting.Evaluate(_request).TryGet(out var done, out _)
        ? done.ToAnswer(UnitSystem.Metric, CheckDetail.Full)
        : throw new InvalidOperationException("The example does not evaluate.");

    /// <summary>Maps to the domain and evaluates.</summary>
    [Benchmark]
    public object? Evaluate() => CheckedFitting.Evaluate(_request).TryGet(out var done, out _) ? done : null;

    /// <summary>Writes the answer.</summary>
    [Benchmark]
    public int Write()
    {
        _buffer.ResetWrittenCount();
        _writer.Reset(_buffer);
        JsonSerializer.Serialize(_writer, _answer, ServiceContract.Instance.TypeOf<CheckAnswer>());
        _writer.Flush();
        return _buffer.WrittenCount;
    }
}

/// <summary>The request with nothing switched on that the service switches on.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, UseStringEnumConverter = true)]
[JsonSerializable(typeof(CheckRequest))]
internal sealed partial class PlainCheckContext : JsonSerializerContext;
