using SetupService.Api.Geometry;
using SetupService.Api.Geometry.TravelSweeps;
using SetupService.Api.Host;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Tests.Geometry;

/// <summary>A sweep whose caller has gone stops, where positions are reached and where they are not.</summary>
public sealed class SweepCancellationTests
{
    [Theory]
    [InlineData(-50, 49.98, 0.02)]
    [InlineData(400, 490, 10)]
    public void A_sweep_whose_caller_has_gone_does_one_position(double fromMm, double toMm, double stepMm)
    {
        using CancellationTokenSource gone = new();
        gone.Cancel();
        var (sweep, corner) = Start(fromMm, toMm, stepMm);

        Assert.Throws<OperationCanceledException>(() => TravelSweepMapper.ToAnswer(sweep, corner, default, [], gone.Token, out _));

        Assert.Equal(sweep.Count - 1, Left(sweep));
    }

    [Fact]
    public void A_caller_who_stays_gets_every_row()
    {
        var (sweep, corner) = Start(-50, 49.98, 0.02);

        Assert.Equal(5000, TravelSweepMapper.ToAnswer(sweep, corner, default, [], CancellationToken.None, out _)!.Rows.Length);
    }

    private static long Left(TravelSweep sweep)
    {
        var left = 0L;
        while (sweep.TryNext(out _, out _))
            left++;
        return left;
    }

    private static (TravelSweep Sweep, Corner Corner) Start(double fromMm, double toMm, double stepMm)
    {
        var body = System.Text.Encoding.UTF8.GetBytes(GeometryRequests.Sweep(fromMm: fromMm, toMm: toMm, stepMm: stepMm).ToJsonString());
        Assert.True(ServiceContract.Instance.ReaderOf<TravelSweepRequest>().Read(body, out var request, out _));
        Assert.True(CornerMapper.Map(request).TryGet(out var corner, out _));
        return (TravelSweep.Start(corner.Suspension, corner.Setup, request.TravelMm.ToRange(), SweepRange.Only(0), new AxleInputs())!, corner);
    }
}
