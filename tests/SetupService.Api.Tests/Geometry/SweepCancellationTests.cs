using SetupService.Api.Geometry.Sweeps;
using SetupService.Api.Host;
using SetupService.Api.Vehicles;
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
        var sweep = Start(fromMm, toMm, stepMm);

        Assert.Throws<OperationCanceledException>(() => TravelSweepAnswers.Of(sweep, "travel-sweep", [], gone.Token, out _));

        Assert.Equal(sweep.Count - 1, Left(sweep));
    }

    [Fact]
    public void A_caller_who_stays_gets_every_row()
    {
        var sweep = Start(-50, 49.98, 0.02);

        Assert.Equal(5000, TravelSweepAnswers.Of(sweep, "travel-sweep", [], CancellationToken.None, out _)!.Rows.Length);
    }

    private static long Left(TravelSweep sweep)
    {
        var left = 0L;
        while (sweep.TryNext(out _, out _))
            left++;
        return left;
    }

    private static TravelSweep Start(double fromMm, double toMm, double stepMm)
    {
        var body = System.Text.Encoding.UTF8.GetBytes(GeometryRequests.Sweep(fromMm: fromMm, toMm: toMm, stepMm: stepMm).ToJsonString());
        Assert.True(ServiceContract.Instance.ReaderOf<TravelSweepRequest>().Read(body, out var request, out _));
        var suspension = SuspensionMapper.Model(request.Suspension, request.Alignment);
        return TravelSweep.Start(suspension, SweepInputs.Setup(request, suspension), request.TravelMm.ToRange(), SweepRange.Only(0), new AxleInputs())!;
    }
}
