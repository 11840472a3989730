using SetupService.Domain.Answers;
using SetupService.Domain.Tests.Fitment;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>What readings of an axle come down to, worked by hand from the definitions of <see cref="WearSign"/> and <see cref="WearMark"/>.</summary>
public sealed class EvidenceExtractorTests
{
    // One reading with a needle and by infrared, as the temperatures call has it (common practice, no source).
    private const double LeftC = 1.5;
    private const double RightC = 2.5;

    private static readonly TyreReading Left = new()
    {
        Position = WheelPosition.FrontLeft,
        TemperatureC = new(80, 88, 90),
        TemperatureBy = Thermometer.Probe,
        SecondsAfterLap = 20,
        TemperatureWindowC = (70, 100),
        Pressure = new TyrePressures(210, 240, null, 250),
    };

    private static readonly TyreReading Right = new()
    {
        Position = WheelPosition.FrontRight,
        TemperatureC = new(84, 85, 98),
        TemperatureBy = Thermometer.Infrared,
        Pressure = new TyrePressures(220, null, 200, null),
    };

    [Fact]
    public void Temperatures_come_down_to_differences_and_a_place_in_the_window()
    {
        var rear = Left with { Position = WheelPosition.RearLeft, TemperatureC = new(70, 71, 72) };
        var signs = Extract([Left, Right, rear]);

        // Outer less inner −10 and −14; centre less shoulders 3 and −6; means 86 and 89, the rear's 71; 86 is 1/15 above the middle of the window.
        Equal(-12, Mean(LeftC, RightC, 2), signs[WearSign.ShoulderTemperatureDifference]);
        Equal(-1.5, Mean(LeftC, RightC, 1.5), signs[WearSign.CrownTemperatureDifference]);
        Equal(87.5 - 71, Math.Sqrt(Math.Pow(Mean(LeftC, RightC, 1), 2) + (LeftC * LeftC)), signs[WearSign.AxleTemperatureDifference]);
        Equal(1 / 15.0, LeftC / 15, signs[WearSign.TemperatureInWindow]);
        Assert.Null(Extract([Left, Right])[WearSign.AxleTemperatureDifference]);
    }

    // 10 kPa below an aim of 250 hot is −4 %; 20 above an aim of 200 cold is 10 %; each to 1 %.
    [Fact]
    public void Pressures_come_down_to_percent_of_their_aim()
    {
        var signs = Extract([Left, Right]);

        Equal(3, Math.Sqrt(2) / 2, signs[WearSign.PressureDeviation]);
        Equal(-14, Math.Sqrt(2), signs[WearSign.PressureDifference]);
        Equal(-4, 1, Extract([Left])[WearSign.PressureDeviation]);
    }

    // Workshop readings to 0.1° of camber and 0.04° of toe; a cornering model's degrees count instead of the bare camber.
    [Fact]
    public void Angles_come_down_to_means_and_differences()
    {
        var axle = new Axle { Left = new() { CamberDeg = -1.2, ToeDeg = 0.1 }, Right = new() { CamberDeg = -2, ToeDeg = -0.3 } };
        var signs = Extract([], axle);

        Equal(-1.6, 0.1 / Math.Sqrt(2), signs[WearSign.CamberSet]);
        Equal(0.8, 0.1 * Math.Sqrt(2), signs[WearSign.CamberDifference]);
        Equal(-0.1, 0.04 / Math.Sqrt(2), signs[WearSign.ToeSet]);
        Equal(0.2, 0.04, signs[WearSign.ThrustSet]);

        var known = EvidenceExtractor.Extract(new WearCase { Vehicle = new Vehicle { Front = axle }, Tyres = [] }, CarAxle.Front, new CarSigns(new Estimate(0.4, 0.7), null));
        Equal(0.4, 0.7, known[WearSign.CamberShort]);
        Assert.Null(known[WearSign.CamberSet]);

        var stated = Extract([], new Axle { Left = axle.Left, Right = axle.Left });
        Assert.Null(stated[WearSign.ThrustSet]);
        Assert.Null(stated[WearSign.CamberDifference]);
    }

    [Fact]
    public void Every_pattern_found_is_its_mark_and_none_is_there_where_none_was_found()
    {
        foreach (var pattern in Enum.GetValues<TreadPattern>())
        {
            var signs = Extract([Left, Right with { Patterns = [pattern] }]);
            Assert.All(Enum.GetValues<TreadPattern>(), one => Assert.Equal(one == pattern, signs[(WearMark)one]));
            Assert.Equal(pattern.ToString(), ((WearMark)pattern).ToString());
        }

        var looked = Extract([Left with { Patterns = [] }]);
        Assert.All(Enum.GetValues<TreadPattern>(), one => Assert.False(looked[(WearMark)one]));
        var notLooked = Extract([Left]);
        Assert.All(Enum.GetValues<TreadPattern>(), one => Assert.Null(notLooked[(WearMark)one]));
    }

    // Half a year between the weeks of making, or a millimetre of tread when new, makes two tyres differ.
    [Theory]
    [InlineData(1000, 1026, 8.0, 8.0, false)]
    [InlineData(1000, 1027, 8.0, 8.0, true)]
    [InlineData(1000, 1000, 8.0, 7.0, true)]
    [InlineData(1000, 1000, 8.0, 7.1, false)]
    [InlineData(null, 1000, 8.0, 7.0, true)]
    [InlineData(null, 1000, 8.0, 8.0, null)]
    [InlineData(1000, 1010, null, 8.0, false)]
    public void Two_tyres_differ_by_age_or_by_tread(int? leftWeek, int? rightWeek, double? leftMm, double? rightMm, bool? differ) =>
        Assert.Equal(differ, Extract([Left with { MadeInWeek = leftWeek, NewDepthMm = leftMm }, Right with { MadeInWeek = rightWeek, NewDepthMm = rightMm }])[WearMark.TyresDiffer]);

    [Theory]
    [InlineData(WheelPosition.FrontLeft, false, false)]
    [InlineData(WheelPosition.FrontLeft, true, true)]
    [InlineData(WheelPosition.RearLeft, false, true)]
    public void A_tyre_from_elsewhere_is_marked(WheelPosition at, bool isTurned, bool isMoved)
    {
        Assert.Equal(isMoved, Extract([Left with { History = [new(at, 100, null, isTurned)] }, Right])[WearMark.MovedOrTurned]);
        Assert.Null(Extract([Left, Right])[WearMark.MovedOrTurned]);
    }

    // Half of the way elsewhere marks a tyre as moved; a quarter leaves open what the wear shows.
    [Theory]
    [InlineData(100, 900, null)]
    [InlineData(250, 750, null)]
    [InlineData(500, 500, true)]
    [InlineData(900, 100, true)]
    [InlineData(20, 980, false)]
    public void A_tyre_is_moved_by_its_share_of_the_way(double elsewhereKm, double hereKm, bool? isMoved)
    {
        var signs = Extract([Left with { History = [new(WheelPosition.RearLeft, elsewhereKm, null, false), new(WheelPosition.FrontLeft, hereKm, null, false)] }, Right]);

        Assert.Equal(isMoved, signs[WearMark.MovedOrTurned]);
        Assert.Equal(isMoved is true ? elsewhereKm / 1000 : null, signs.ElsewhereShare);
    }

    // 225/45R17 goes on rims of 7 to 8.5 in (from memory, ETRTO): both ends are permitted.
    [Theory]
    [InlineData(6.5, true)]
    [InlineData(7, false)]
    [InlineData(8.5, false)]
    [InlineData(9, true)]
    public void A_rim_outside_the_permitted_is_marked(double widthIn, bool isOutside) =>
        Assert.Equal(isOutside, Extract([], DemoCar.Axle() with { Wheel = DemoCar.Wheel(widthIn) })[WearMark.RimOutsidePermitted]);

    private static AxleSigns Extract(TyreReading[] tyres, Axle? front = null) =>
        EvidenceExtractor.Extract(new WearCase { Vehicle = new Vehicle { Front = front ?? new Axle() }, Tyres = tyres }, CarAxle.Front, default);

    // The mean of two values made of readings whose variances add up to as many times that of one.
    private static double Mean(double left, double right, double variances) => Math.Sqrt(variances * ((left * left) + (right * right))) / 2;

    private static void Equal(double value, double error, Estimate? sign)
    {
        Assert.Equal(value, sign!.Value.Value, 1e-9);
        Assert.Equal(error, sign.Value.StandardError, 1e-9);
    }
}
