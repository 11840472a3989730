using System.Buffers;
using System.Text.Json;
using System.Text.Json.Serialization;
using BenchmarkDotNet.Attributes;
using SetupService.Api.Fitment;
using SetupService.Api.Host;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Answers;

namespace SetupService.Benchmarks.Fitment;

/// <summary>Where the time of one call goes: reading under the contract, evaluating with texts, writing; beside the framework's plain reading.</summary>
[MemoryDiagnoser]
public class CheckCallBenchmark : IDisposable
{
    private readonly byte[] body = File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "fitment-check.request.json"));
    private readonly ContractReader<CheckRequest> reader = ServiceContract.Instance.ReaderOf<CheckRequest>();
    private readonly ArrayBufferWriter<byte> buffer = new(65_536);
    private readonly Utf8JsonWriter writer;
    private readonly CheckRequest request;
    private readonly CheckAnswer answer;

    /// <summary>Reads and answers once, so that each part has its input.</summary>
    public CheckCallBenchmark()
    {
        writer = new Utf8JsonWriter(buffer, new JsonWriterOptions { SkipValidation = true });
        request = Read();
        answer = Answer();
    }

    /// <summary>Lets the writer go.</summary>
    [GlobalCleanup]
    public void Dispose()
    {
        writer.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <summary>Binds and checks the body in one pass.</summary>
    [Benchmark]
    public CheckRequest Read() => reader.TryRead(body, out CheckRequest? read) ? read : throw new InvalidOperationException("The example does not read.");

    /// <summary>Binds the body and checks nothing.</summary>
    [Benchmark]
    public CheckRequest? PlainRead() => JsonSerializer.Deserialize(body, PlainCheckContext.Default.CheckRequest);

    /// <summary>Maps to the domain, evaluates, and words the answer.</summary>
    [Benchmark]
    public CheckAnswer Answer() => CheckedFitting.TryEvaluate(request, out CheckedFitting? done)
        ? done.ToAnswer(UnitSystem.Metric)
        : throw new InvalidOperationException("The example does not evaluate.");

    /// <summary>Maps to the domain and evaluates.</summary>
    [Benchmark]
    public object? Evaluate() => CheckedFitting.TryEvaluate(request, out CheckedFitting? done) ? done : null;

    /// <summary>Writes the answer.</summary>
    [Benchmark]
    public int Write()
    {
        buffer.ResetWrittenCount();
        writer.Reset(buffer);
        JsonSerializer.Serialize(writer, answer, ServiceContract.Instance.TypeOf<CheckAnswer>());
        writer.Flush();
        return buffer.WrittenCount;
    }
}

/// <summary>The request with nothing switched on that the service switches on.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(CheckRequest))]
internal sealed partial class PlainCheckContext : JsonSerializerContext;
