using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Fitment;

/// <summary>A value that served though nobody gave it is listed, and none that was given or did not serve.</summary>
public sealed class FitmentAssumptionsTests
{
    private static readonly Clearance Gaps = new() { InboardMm = 30, OutboardMm = 30, RadialMm = 120, MeasuredAt = ClearanceMeasuredAt.RideHeight };

    [Fact]
    public void A_margin_and_a_gauge_are_assumed_where_they_are_not_given()
    {
        Only("/tolerances/minimumMarginMm", List(Car(Gaps)), List(Car(Gaps, new CheckSettings { MinimumMarginMm = 4 })));
        Only("/vehicle/front/clearance/uncertaintyMm", List(Car(Gaps)), List(Car(Gaps with { UncertaintyMm = 1 })));
        Only("/vehicle/front/clearance/measuredAt", List(Car(Gaps with { MeasuredAt = null })), List(Car(Gaps)));
    }

    [Fact]
    public void What_the_candidate_does_not_say_is_assumed()
    {
        var plain = DemoCar.Fitting();
        Only("/candidate/tyre/rimProtectorMm", List(Car(Gaps), plain), List(Car(Gaps), plain with { Tyre = plain.Tyre with { RimProtectorMm = 0 } }));

        var spaced = DemoCar.Fitting(spacerMm: 0.5);
        Only("/candidate/wheel/spacerHasOwnFasteners", List(Car(Gaps), spaced), List(Car(Gaps), plain));
        Only("/candidate/wheel/spacerHasOwnFasteners", List(Car(Gaps), spaced), List(Car(Gaps), spaced with { Wheel = spaced.Wheel with { SpacerHasOwnFasteners = false } }));
    }

    // An arm moves half as far as the wheel (our choice); a strut moves with it, so that neither neighbour nor height is guessed.
    [Fact]
    public void What_is_nearest_inboard_is_assumed_where_it_matters()
    {
        const string to = "/vehicle/front/clearance/inboardTo";
        const string height = "/vehicle/front/clearance/inboardHeightMm";
        Assert.Equal("body", Assert.Single(List(Car(Gaps)), one => one.Input == to).Text);
        Assert.Equal(0.5, Assert.Single(List(Car(Gaps with { InboardTo = InboardNeighbour.Arm })), one => one.Input == to).Value);
        Only(to, List(Car(Gaps)), List(Car(Gaps with { InboardTo = InboardNeighbour.Body })));
        Only(to, List(Car(Gaps)), List(Car(Gaps with { InboardTo = InboardNeighbour.Strut })));
        Only(height, List(Car(Gaps with { InboardTo = InboardNeighbour.Body })), List(Car(Gaps with { InboardTo = InboardNeighbour.Body, InboardHeightMm = 400 })));
        Only(height, List(Car(Gaps)), List(Car(Gaps with { InboardTo = InboardNeighbour.Strut })));
    }

    // 60 mm to the stop and 27 mm of it, at 0.85 of the wheel's travel, are 91.8 mm: readings to 80 mm are carried on, readings to 100 mm are not.
    [Fact]
    public void A_curve_is_carried_on_only_beyond_its_readings()
    {
        Assert.Contains(List(Car(Gaps, toMm: 80)), IsCarriedOn);
        Assert.DoesNotContain(List(Car(Gaps, toMm: 100)), IsCarriedOn);

        static bool IsCarriedOn(Assumption one) => one.Text?.StartsWith("the curve goes on", StringComparison.Ordinal) == true;
    }

    // A change about the lower joint's other end has its pivot; no change needs none. Towards the centre the wheel centre leaves least room, outward the ground.
    [Fact]
    public void The_pivot_of_a_change_of_camber_is_assumed_where_there_is_one()
    {
        const string pivot = "/camberChange/pivotHeightMm";
        var (inward, outward) = (new CamberChange(-1, CamberChangePlace.StrutTop, null, null), new CamberChange(1, CamberChangePlace.StrutTop, null, null));

        var found = Assert.Single(Changed(inward), one => one.Input == pivot);
        Assert.Equal(("wheel-centre height", null), (found.Text, found.Value));
        Assert.Equal(0, Assert.Single(Changed(outward), one => one.Input == pivot).Value);
        Only(pivot, Changed(inward), Changed(inward with { ChangeDeg = 0 }));
        Only(pivot, Changed(inward), Changed(inward with { At = CamberChangePlace.LowerJoint }));
        Only(pivot, Changed(inward), Changed(inward with { PivotHeightMm = 180 }));

        static IReadOnlyList<Assumption> Changed(CamberChange change) => List(Car(Gaps, new CheckSettings { CamberChange = change }));
    }

    private static void Only(string input, IReadOnlyList<Assumption> assumed, IReadOnlyList<Assumption> given)
    {
        Assert.Contains(assumed, one => one.Input == input);
        Assert.DoesNotContain(given, one => one.Input == input);
    }

    private static IReadOnlyList<Assumption> List(FitmentContext car, Domain.Fitment.Fitting? candidate = null) => FitmentAssumptions.ForCheck(car, candidate ?? DemoCar.Fitting());

    private static FitmentContext Car(Clearance gaps, CheckSettings? settings = null, double toMm = 100) => DemoCar.Front(
        DemoCar.Axle() with
        {
            Clearance = gaps,
            BumpTravelMm = 60,
            Suspension = SuspensionModel.From(new CornerReadings { Travel = [new TravelReading(0, -1, null), new TravelReading(toMm / 2, -1.5, null), new TravelReading(toMm, -2, null)] }),
        },
        settings);
}
