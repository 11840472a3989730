using SetupService.Api.Fitment;
using SetupService.Api.Fitment.Check;
using SetupService.Api.Http;
using SetupService.Api.Http.Faults;
using SetupService.Api.Tyres;
using SetupService.Api.Vehicles;
using SetupService.Api.Wheels;

namespace SetupService.Api.Tests.Http;

/// <summary>A mapper answers a value or a refusal, and a refusal tells every fault with its place.</summary>
public sealed class MapResultTests
{
    [Fact]
    public void NoRefusalIsMadeOfNoFault()
    {
        Assert.Null(Refusal.From([]));
        Assert.Single(Refusal.From([Fault.At("/a", FaultCodes.Required, "a is missing.")])!);
    }

    [Fact]
    public void EveryFaultOfACheckComesAtItsPlace()
    {
        CheckRequest request = new()
        {
            Vehicle = new VehicleDocument
            {
                Front = new AxleDocument { Tyre = new TyreDocument { Marking = "no tyre" }, Hub = new HubDocument { FastenerThread = "no thread", BoltCircle = "no circle" } },
                Rear = new AxleDocument { Wheel = new WheelDocument { RimDiameterIn = 17, RimWidthIn = 8, OffsetMm = 40, InnerProfile = [new ProfilePointDocument { RadiusMm = 400 }] } },
            },
            Candidate = new FittingDocument { Wheel = new WheelDocument { RimDiameterIn = 17, RimWidthIn = 8, OffsetMm = 40, BoltCircle = "5 of them" }, Tyre = new TyreDocument { Marking = "none" } },
        };

        Assert.False(CheckMapper.Map(request).TryGet(out _, out var refusal));
        Assert.Equal(
            [
                "/vehicle/front/tyre/marking", "/vehicle/front/hub/boltCircle", "/vehicle/front/hub/fastenerThread", "/vehicle/rear/wheel/innerProfile",
                "/candidate/wheel/boltCircle", "/candidate/tyre/marking",
            ],
            refusal.Select(fault => fault.Pointer));
    }

    [Fact]
    public void AValueCostsNothingBesideItself()
    {
        MapResult<string> Map() => "value";
        string? Take()
        {
            Refusal? refusal = null;
            return Map().Under("outer").Take("inner", ref refusal);
        }

        Take();
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 1000; i++) Take();
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }
}
