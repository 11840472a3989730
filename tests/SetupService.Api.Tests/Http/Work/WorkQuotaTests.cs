using Microsoft.Extensions.Time.Testing;
using SetupService.Api.Http.Work;

namespace SetupService.Api.Tests.Http.Work;

/// <summary>What a client may ask for, at its edges.</summary>
public sealed class WorkQuotaTests
{
    private readonly FakeTimeProvider _clock = new();
    private readonly WorkQuota _quota;

    public WorkQuotaTests() => _quota = new(
        new QuotaSettings { BurstUnits = 10, BurstSeconds = 5, SustainedUnits = 100, SustainedSeconds = 1000, StepsPerUnit = 100, LinesPerUnit = 20, PairsPerUnit = 1000 }, _clock);

    [Fact]
    public void The_policy_names_both_limits_in_the_structured_form() =>
        Assert.Equal("\"burst\";q=10;w=5, \"sustained\";q=100;w=1000", _quota.Policy);

    [Fact]
    public void The_last_unit_is_given_and_the_next_request_is_told_when_to_come()
    {
        for (var i = 9; i >= 0; i--)
            Assert.Equal(i, _quota.TryBegin() is { IsAllowed: true, Name: "burst" } state ? state.UnitsLeft : -1);

        // Two units a second come back: one after half a second, told in whole seconds.
        Assert.Equal(new QuotaState(false, "burst", 0, 1), _quota.TryBegin());
        _clock.Advance(TimeSpan.FromSeconds(0.49));
        Assert.False(_quota.TryBegin().IsAllowed);
        _clock.Advance(TimeSpan.FromSeconds(0.01));
        Assert.True(_quota.TryBegin().IsAllowed);
        Assert.False(_quota.TryBegin().IsAllowed);
    }

    [Fact]
    public void It_fills_to_its_size_and_no_further()
    {
        Assert.True(_quota.IsFull);
        Assert.True(_quota.TryBegin().IsAllowed);
        Assert.False(_quota.IsFull);
        _clock.Advance(TimeSpan.FromHours(1));
        Assert.True(_quota.IsFull);
        Assert.Equal(9, _quota.TryBegin().UnitsLeft);
    }

    [Fact]
    public void Who_asks_steadily_meets_the_longer_limit()
    {
        var allowed = 0;
        for (var second = 0; second < 1000; second++)
        {
            allowed += _quota.TryBegin().IsAllowed ? 1 : 0;
            _clock.Advance(TimeSpan.FromSeconds(1));
        }

        // Its size, and what has come back in the same time.
        Assert.InRange(allowed, 198, 201);
        Assert.Equal("sustained", _quota.TryBegin().Name);
    }

    [Fact]
    public void Work_may_leave_a_debt_that_the_next_request_waits_for()
    {
        _quota.ChargeSteps(1000);
        _quota.ChargeLines(40);
        Assert.Equal(TimeSpan.FromSeconds(1), _quota.UntilPaid());
        Assert.Equal(new QuotaState(false, "burst", 0, 2), _quota.TryBegin());
        _quota.ChargePairs(1000);
        Assert.Equal(TimeSpan.FromSeconds(1.5), _quota.UntilPaid());

        _clock.Advance(TimeSpan.FromSeconds(1.5));

        Assert.Equal(TimeSpan.Zero, _quota.UntilPaid());
        Assert.False(_quota.TryBegin().IsAllowed);
        _clock.Advance(TimeSpan.FromSeconds(0.5));
        Assert.True(_quota.TryBegin().IsAllowed);
    }
}
