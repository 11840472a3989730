// Three calls with the client NSwag makes of the description; exits 1 where a number is not the expected one.
using SetupService.Clients.NSwag;

using HttpClient http = new() { BaseAddress = new Uri(args[0]) };
SetupClient client = new(http);

VehicleDocument vehicle = new()
{
    FrontAxleLoadKg = 690,
    Front = new AxleDocument { Wheel = Wheel(7.5, 45), Tyre = new TyreDocument { Marking = "225/45R17 91W" } },
};
FittingDocument candidate = new() { Wheel = Wheel(8, 40), Tyre = new TyreDocument { Marking = "225/45R17 94W XL" } };
var check = await client.FitmentCheckAsync(units: null, detail: null, new CheckRequest { Axle = CarAxle.Front, Vehicle = vehicle, Candidate = candidate });

// Speed symbol W stands for 270 km/h (the handbook "Automotive Engineering: Powertrain, Chassis System and Vehicle Body",
// chapter 10.1, p. 291).
Expect("speed rating in km/h", check.Checks!.Single(item => item.Id == CheckId.SpeedRating).Value, 270);

MacPhersonStrutDocument strut = new()
{
    Points = new MacPhersonStrutPointsDocument
    {
        LowerArmFront = Point(12, 378, 192),
        LowerArmRear = Point(-312, 388, 196),
        LowerBallJoint = Point(8, 716, 178),
        StrutTop = Point(-67, 561, 843),
        StrutLower = Point(-14, 628, 405),
        TieRodInner = Point(-148, 335, 232),
        TieRodOuter = Point(-138, 697, 224),
        WheelCentre = Point(0, 751, 305),
    },
};
var sweep = await client.TravelSweepAsync(units: null, new TravelSweepRequest
{
    Vehicle = new VehicleDocument { Front = new AxleDocument { Suspension = strut, Alignment = new AlignmentDocument { CamberDeg = -0.7, ToeDeg = 0.08 }, LoadedRadiusMm = 302 } },
    Axle = CarAxle.Front,
    TravelMm = new TravelRangeDocument { From = -10, To = 10, Step = 10 },
});

// At its stated place the wheel has the stated camber.
Expect("camber at no travel in degrees", sweep.Rows.ElementAt(1).CamberDeg, -0.7);

var diagnosis = await client.WearDiagnosisAsync(units: null, new DiagnosisRequest
{
    Use = new UseDocument { RoadKm = 4200, TrackLaps = 96, LapKm = 3.2 },
    Tyres =
    [
        new TyreReadingDocument
        {
            Position = WheelPosition.FrontLeft, NewDepthMm = 7.8, DepthMm = new DepthsDocument { Outer = 3.4, Centre = 5.2, Inner = 5.5 },
        },
    ],
});

// The least of the three depths sent.
Expect("least depth in mm", diagnosis.Tread.First().LeastDepthMm, 3.4);

static WheelDocument Wheel(double widthIn, double offsetMm) => new() { RimDiameterIn = 17, RimWidthIn = widthIn, OffsetMm = offsetMm };

static PointDocument Point(double x, double y, double z) => new() { XMm = x, YMm = y, ZMm = z };

static void Expect(string what, double? value, double expected)
{
    Console.WriteLine($"{what}: {value}");
    if (value is not { } number || Math.Abs(number - expected) > 1e-6)
        throw new InvalidOperationException($"{what}: {expected} was expected");
}
