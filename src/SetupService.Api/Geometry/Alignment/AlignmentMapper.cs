using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Geometry.Alignment;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Geometry.Alignment;

/// <summary>Reads a car's alignments and answers them; every part of the car may be missing.</summary>
internal static class AlignmentMapper
{
    private const string Front = "/vehicle/front";
    private const string Rear = "/vehicle/rear";

    /// <summary>The answer; null with the problem where an axle's angles at its ride height are not known.</summary>
    public static AlignmentAnswer? ToAnswer(AlignmentRequest request, Vehicle vehicle, out Problem? problem)
    {
        var front = AnglesAtRide.Compute(vehicle.Front, NotMeasured(request.Vehicle.Front).Length == 0);
        var rear = AnglesAtRide.Compute(vehicle.Rear, NotMeasured(request.Vehicle.Rear).Length == 0);
        problem = front is null ? NotKnown(Front) : rear is null ? NotKnown(Rear) : null;
        if (front is null || rear is null) return null;
        var figures = new AlignmentFigures(front.Value, rear.Value);
        var diameterMm = request.MeasuringDiameterMm ?? AxleInputs.DefaultMeasuringDiameterMm;
        return new AlignmentAnswer
        {
            Front = Axle(figures.Front, diameterMm),
            Rear = Axle(figures.Rear, diameterMm),
            Comparisons = [.. Comparisons(CarAxle.Front, request.Targets?.Front, figures.Front), .. Comparisons(CarAxle.Rear, request.Targets?.Rear, figures.Rear)],
            ThrustAngleDeg = figures.ThrustAngleDeg,
            SteerAheadDeg = figures.SteerAheadDeg,
            FrontLeftToeToThrustLine = ToeResponse.From(ToeFigures.Compute(figures.FrontLeftToeToThrustLineDeg, diameterMm)),
            FrontRightToeToThrustLine = ToeResponse.From(ToeFigures.Compute(figures.FrontRightToeToThrustLineDeg, diameterMm)),
            SetbackAngleDeg = (request.SetbackMm, vehicle.Front.TrackMm) is ({ } setbackMm, { } trackMm) ? AlignmentFigures.SetbackAngleDeg(setbackMm, trackMm) : null,
            MeasuringDiameterMm = diameterMm,
            Unknown =
            [
                .. AlignmentGaps.Find(figures, request.SetbackMm, vehicle.Front.TrackMm, NotMeasured(request.Vehicle.Front), NotMeasured(request.Vehicle.Rear))
                    .Select(gap => UnknownResponse.Create(gap.Output, gap.Reason, [.. gap.Needs])),
            ],
            Method = "alignment",
            Edition = Edition.Current,
            Next = NextCalls.AfterAlignment,
            Assumptions = AssumptionResponse.From(Assumptions(request)),
            Cautions = CautionResponse.From([.. vehicle.CamberCautions, .. AlignmentCautions.For(figures)]),
        };
    }

    private static Problem NotKnown(string place) => Http.Problems.Problem.NotComputable(
        $"The angles at this ride height are not known: {AnglesAtRide.NotKnown}", [Fault.At(place + "/rideHeightChangeMm", FaultCodes.Unreachable, AnglesAtRide.NotKnown)]);

    private static AxleAlignmentResponse Axle(in AxleAngles axle, double diameterMm)
    {
        var left = ToeFigures.Compute(axle.Left.ToeDeg, diameterMm);
        var right = ToeFigures.Compute(axle.Right.ToeDeg, diameterMm);
        return new AxleAlignmentResponse
        {
            TotalToe = ToeResponse.From(left + right),
            CrossCamberDeg = axle.CrossCamberDeg,
            CrossCasterDeg = axle.CrossCasterDeg,
            CrossSteeringAxisInclinationDeg = axle.CrossInclinationDeg,
            CrossIncludedAngleDeg = axle.CrossIncludedAngleDeg,
            IncludedAngleHint = Hint(axle),
            Left = Wheel(axle.Left, left),
            Right = Wheel(axle.Right, right),
        };
    }

    private static WheelAlignmentResponse Wheel(in WheelAngles wheel, ToeFigures? toe) => new()
    {
        CamberDeg = wheel.CamberDeg,
        CasterDeg = wheel.CasterDeg,
        SteeringAxisInclinationDeg = wheel.SteeringAxisInclinationDeg,
        Toe = ToeResponse.From(toe),
        IncludedAngleDeg = wheel.IncludedAngleDeg,
    };

    /// <summary>Of the angles the hint compares, those that were not measured on the right, where the left's stand in for them.</summary>
    private static string[] NotMeasured(AxleDocument? axle) =>
    [
        .. axle?.Alignment?.Right?.CamberDeg is null ? ["camberDeg"] : Array.Empty<string>(),
        .. axle?.Alignment?.Right?.SteeringAxisInclinationDeg is null ? ["steeringAxisInclinationDeg"] : Array.Empty<string>(),
    ];

    // Its sentences hold degrees only, which no choice of units changes.
    private static IncludedAngleHintResponse? Hint(in AxleAngles axle) =>
        axle.Hint is { } hint && IncludedAngleWords.Explain(axle, UnitSystem.Metric) is { } text
            ? new IncludedAngleHintResponse { Hint = hint, Text = text }
            : null;

    private static List<AngleComparisonResponse> Comparisons(CarAxle axle, AxleTargetsDocument? targets, AxleAngles angles)
    {
        var list = new List<AngleComparisonResponse>();
        if (targets is null) return list;
        EachWheel("camberDeg", targets.CamberDeg, wheel => wheel.CamberDeg);
        EachWheel("casterDeg", targets.CasterDeg, wheel => wheel.CasterDeg);
        EachWheel("toeDeg", targets.ToeDeg, wheel => wheel.ToeDeg);
        EachWheel("steeringAxisInclinationDeg", targets.SteeringAxisInclinationDeg, wheel => wheel.SteeringAxisInclinationDeg);
        Add("totalToeDeg", targets.TotalToeDeg, angles.TotalToeDeg, null);
        Add("crossCamberDeg", targets.CrossCamberDeg, angles.CrossCamberDeg, null);
        Add("crossCasterDeg", targets.CrossCasterDeg, angles.CrossCasterDeg, null);
        return list;

        void EachWheel(string angle, AngleRangeDocument? range, Func<WheelAngles, double?> value)
        {
            Add(angle, range, value(angles.Left), WheelSide.Left);
            Add(angle, range, value(angles.Right), WheelSide.Right);
        }

        void Add(string angle, AngleRangeDocument? range, double? value, WheelSide? side)
        {
            if (range is null) return;
            var outside = AnglesAtRide.OutsideBy(value, range.From, range.To);
            list.Add(new()
            {
                Axle = axle,
                Side = side,
                Angle = angle,
                ValueDeg = value,
                RangeDeg = new() { From = range.From, To = range.To },
                IsWithin = outside is { } by ? by == 0 : null,
                OutsideByDeg = outside,
            });
        }
    }

    private static List<Assumption> Assumptions(AlignmentRequest request)
    {
        var list = new List<Assumption>();
        if (request.MeasuringDiameterMm is null) list.Add(SweepAssumptions.MeasuringDiameter);
        AddMirrored(list, Front, request.Vehicle.Front?.Alignment);
        AddMirrored(list, Rear, request.Vehicle.Rear?.Alignment);
        return list;
    }

    private static void AddMirrored(List<Assumption> list, string place, AlignmentDocument? angles)
    {
        if (angles is null) return;
        string[] taken =
        [
            .. new[]
            {
                ("camberDeg", angles.CamberDeg, angles.Right?.CamberDeg), ("casterDeg", angles.CasterDeg, angles.Right?.CasterDeg), ("toeDeg", angles.ToeDeg, angles.Right?.ToeDeg),
                ("steeringAxisInclinationDeg", angles.SteeringAxisInclinationDeg, angles.Right?.SteeringAxisInclinationDeg),
            }.Where(one => one.Item2 is not null && one.Item3 is null).Select(one => one.Item1),
        ];
        if (taken.Length > 0)
            list.Add(new(place + "/alignment/right", null, "as the left: " + string.Join(", ", taken), "the contract's convention", "The right wheel's angles are given only where they differ; a wheel that was not measured shows no difference between the sides."));
    }
}
