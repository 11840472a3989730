using SetupService.Api.Host;

namespace SetupService.Api.Tests.Host;

/// <summary>When memory is given back.</summary>
public sealed class IdleCollectionTests : IDisposable
{
    private readonly IdleCollection _collection = new(TimeProvider.System);

    public void Dispose() => _collection.Dispose();

    [Fact]
    public void After_load_once_when_nothing_more_is_made()
    {
        Assert.False(_collection.IsDue(1 << 30));
        Assert.True(_collection.IsDue((1 << 30) + IdleCollection.IdleBytes - 1));
        Assert.False(_collection.IsDue((1 << 30) + IdleCollection.IdleBytes - 1));
    }

    [Fact]
    public void Not_while_work_goes_on()
    {
        for (long made = 0; made < 1 << 30; made += IdleCollection.IdleBytes)
            Assert.False(_collection.IsDue(made));
    }

    [Fact]
    public void Not_before_it_is_worth_while()
    {
        Assert.False(_collection.IsDue(IdleCollection.WorthBytes - 1));
        Assert.False(_collection.IsDue(IdleCollection.WorthBytes - 1));
        Assert.True(_collection.IsDue(IdleCollection.WorthBytes));
    }
}
