using System.Text;
using System.Text.Json;
using CsCheck;
using SetupService.Api.Host;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Faults;
using SetupService.Api.Tests.Vehicles;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Tests.Http;

/// <summary>The two readers of a body, held against each other on generated bodies.</summary>
public class ReadersAgreeTests
{
    // Without rules: those are beyond what the fast path checks.
    private static readonly ContractReader<VehicleDocument> Reader =
        new JsonContract(ContractJsonContext.Default, []).ReaderOf<VehicleDocument>();

    private static readonly ContractSchema Schema =
        new SchemaBuilder(ContractJsonContext.Default.Options).Build(typeof(VehicleDocument));

    [Theory]
    [InlineData(0)]
    [InlineData(0.002)]
    [InlineData(0.05)]
    public void What_the_fast_path_takes_has_no_fault_and_what_has_no_fault_is_read(double faultShare) =>
        Gen.Int.Sample(
            seed =>
            {
                var body = Encoding.UTF8.GetBytes(new ShapedBody(seed, faultShare).Write(Schema));
                var isTaken = Reader.TryRead(body, out _);
                var isRead = Reader.Read(body, out var value, out var faults);

                // Read throws where it finds no fault and still cannot bind; a taken body must have none.
                return isRead == (value is not null)
                    && isRead == (faults is null)
                    && (!isTaken || Reader.Faults(body).Count == 0)
                    && (faultShare > 0 || isRead);
            },
            iter: 2_000);

    [Fact]
    public void Every_pointer_leads_to_a_place_of_the_body_or_to_where_something_is_missing() =>
        Gen.Int.Sample(
            seed =>
            {
                var body = new ShapedBody(seed, 0.02).Write(Schema);
                var faults = Reader.Faults(Encoding.UTF8.GetBytes(body));
                if (faults.Any(fault => fault.Code is FaultCodes.DuplicateMember or FaultCodes.Syntax))
                    return true; // A name that stands twice leads to two places.
                using var document = JsonDocument.Parse(body);
                return faults.All(fault => fault.Code is FaultCodes.Required or FaultCodes.MoreFaults || Leads(document.RootElement, fault.Pointer!));
            },
            iter: 1_000);

    [Fact]
    public void Any_bytes_give_a_value_or_faults() =>
        Gen.Byte.Array[0, 200].Sample(bytes => Reader.Read(bytes, out var value, out _) == (value is not null), iter: 5_000);

    [Fact]
    public void Any_damage_to_a_good_body_gives_a_value_or_faults()
    {
        var good = Encoding.UTF8.GetBytes(DemoCar.Car);
        Gen.Select(Gen.Int[0, good.Length - 1], Gen.Byte, Gen.Int[1, good.Length]).Sample(
            (at, with, length) =>
            {
                byte[] damaged = [.. good[..length]];
                damaged[Math.Min(at, length - 1)] = with;
                return Reader.Read(damaged, out var value, out _) == (value is not null);
            },
            iter: 5_000);
    }

    // RFC 6901, section 4.
    private static bool Leads(JsonElement element, string path)
    {
        foreach (var step in path.Split('/').Skip(1))
        {
            var name = step.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal);
            if (element.ValueKind == JsonValueKind.Object && element.TryGetProperty(name, out var member))
                element = member;
            else if (element.ValueKind == JsonValueKind.Array && int.TryParse(name, out var index) && index < element.GetArrayLength())
                element = element[index];
            else
                return false;
        }

        return true;
    }
}
