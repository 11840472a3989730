using System.Reflection;
using SetupService.Api.Host;
using SetupService.Tests.Shared;

namespace SetupService.Api.Tests.Architecture;

/// <summary>The rooms of the service use each other one way, as the domain's do.</summary>
public sealed class RoomTests
{
    private const string Root = "SetupService.Api.";

    private static readonly Assembly Api = typeof(SetupServiceHost).Assembly;

    private static readonly FolderGraph Graph = FolderGraph.Read(Api.Location, Root);

    /// <summary>A room, and the rooms it may use; the plumbing and the pictures use no subject, nobody uses the host.</summary>
    private static readonly Dictionary<string, string[]> MayUse = new()
    {
        ["Http"] = [],
        ["Wheels"] = ["Http"],
        ["Tyres"] = ["Http"],
        ["Drawings"] = ["Http"],
        ["Vehicles"] = ["Http", "Wheels", "Tyres"],
        ["Fitment"] = ["Http", "Wheels", "Tyres", "Vehicles", "Drawings"],
        ["Geometry"] = ["Http", "Wheels", "Tyres", "Vehicles", "Drawings"],
        ["Handling"] = ["Http", "Wheels", "Tyres", "Vehicles", "Drawings", "Geometry"],
        ["Wear"] = ["Http", "Wheels", "Tyres", "Vehicles", "Drawings", "Geometry", "Handling"],
        ["Plans"] = ["Http", "Wheels", "Tyres", "Vehicles", "Drawings", "Fitment", "Geometry", "Handling", "Wear"],
        ["Host"] = ["Http", "Wheels", "Tyres", "Vehicles", "Drawings", "Fitment", "Geometry", "Handling", "Wear", "Plans"],
    };

    public static TheoryData<string, string> Forbidden()
    {
        TheoryData<string, string> pairs = [];
        foreach ((var room, var allowed) in MayUse)
        {
            foreach (var other in MayUse.Keys.Where(other => other != room && !allowed.Contains(other)))
                pairs.Add(room, other);
        }

        return pairs;
    }

    [Theory]
    [MemberData(nameof(Forbidden))]
    public void A_room_does_not_use_one_it_may_not(string room, string other)
    {
        var users = Graph.Uses(room, other);

        Assert.True(users.Count == 0, $"{room} uses {other}: {string.Join(", ", users)}");
    }

    [Fact]
    public void No_folders_use_each_other_in_a_circle() => Assert.Empty(Graph.Circles());

    [Fact]
    public void Every_room_of_the_service_has_its_place_here()
    {
        var rooms = Api.GetTypes()
            .Where(type => type.Namespace?.StartsWith(Root, StringComparison.Ordinal) == true)
            .Select(type => type.Namespace![Root.Length..].Split('.')[0]).Distinct();

        Assert.Equal(MayUse.Keys.Order(StringComparer.Ordinal), rooms.Order(StringComparer.Ordinal));
    }

    // The rule must be able to fail: these uses exist.
    [Theory]
    [InlineData("Fitment", "Tyres")]
    [InlineData("Vehicles", "Wheels")]
    [InlineData("Host", "Fitment")]
    public void The_rule_sees_a_use_that_exists(string room, string other) => Assert.NotEmpty(Graph.Uses(room, other));

    // Values from callers are never fetched from elsewhere. The command that asks the service beside it whether it is ready is no part of the service.
    [Theory]
    [InlineData("System.Net.Http.HttpClient", "HealthCommand")]
    [InlineData("System.Net.Sockets", null)]
    public void The_service_calls_nobody(string outside, string? command) => Assert.Equal(command is null ? [] : [command], Graph.UsersOf(outside));

    [Fact]
    public void What_is_outside_is_seen() => Assert.NotEmpty(Graph.UsesOutside("System.Text.Json"));
}
