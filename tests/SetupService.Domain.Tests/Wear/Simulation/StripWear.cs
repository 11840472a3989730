namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>Wears a tread strip by strip; what is worn down bears less.</summary>
internal sealed class StripWear
{
    private const double RelievedPerMm = 0.12;
    private const double HardTurnSlipShare = 0.2;

    private readonly double[] _pressure = new double[Strips.Count];
    private double _turnEdgeWork;
    private double _turnWork;

    public double[] LostMm { get; } = new double[Strips.Count];

    public double[] RoadLostMm { get; } = new double[Strips.Count];

    public double[] TrackWork { get; } = new double[Strips.Count];

    public double TrackSlipShare { get; private set; }

    /// <summary>Work of the outermost eighth on the outside of the track's hard turns against the tread's mean; 0 without a track.</summary>
    public double TurnEdgeShare => _turnWork > 0 ? _turnEdgeWork / _turnWork : 0;

    public void Add(TreadPress press, double distanceM)
    {
        var meanLostMm = Strips.Mean(LostMm);
        for (var strip = 0; strip < Strips.Count; strip++)
        {
            _pressure[strip] = press.Pressure[strip] * Math.Max(0.2, 1 - (RelievedPerMm * (LostMm[strip] - meanLostMm)));
        }

        // However it is spread, the tread bears the wheel's load.
        var scale = press.LoadShare / Strips.Mean(_pressure) * distanceM;
        for (var strip = 0; strip < Strips.Count; strip++)
        {
            var wearMm = _pressure[strip] * scale * press.WearByPressure[strip];
            LostMm[strip] += wearMm;
            if (!press.IsTrack) RoadLostMm[strip] += wearMm;
        }

        if (press.IsTrack) AddWork(press, scale);
    }

    private void AddWork(TreadPress press, double scale)
    {
        TrackSlipShare = Math.Max(TrackSlipShare, Math.Abs(press.SlipShare));
        for (var strip = 0; strip < Strips.Count; strip++)
        {
            var work = _pressure[strip] * scale * press.WorkByPressure[strip];
            TrackWork[strip] += work;
            if (press.SlipShare < HardTurnSlipShare) continue;
            _turnWork += work / Strips.Count;
            if (strip < 4) _turnEdgeWork += work / 4;
        }
    }
}
