using System.Reflection;
using SetupService.Domain.Fitment;
using SetupService.Tests.Shared;

namespace SetupService.Domain.Tests.Architecture;

/// <summary>Rooms use only rooms on lower floors, no folders use each other in a circle, and the domain knows nothing of the outside.</summary>
public sealed class FloorTests
{
    private const string Root = "SetupService.Domain.";

    private static readonly Assembly Domain = typeof(FitmentCheck).Assembly;

    private static readonly FolderGraph Graph = FolderGraph.Read(Domain.Location, Root);

    /// <summary>Lowest floor first. Rooms of one floor do not use each other.</summary>
    private static readonly string[][] Floors =
    [
        ["Answers", "Numerics"],
        ["Tyres", "Wheels"],
        ["Suspension"],
        ["Vehicles"],
        ["Fitment", "Geometry", "Handling"],
        ["Wear"],
        ["Planning"],
    ];

    public static TheoryData<string, string> Forbidden()
    {
        var pairs = new TheoryData<string, string>();
        for (var floor = 0; floor < Floors.Length; floor++)
        {
            foreach (var room in Floors[floor])
            {
                foreach (var other in Floors[floor..].SelectMany(rooms => rooms).Where(other => other != room)) pairs.Add(room, other);
            }
        }

        return pairs;
    }

    [Theory]
    [MemberData(nameof(Forbidden))]
    public void A_room_does_not_use_its_own_floor_or_one_above(string room, string other)
    {
        var users = Graph.Uses(room, other);

        Assert.True(users.Count == 0, $"{room} uses {other}: {string.Join(", ", users)}");
    }

    [Fact]
    public void No_folders_use_each_other_in_a_circle() => Assert.Empty(Graph.Circles());

    [Fact]
    public void Every_room_stands_on_a_floor()
    {
        var rooms = Domain.GetExportedTypes().Select(type => type.Namespace![Root.Length..].Split('.')[0]).Distinct();

        Assert.Empty(rooms.Except(Floors.SelectMany(rooms => rooms)));
    }

    // The rule itself must be able to fail: Fitment does use Tyres.
    [Fact]
    public void The_rule_sees_a_dependency_that_exists()
    {
        Assert.NotEmpty(Graph.Uses("Fitment", "Tyres"));
        Assert.NotEmpty(Graph.UsesOutside("System.Math"));
    }

    [Fact]
    public void The_domain_references_only_the_base_library()
    {
        string[] allowed = ["System.Runtime", "System.Runtime.InteropServices", "System.Runtime.Intrinsics", "System.Collections", "System.Linq", "System.Memory", "System.Numerics.Vectors", "System.Text.RegularExpressions", "System.Collections.Immutable", "System.Threading"];

        Assert.Empty(Domain.GetReferencedAssemblies().Select(name => name.Name!).Except(allowed));
    }

    [Theory]
    [InlineData("System.IO")]
    [InlineData("System.Net")]
    [InlineData("System.DateTime")]
    [InlineData("System.DateTimeOffset")]
    [InlineData("System.TimeProvider")]
    [InlineData("System.Random")]
    [InlineData("System.Environment")]
    [InlineData("System.Console")]
    [InlineData("System.Threading.Tasks")]
    public void The_domain_has_no_clock_no_chance_and_no_input_or_output(string outside) => Assert.Empty(Graph.UsesOutside(outside));
}
