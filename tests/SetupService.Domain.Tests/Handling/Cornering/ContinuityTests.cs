using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Domain.Tests.Handling.Cornering;

/// <summary>No input has a jump or a cusp: half the step moves each figure at most half as far, within a tenth, above what rounding leaves.</summary>
public sealed class ContinuityTests
{
    private static readonly TurnPath Path = TurnPath.AtRadius(TurnDirection.Left, 60);

    // Below these a change is rounding: limits in g, roll in degrees, share of grip.
    private const double Floor = 2e-6;

    public static TheoryData<string, double> Inputs()
    {
        TheoryData<string, double> inputs = [];
        foreach (var input in HandlingInputs.All.Where(one => HandlingInputs.CanMatter(one, Car())))
        {
            foreach (var lateralG in new[] { 0.3, 0.7, 0.95 }) inputs.Add(input.Place + "|" + input.Unit, lateralG);
        }

        return inputs;
    }

    [Theory]
    [MemberData(nameof(Inputs))]
    public void Half_the_step_moves_a_figure_at_most_half_as_far(string place, double lateralG)
    {
        var input = HandlingInputs.All.Single(one => one.Place + "|" + one.Unit == place);
        var value = input.Read(Car());
        var step = Math.Max(0.3 * input.ErrorOf(value), 1e-3);

        var (at, half, whole) = (Figures(value), Figures(value + (step / 2)), Figures(value + step));

        for (var i = 0; i < at.Length; i++)
        {
            var (halfway, allTheWay) = (Math.Abs(half[i] - at[i]), Math.Abs(whole[i] - at[i]));

            // A figure that turns about inside the step may come back; what it does to either side is then all there is.
            var most = Math.Max(allTheWay, Math.Abs(whole[i] - half[i]));
            Assert.True(halfway <= (0.55 * most) + Floor || Math.Sign(half[i] - at[i]) != Math.Sign(whole[i] - half[i]), FormattableString.Invariant($"figure {i}: {halfway:e2} of {allTheWay:e2}"));
        }

        double[] Figures(double with)
        {
            var solver = CorneringSolver.Create(input.Put(Car(), with), TurnDirection.Left)!;
            Assert.Null(solver.Solve(lateralG, 60));
            var attitude = solver.Attitude(Path.At(lateralG));
            var limits = GripLimits.Solve(solver, Path, lateralG);
            return [limits.Front.LimitG!.Value, limits.Rear.LimitG!.Value, attitude.RollDeg, attitude.Front.GripUsed, attitude.Rear.GripUsed];
        }
    }

    private static HandlingCar Car()
    {
        var car = WorkedCar.Make();
        return car with { Front = Stopped(car.Front), Rear = Stopped(car.Rear) };
    }

    private static HandlingAxle Stopped(HandlingAxle axle) => axle with { BumpTravelMm = 60, ReboundTravelMm = 80, CamberComplianceDegPerKn = 0.1, ToeComplianceDegPerKn = 0.02 };
}
