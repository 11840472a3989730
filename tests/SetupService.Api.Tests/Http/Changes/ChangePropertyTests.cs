using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;
using SetupService.Api.Tests.Vehicles;
using SetupService.Api.Vehicles;
using static SetupService.Api.Tests.Http.Changes.ChangeReading;

namespace SetupService.Api.Tests.Http.Changes;

/// <summary>What holds of every change, on generated cars and changes.</summary>
public sealed class ChangePropertyTests
{
    // Without rules: those are beyond what a merge keeps.
    private static readonly ContractReader<ChangeRequest> Bare = new JsonContract(ChangeJsonContext.OfService, []).ReaderOf<ChangeRequest>();
    private static readonly ContractSchema Cars = new SchemaBuilder(ChangeJsonContext.OfService.Options).Build(typeof(VehicleDocument));
    private static readonly ContractSchema Requests = new SchemaBuilder(ChangeJsonContext.OfService.Options).Build(typeof(ChangeRequest));

    [Fact]
    public void A_change_that_restates_the_car_gives_the_car() =>
        Gen.Int.Sample(
            seed =>
            {
                var car = new ShapedBody(seed, 0).Write(Cars);
                var request = Bound(car, car);
                return Text(Made(request.Vehicle, request.Change!)) == Text(request.Vehicle);
            },
            iter: 300);

    // The merged text read as any body is, and the document merged as it is bound.
    [Fact]
    public void A_change_is_made_to_a_document_as_it_is_to_its_text()
    {
        var (made, refused) = (0, 0);
        Gen.Int.Sample(
            seed =>
            {
                var body = $$"""{ "vehicle": {{new ShapedBody(seed, 0).Write(Cars)}}, "change": {{new ShapedBody(seed + 1, 0).Write(ChangeContract.ChangeSchemaOf<VehicleDocument>())}} }""";
                var request = Bound(body);
                var text = JsonMerge.Apply(ChangeContract.ChangeSchemaOf<VehicleDocument>(), JsonElement.Parse(Text(request.Vehicle)), request.Change!.Members);
                var wanted = ChangeContract.ReaderOf<VehicleDocument>().TryRead(text.Span, out var read) ? Text(read) : null;
                Interlocked.Increment(ref wanted is null ? ref refused : ref made);
                return wanted == (ChangeContract.Changing(request.Vehicle, "/vehicle").With(request.Change!, "/change").Read().TryGet(out var changed, out _) ? Text(changed) : null);
            },
            iter: 500);
        Assert.True(made > 50 && refused > 50, $"{made} made, {refused} refused.");
    }

    [Fact]
    public void What_a_change_does_not_name_is_shared_and_the_document_before_stays_as_it_was()
    {
        var request = Bound(DemoCar.Car, """{ "front": { "spring": { "rateNPerMm": 41 } } }""");
        var before = Text(request.Vehicle);

        var made = Made(request.Vehicle, request.Change!);

        Assert.Equal(41, made.Front!.Spring!.RateNPerMm);
        Assert.Same(request.Vehicle.Front!.Suspension, made.Front.Suspension);
        Assert.Same(request.Vehicle.Rear, made.Rear);
        Assert.Equal(before, Text(request.Vehicle));
    }

    [Fact]
    public void A_change_made_twice_is_made_once() =>
        Gen.Int.Sample(
            seed =>
            {
                var request = Bound(DemoCar.Car, ChangeOf(seed).ToJsonString());
                return Text(Made(request.Vehicle, request.Change!, request.Change!)) == Text(Made(request.Vehicle, request.Change!));
            },
            iter: 300);

    [Fact]
    public void Changes_to_different_members_commute_and_together_are_the_one_change()
    {
        var told = 0;
        Gen.Int.Sample(
            seed =>
            {
                var whole = ChangeOf(seed);
                var one = (JsonObject)whole.DeepClone();
                var other = (JsonObject)whole.DeepClone();
                Part(one, other, new Random(seed));
                var (first, second) = (Bound(DemoCar.Car, one.ToJsonString()), Bound(DemoCar.Car, other.ToJsonString()));
                var merged = Text(Made(first.Vehicle, first.Change!, second.Change!));
                if (merged != Text(first.Vehicle))
                    Interlocked.Increment(ref told);
                return merged == Text(Made(first.Vehicle, second.Change!, first.Change!))
                    && merged == Text(Made(first.Vehicle, Bound(DemoCar.Car, whole.ToJsonString()).Change!));
            },
            iter: 300);
        Assert.True(told > 100, $"Only {told} changes change anything.");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.003)]
    [InlineData(0.05)]
    public void The_two_readers_agree_on_bodies_with_changes(double faultShare) =>
        Gen.Int.Sample(
            seed =>
            {
                var body = Encoding.UTF8.GetBytes(new ShapedBody(seed, faultShare).Write(Requests));
                var isTaken = Bare.TryRead(body, out _);
                var isRead = Bare.Read(body, out var value, out var faults);
                return isRead == (value is not null) && (!isTaken || Bare.Faults(body).Count == 0) && (faultShare > 0 || isRead) && isRead == (faults is null);
            },
            iter: 500);

    [Fact]
    public void A_refused_change_always_has_a_fault_that_can_be_told() =>
        Gen.Int.Sample(
            seed =>
            {
                var body = $$"""{ "vehicle": {{DemoCar.Car}}, "change": {{new ShapedBody(seed, 0).Write(ChangeContract.ChangeSchemaOf<VehicleDocument>())}} }""";
                var request = Bound(body);
                return ChangeContract.Changing(request.Vehicle, "/vehicle").With(request.Change!, "/change").Read().TryGet(out _, out _) || Faults(body).Count > 0;
            },
            iter: 500);

    /// <summary>A car's members as a change, with its suspensions taken out: another kind replaces more than it names.</summary>
    private static JsonObject ChangeOf(int seed)
    {
        var change = (JsonObject)JsonNode.Parse(new ShapedBody(seed, 0).Write(Cars))!;
        foreach (var axle in new[] { "front", "rear" })
            (change[axle] as JsonObject)?.Remove("suspension");
        return change;
    }

    /// <summary>Leaves each member that is no object in one of two copies only.</summary>
    private static void Part(JsonObject one, JsonObject other, Random random)
    {
        foreach (var name in one.Select(member => member.Key).ToArray())
        {
            if (one[name] is JsonObject inner)
                Part(inner, (JsonObject)other[name]!, random);
            else
                (random.Next(2) == 0 ? one : other).Remove(name);
        }
    }

    private static VehicleDocument Made(VehicleDocument car, params ReadOnlySpan<VehicleChange> changes)
    {
        var changed = ChangeContract.Changing(car, "/vehicle");
        foreach (var change in changes)
            changed = changed.With(change, "/change");
        return changed.Read().TryGet(out var read, out _) ? read : throw new JsonException("The change could not be made.");
    }

    private static ChangeRequest Bound(string car, string change) => Bound($$"""{ "vehicle": {{car}}, "change": {{change}} }""");

    private static ChangeRequest Bound(string body) =>
        Bare.Read(Encoding.UTF8.GetBytes(body), out var request, out var faults) ? request : throw new JsonException(faults[0].Message);
}
