namespace SetupService.Domain.Handling.Cornering;

/// <summary>One step of the body and its wheels; roll by its sine, in which an undrawn car is linear; steer in units of the input; and whether springs, bars or stops resist roll here.</summary>
internal readonly record struct BodyChange(
    double RollSine, double FrontHeaveMm, double RearHeaveMm, (double Outer, double Inner) Front, (double Outer, double Inner) Rear, double Steer, bool IsHeld)
{
    public double LargestTravelMm =>
        Math.Max(Math.Max(Math.Abs(Front.Outer), Math.Abs(Front.Inner)), Math.Max(Math.Abs(Rear.Outer), Math.Abs(Rear.Inner)));
}
