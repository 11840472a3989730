using System.Buffers;
using System.Reflection;
using Microsoft.AspNetCore.Http.Metadata;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Http.Work;

namespace SetupService.Api.Http;

/// <summary>
/// The body of a request, bound and checked against the contract, or the problem with it. A handler takes it as a
/// parameter, returns <see cref="Problem"/> where there is one, and otherwise works with <see cref="Value"/>.
/// </summary>
/// <typeparam name="T">The request document.</typeparam>
public sealed class Body<T> : IBindableFromHttpContext<Body<T>>, IEndpointParameterMetadataProvider, IRefusable
    where T : class
{
    private readonly HttpContext _context;
    private readonly ContractReader<T> _reader;

    private Body(HttpContext context, ContractReader<T> reader)
    {
        _context = context;
        _reader = reader;
    }

    /// <summary>The document sent; null where <see cref="Problem"/> is not.</summary>
    public T? Value { get; private set; }

    /// <summary>Why the body is refused; null where it is not.</summary>
    public Problem? Problem { get; private set; }

    /// <summary>The 400 for a body that the mapping to domain values refuses: every fault of the body, with those the mapping found.</summary>
    public Problem Refuse(Refusal found)
    {
        if (!_context.Request.BodyReader.TryRead(out var read))
            throw new InvalidOperationException("The body can no longer be read.");

        byte[]? rented = null;
        var refusal = _reader.Refuse(Contiguous(read.Buffer, ref rented), found);
        Return(rented);
        _context.Request.BodyReader.AdvanceTo(read.Buffer.Start, read.Buffer.End);
        return Problem.Invalid(refusal);
    }

    /// <inheritdoc />
    public static async ValueTask<Body<T>?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        ArgumentNullException.ThrowIfNull(context);
        Body<T> body = new(context, context.GetEndpoint()!.Metadata.GetRequiredMetadata<ContractReader<T>>());
        var caps = CapSettings.From(context);
        body.Problem = BodyHeaders.Find(context.Request, caps);
        if (body.Problem is not null)
            return body;

        var pipe = context.Request.BodyReader;
        try
        {
            while (true)
            {
                // Not cancelled by RequestAborted: a caller who goes away ends the read by itself, and a cancelled one hides how.
                var read = await pipe.ReadAsync(CancellationToken.None).ConfigureAwait(false);
                var isTooLarge = read.Buffer.Length > caps.BodyBytes;
                try
                {
                    if (isTooLarge)
                        body.Problem = BodyHeaders.TooLarge(caps);
                    else if (read.IsCompleted)
                        body.Bind(read.Buffer);
                }
                finally
                {
                    // Nothing is consumed: Refuse may want to read the same bytes again.
                    pipe.AdvanceTo(read.Buffer.Start, read.Buffer.End);
                }

                if (isTooLarge || read.IsCompleted)
                    return body;
            }
        }
        catch (IOException broken) when (!HangUps.Explain(broken, context))
        {
            body.Problem = BrokenBody.Refusal(broken, context);
            return body;
        }
    }

    /// <inheritdoc />
    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.Metadata.Add(builder.ApplicationServices.GetRequiredService<JsonContract>().ReaderOf<T>());
        builder.Metadata.Add(new AcceptsMetadata([ProducedMedia.Json.Type], typeof(T)));
        builder.AddProblems(ProblemTypes.InvalidRequest, ProblemTypes.TooLarge, ProblemTypes.UnsupportedMediaType);
    }

    private void Bind(in ReadOnlySequence<byte> buffer)
    {
        byte[]? rented = null;
        if (!_reader.Read(Contiguous(buffer, ref rented), out var value, out var refusal))
            Caller.From(_context).Quota?.ChargeRefused(buffer.Length);
        Return(rented);
        if (Refusal.From(QueryFaults.Find(_context)) is { } ofQuery)
            Problem = Problem.Invalid(ofQuery.And(refusal));
        else if (refusal is not null)
            Problem = Problem.Invalid(refusal);
        else
            Value = value;
    }

    private static ReadOnlySpan<byte> Contiguous(in ReadOnlySequence<byte> buffer, ref byte[]? rented)
    {
        if (buffer.IsSingleSegment)
            return buffer.FirstSpan;

        var length = (int)buffer.Length;
        rented = ArrayPool<byte>.Shared.Rent(length);
        buffer.CopyTo(rented);
        return rented.AsSpan(0, length);
    }

    private static void Return(byte[]? rented)
    {
        if (rented is not null)
            ArrayPool<byte>.Shared.Return(rented);
    }
}
