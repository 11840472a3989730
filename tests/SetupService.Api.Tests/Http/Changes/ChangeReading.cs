using System.Text;
using System.Text.Json;
using SetupService.Api.Host;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Faults;
using SetupService.Api.Tests.Vehicles;
using SetupService.Api.Vehicles;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Tests.Http.Changes;

/// <summary>Reads the test's requests and makes their changes the way a handler does.</summary>
internal static class ChangeReading
{
    public static JsonContract ChangeContract { get; } = new(
        ChangeJsonContext.OfService,
        [DocumentRules.Create(static () => new ChangeRequestRules())],
        DocumentMapping.Create<VehicleDocument, Vehicle>(VehicleMapper.Map),
        DocumentMapping.OfMember<ChangeRequest, VehicleDocument, Vehicle>("vehicle", static request => request.Vehicle, VehicleMapper.Map));

    public static ContractReader<ChangeRequest> Reader { get; } = ChangeContract.ReaderOf<ChangeRequest>();

    /// <summary>The demo car, or the car given, with one change made.</summary>
    public static VehicleDocument Changed(string change, string car = DemoCar.Car)
    {
        var request = Read($$"""{ "vehicle": {{car}}, "change": {{change}} }""");
        Assert.True(ChangeContract.Changing(request.Vehicle, "/vehicle").With(request.Change!, "/change").Read().TryGet(out var changed, out _), "The change could not be made.");
        return changed!;
    }

    public static VehicleDocument Car(string json) => Read($$"""{ "vehicle": {{json}} }""").Vehicle;

    public static ChangeRequest Read(string body)
    {
        var isRead = Reader.Read(Encoding.UTF8.GetBytes(body), out var request, out var faults);
        Assert.True(isRead, string.Join('\n', ((IEnumerable<Fault>?)faults ?? []).Select(fault => $"{fault.Pointer}: {fault.Message}")));
        return request!;
    }

    public static IReadOnlyList<Fault> Faults(string body) => Reader.Faults(Encoding.UTF8.GetBytes(body));

    /// <summary>The faults of one change to a car.</summary>
    public static IReadOnlyList<Fault> FaultsOf(string change, string car = DemoCar.Car) => Faults($$"""{ "vehicle": {{car}}, "change": {{change}} }""");

    public static string Text(VehicleDocument car) => JsonSerializer.Serialize(car, ContractJsonContext.Default.VehicleDocument);
}
