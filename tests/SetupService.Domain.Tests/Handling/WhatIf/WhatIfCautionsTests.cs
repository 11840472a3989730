using SetupService.Domain.Handling.WhatIf;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.WhatIf;

public sealed class WhatIfCautionsTests
{
    private static readonly CornerReadings Sound = new()
    {
        Travel = [new(-50, 0.2), new(-25, -0.35), new(0, -0.95), new(25, -1.5), new(50, -2.1)],
        StatedCamberDeg = -0.95,
    };

    [Fact]
    public void A_sign_turned_by_a_change_is_told_at_that_change()
    {
        var (given, turned) = (Car(Sound), Car(Sound with { StatedCamberDeg = 0.95 }));

        var cautions = WhatIfCautions.For(given, [given, turned], turned);

        var told = Assert.Single(cautions, one => !WhatIfCautions.All.Contains(one));
        Assert.Contains("/changes/1/vehicle/front/alignment/camberDeg", told.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_car_as_given_has_wrong_is_told_once_and_not_again_at_each_change()
    {
        var turned = Car(Sound with { StatedCamberDeg = 0.95 });

        var told = Assert.Single(WhatIfCautions.For(turned, [turned, turned], turned), one => !WhatIfCautions.All.Contains(one));
        Assert.Contains("/vehicle/front/alignment/camberDeg", told.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("/changes/", told.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_only_all_changes_together_bring_is_told()
    {
        var (given, turned) = (Car(Sound), Car(Sound with { StatedCamberDeg = 0.95 }));

        Assert.Single(WhatIfCautions.For(given, [given, given], turned), one => one.Text.Contains("/changes/1/vehicle", StringComparison.Ordinal));
    }

    private static Vehicle Car(CornerReadings front) => new() { Front = new Axle { Suspension = SuspensionModel.From(front) } };
}
