namespace SetupService.Tests.Shared;

/// <summary>
/// The assertions of xunit, of which <c>All</c> does not pass over nothing: what must hold of every item must have an item to hold of. Where none
/// may be there, a loop says so.
/// </summary>
public class CheckedAssert : Xunit.Assert
{
    protected CheckedAssert()
    {
    }

    /// <summary>Holds of every item, and there is one at least.</summary>
    public static new void All<T>(IEnumerable<T> collection, Action<T> action)
    {
        var items = collection.ToList();
        NotEmpty(items);
        Xunit.Assert.All(items, action);
    }

    /// <summary>Holds of every item and its place, and there is one at least.</summary>
    public static new void All<T>(IEnumerable<T> collection, Action<T, int> action)
    {
        var items = collection.ToList();
        NotEmpty(items);
        Xunit.Assert.All(items, action);
    }
}
