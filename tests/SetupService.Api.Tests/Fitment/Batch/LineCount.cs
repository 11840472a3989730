using System.Diagnostics.Metrics;
using SetupService.Api.Http;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>Listens to the service's own meter.</summary>
internal sealed class LineCount : IDisposable
{
    private readonly MeterListener _listener = new();
    private long _lines;

    public LineCount()
    {
        _listener.InstrumentPublished = (instrument, listener) =>
        {
            if (instrument.Name == ServiceMeter.LinesName)
                listener.EnableMeasurementEvents(instrument);
        };
        _listener.SetMeasurementEventCallback<long>((_, lines, _, _) => Interlocked.Add(ref _lines, lines));
        _listener.Start();
    }

    /// <summary>The count once it has stood still for half a second; fails where it does not within ten.</summary>
    public async Task<long> Settled()
    {
        for (var turn = 0; turn < 20; turn++)
        {
            var before = Interlocked.Read(ref _lines);
            await Task.Delay(500);
            if (before == Interlocked.Read(ref _lines))
                return before;
        }

        throw new InvalidOperationException("Lines are still being answered ten seconds after the client hung up.");
    }

    public void Dispose() => _listener.Dispose();
}
