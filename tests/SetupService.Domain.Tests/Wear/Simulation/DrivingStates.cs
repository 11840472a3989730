namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>Divides a car's use into things it does. The shares are judgement.</summary>
internal static class DrivingStates
{
    public static List<DrivingState> Of(TrueCar car)
    {
        var states = new List<DrivingState>(32);
        Road(states, car.Use);
        if (car.Use.HasTrack) Track(states, car.Use);
        foreach (var axle in new[] { car.Front, car.Rear })
        {
            Spinning(states, car.Use, axle);
        }

        return states;
    }

    private static void Road(List<DrivingState> states, TrueUse use)
    {
        var roadM = use.RoadKm * 1000;
        states.Add(new(roadM * 0.58, 0, 0, false));
        states.Add(new(roadM * 0.08, 0, 0.12, false));
        states.Add(new(roadM * 0.06, 0, -0.2, false));
        foreach (var side in new[] { -1.0, 1.0 })
        {
            states.Add(new(roadM * 0.08, side * use.RoadG * 0.35, 0, false));
            states.Add(new(roadM * 0.04, side * use.RoadG * 0.7, 0.05, false));
            states.Add(new(roadM * 0.02, side * use.RoadG, 0, false));
        }
    }

    private static void Track(List<DrivingState> states, TrueUse use)
    {
        var trackM = use.TrackLaps * use.LapKm * 1000;
        states.Add(new(trackM * 0.42, 0, 0.1, true));
        states.Add(new(trackM * 0.1, 0, -use.BrakingG, true));
        foreach (var (side, share) in new[] { (1.0, use.LeftShare), (-1.0, 1 - use.LeftShare) })
        {
            var cornersM = trackM * 0.48 * share;
            states.Add(new(cornersM * 0.25, side * use.TrackG * 0.6, -use.BrakingG * 0.25, true));
            states.Add(new(cornersM * 0.25, side * use.TrackG * 0.7, use.DriveG, true));
            foreach (var (part, hardness) in new[] { (0.25, 0.85), (0.25, 1.0) })
            {
                states.Add(new(cornersM * part * (1 - use.OverdrivenShare), side * use.TrackG * hardness, 0, true));
                if (use.OverdrivenShare > 0)
                {
                    states.Add(new(cornersM * part * use.OverdrivenShare, side * use.TrackG * hardness, 0, true) { OverdrivenSlip = use.OverdrivenSlip });
                }
            }
        }
    }

    private static void Spinning(List<DrivingState> states, TrueUse use, TrueAxle axle)
    {
        if (axle.SpunRoadShare > 0) states.Add(new(use.RoadKm * 1000 * axle.SpunRoadShare, 0, 0.2, false) { Spins = axle.Place });
        if (axle.SpunTrackShare > 0 && use.HasTrack)
        {
            var trackM = use.TrackLaps * use.LapKm * 1000;
            states.Add(new(trackM * axle.SpunTrackShare, 0, 0.2, true) { Spins = axle.Place });
        }
    }
}
