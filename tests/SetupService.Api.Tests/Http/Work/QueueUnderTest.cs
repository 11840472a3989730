using SetupService.Api.Http.Work;

namespace SetupService.Api.Tests.Http.Work;

/// <summary>A queue whose length a test says, and whose probes run when it says so.</summary>
internal sealed class QueueUnderTest
{
    private IThreadPoolWorkItem? _probe;

    public long Length { get; set; }

    public int Sent { get; private set; }

    public OverloadDetector Watch(WorkSettings settings, TimeProvider clock) => new(settings, clock, Keep, () => Length);

    public void RunProbe()
    {
        var probe = _probe ?? throw new InvalidOperationException("No probe waits.");
        _probe = null;
        probe.Execute();
    }

    private void Keep(IThreadPoolWorkItem probe)
    {
        _probe = probe;
        Sent++;
    }
}
