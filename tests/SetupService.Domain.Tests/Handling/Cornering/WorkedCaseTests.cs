using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Domain.Tests.Handling.Cornering;

/// <summary>The equilibrium against hand calculations by textbook forms, where those hold: small accelerations, tyres that hardly give.</summary>
public sealed class WorkedCaseTests
{
    // As good as rigid, and still apart from rounding.
    private const double RigidNPerMm = 1e6;

    // Jacking goes with the square of the acceleration; here it does not show.
    private const double SmallG = 0.005;

    // Barton and Fieldhouse, Automotive Chassis Engineering, Springer 2018, scan page 185: sprung mass 1280 kg, 54 % in front, roll centres
    // 0.07 and 0.32 m, tracks 1.46 m, unsprung 140 and 180 kg at 0.28 and 0.30 m, roll arm 0.365 m, 28650 N m/rad in all. The book's
    // answers: geometric 195 and 760 N, unsprung 158 and 218 N at 0.6 g, 0.0194 rad/(m/s²).
    [Theory]
    [InlineData(0.9, 1.0, 1.2, "its front tyres slide before that, at about 0.9 g")]
    [InlineData(1.15, 1.0, 1.2, "its rear tyres slide before that, at about 1 g")]
    [InlineData(1.3, 1.15, 1.2, "Its rear tyres slide hardly sooner, at about 1.15 g: with a little more grip it rolls over instead.")]
    [InlineData(null, null, 1.2, "Its tyres still hold there: it rolls over before it slides.")]
    public void Near_roll_over_it_is_told_whether_the_tyres_slide_before(double? frontG, double? rearG, double rollsOverAtG, string expected)
    {
        var limits = new GripLimits(Limit(frontG), Limit(rearG));

        var text = CorneringCautions.Build([], rollsOverAtG, limits).Single(one => one.Code == "nearRollOver").Text;

        Assert.Contains(expected, text, StringComparison.Ordinal);
        Assert.DoesNotContain("slide", CorneringCautions.Build([], rollsOverAtG).Single(one => one.Code == "nearRollOver").Text, StringComparison.Ordinal);

        static AxleLimit Limit(double? limitG) => new(limitG, limitG is null ? CorneringFailure.RollsOver : null, limitG ?? 1.2);
    }

    [Fact]
    public void A_textbook_car_rolls_and_moves_its_load_as_the_book_has_it()
    {
        var car = Textbook();
        var small = Stand(car, SmallG);
        var full = Stand(car, 0.6 * 9.81 / HandlingCar.StandardGravity);

        Assert.Equal(0.0194127, double.DegreesToRadians(small.RollDeg) / (SmallG * HandlingCar.StandardGravity), 2e-5);
        Assert.Equal(195.06, full.Front.GeometricN, 0.5);
        Assert.Equal(759.60, full.Rear.GeometricN, 0.5);
        Assert.Equal(158.04, full.Front.UnsprungN, 0.05);
        Assert.Equal(217.70, full.Rear.UnsprungN, 0.05);
    }

    // The own worked case of WorkedCar with rigid tyres: 2.8831° at 9.81 m/s².
    [Fact]
    public void A_worked_car_on_rigid_tyres_rolls_as_the_textbook_form_says()
    {
        var small = Stand(Upright(WorkedCar.Make(RigidNPerMm)), SmallG);

        Assert.Equal(2.8831 / 9.81, small.RollDeg / (SmallG * HandlingCar.StandardGravity), 2e-4);
    }

    // Geometric and unsprung parts do not depend on springs or tyres.
    [Fact]
    public void A_worked_car_moves_its_load_as_the_textbook_forms_say()
    {
        var turn = Stand(WorkedCar.Make(RigidNPerMm), 9.81 / HandlingCar.StandardGravity);

        Assert.Equal(287.1, turn.Front.GeometricN, 0.15);
        Assert.Equal(391.8, turn.Rear.GeometricN, 0.15);
        Assert.Equal(157.5, turn.Front.UnsprungN, 0.05);
        Assert.Equal(159.6, turn.Rear.UnsprungN, 0.05);
        Assert.Equal(2163.0, turn.Front.ElasticN, 0.02 * 2163);
        Assert.Equal(1387.1, turn.Rear.ElasticN, 0.02 * 1387);
        Assert.Equal(57.36, turn.FrontLoadTransferPct!.Value, 0.15);
    }

    // Tyres in series, each giving under the whole of its axle's load transfer: two equations an axle, solved by hand beside the solver.
    [Fact]
    public void Tyres_let_the_body_roll_further_by_the_whole_load_transfer()
    {
        var car = Upright(WorkedCar.Make());
        var turn = Stand(car, SmallG);

        var acceleration = SmallG * HandlingCar.StandardGravity;
        var (frontRad, rearRad) = (Axle(car.Front, 70), Axle(car.Rear, 110));
        var arm = car.SprungHeightMm - ((car.SprungShareFront * 70) + ((1 - car.SprungShareFront) * 110));
        var moment = car.SprungMassKg * acceleration * car.SprungHeightMm;
        var held = frontRad.Held + rearRad.Held;
        var rollRad = (moment - held) / (frontRad.PerRoll + rearRad.PerRoll - (car.SprungMassKg * HandlingCar.StandardGravity * arm));
        Assert.Equal(double.RadiansToDegrees(rollRad), turn.RollDeg, 2e-5);

        // Load moment of an axle without its unsprung part, N mm: what is there at no roll, and what comes per radian.
        (double Held, double PerRoll) Axle(HandlingAxle axle, double rollCentreMm)
        {
            var half = axle.TrackMm / 2;
            var suspension = (2 * axle.SpringRateNPerMm * half * half) + double.RadiansToDegrees(1000 * axle.BarRollRateNmPerDeg);
            var tyres = 2 * axle.TyreRateNPerMm * half * half;
            var geometric = axle.SprungLoadN / HandlingCar.StandardGravity * acceleration * rollCentreMm;
            var unsprung = 2 * axle.UnsprungMassKg * acceleration * axle.LoadedRadiusMm;

            // roll = twist of springs + (springs' moment + geometric + unsprung)/tyres
            var perRoll = suspension * tyres / (suspension + tyres);
            return (geometric - (perRoll / tyres * (geometric + unsprung)), perRoll);
        }
    }

    [Fact]
    public void With_rigid_springs_and_tyres_the_body_does_not_roll()
    {
        var soft = WorkedCar.Make(RigidNPerMm);
        var car = soft with { Front = soft.Front with { SpringRateNPerMm = 1e5 }, Rear = soft.Rear with { SpringRateNPerMm = 1e5 } };

        Assert.InRange(Stand(car, 1).RollDeg, 0, 0.002);
    }

    [Fact]
    public void With_the_roll_axis_through_the_centre_of_gravity_the_springs_carry_nothing_across()
    {
        var low = Upright(WorkedCar.Make(RigidNPerMm));
        var car = low with { Front = low.Front with { RollCentreHeightMm = low.SprungHeightMm }, Rear = low.Rear with { RollCentreHeightMm = low.SprungHeightMm } };
        var turn = Stand(car, 0.05);

        Assert.Equal(0, turn.RollDeg, 0.002);
        Assert.Equal(0, turn.Front.ElasticN / turn.Front.GeometricN, 0.01);
        Assert.Equal(0, turn.Rear.ElasticN / turn.Rear.GeometricN, 0.01);
    }

    // A wheel that just meets its stop is not yet pressed into it; one that carries nothing has left the road.
    [Theory]
    [InlineData(0.0, false)]
    [InlineData(-0.1, true)]
    [InlineData(20.0, false)]
    [InlineData(null, false)]
    public void A_wheel_is_on_its_stop_beyond_it(double? leftMm, bool isOn)
    {
        var wheel = Stand(WorkedCar.Make(), 0.3).Outer(SetupService.Domain.Vehicles.CarAxle.Front);

        Assert.Equal(isOn, (wheel with { BumpLeftMm = leftMm }).IsOnBumpStop);
        Assert.True((wheel with { LoadN = 0 }).IsLifted);
        Assert.False((wheel with { LoadN = 1 }).IsLifted);
    }

    [Fact]
    public void A_quiet_turn_has_no_caution_of_stops_or_lifted_wheels()
    {
        var solver = CorneringSolver.Create(WorkedCar.Make(), TurnDirection.Left)!;
        var turn = SteadyTurn.Solve(solver, new(0.3, 60, TurnDirection.Left), out _)!.Value;

        Assert.DoesNotContain(CorneringCautions.Build([turn.Attitude], null), one => one.Code is "onBumpStop" or "wheelLifted" or "nearRollOver");
    }

    internal static CorneringAttitude Stand(HandlingCar car, double lateralG, double radiusM = 200, TurnDirection turn = TurnDirection.Left)
    {
        var solver = CorneringSolver.Create(car, turn)!;
        Assert.Null(solver.Solve(lateralG, radiusM));
        return solver.Attitude(new(lateralG, radiusM, turn));
    }

    private static HandlingCar Upright(HandlingCar car) => car with
    {
        Front = car.Front with { LeftCamberDeg = 0, RightCamberDeg = 0 },
        Rear = car.Rear with { LeftCamberDeg = 0, RightCamberDeg = 0 },
    };

    private static HandlingCar Textbook()
    {
        // 70 and 30 % of the roll stiffness fit the book's elastic parts; only their sum matters here.
        var front = Axle(0.54, 140, 280, 70, 0.7);
        var rear = Axle(0.46, 180, 300, 320, 0.3);
        var sprungHeight = 365 + (0.54 * 70) + (0.46 * 320);
        return new HandlingCar
        {
            WheelbaseMm = 2600,
            CentreOfGravityHeightMm = ((1280 * sprungHeight) + (140 * 280) + (180 * 300.0)) / 1600,
            Front = front,
            Rear = rear,
        };

        static HandlingAxle Axle(double share, double unsprungKg, double radiusMm, double rollCentreMm, double stiffnessShare)
        {
            var loadN = ((1280 * share) + unsprungKg) * HandlingCar.StandardGravity / 2;
            return WorkedCar.Axle(1280 * share, 1460, 2 * 28650e3 * stiffnessShare / (1460 * 1460), 0, rollCentreMm, RigidNPerMm) with
            {
                LeftLoadN = loadN,
                RightLoadN = loadN,
                UnsprungMassKg = unsprungKg / 2,
                LoadedRadiusMm = radiusMm,
                LeftCamberDeg = 0,
                RightCamberDeg = 0,
            };
        }
    }
}
