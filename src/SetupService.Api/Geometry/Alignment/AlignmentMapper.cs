using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Geometry.Alignment;
using SetupService.Domain.Suspension;
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
        problem = Problem(vehicle.Front, Front) ?? Problem(vehicle.Rear, Rear);
        if (problem is not null) return null;
        var figures = new AlignmentFigures(Angles(vehicle.Front), Angles(vehicle.Rear));
        var diameterMm = request.MeasuringDiameterMm ?? AxleInputs.DefaultMeasuringDiameterMm;
        return new AlignmentAnswer
        {
            Front = Axle(figures.Front, diameterMm),
            Rear = Axle(figures.Rear, diameterMm),
            Comparisons = [.. Comparisons(CarAxle.Front, request.Targets?.Front, figures.Front), .. Comparisons(CarAxle.Rear, request.Targets?.Rear, figures.Rear)],
            ThrustAngleDeg = figures.ThrustAngleDeg,
            SteerAheadDeg = figures.SteerAheadDeg,
            FrontLeftToeToThrustLine = ToeResponse.Of(ToeFigures.Of(figures.FrontLeftToeToThrustLineDeg, diameterMm)),
            FrontRightToeToThrustLine = ToeResponse.Of(ToeFigures.Of(figures.FrontRightToeToThrustLineDeg, diameterMm)),
            SetbackAngleDeg = (request.SetbackMm, vehicle.Front.TrackMm) is ({ } setbackMm, { } trackMm) ? AlignmentFigures.SetbackAngleDeg(setbackMm, trackMm) : null,
            MeasuringDiameterMm = diameterMm,
            Unknown = Gaps(request, vehicle, figures),
            Method = "alignment",
            Edition = Edition.Current,
            Assumptions = AssumptionResponse.Of(Assumptions(request)),
            Cautions = CautionResponse.Of(AlignmentCautions.For(figures)),
        };
    }

    private static Problem? Problem(Axle axle, string place)
    {
        if (axle.RideHeightChangeMm is null or 0 || (AtRide(axle, axle.Left) is not null && AtRide(axle, axle.Right) is not null)) return null;
        const string Reason = "how the angles change with ride height needs the suspension's points, or readings that reach this height; measure the angles as the car stands and leave rideHeightChangeMm out.";
        return Http.Problems.Problem.NotComputable($"The angles at this ride height are not known: {Reason}", [Fault.At(place + "/rideHeightChangeMm", FaultCodes.Unreachable, Reason)]);
    }

    /// <summary>The angles as the car stands: as stated, and where the body stands higher or lower than there, moved with the suspension.</summary>
    private static AxleAngles Angles(Axle axle) => new(Angles(axle, axle.Left), Angles(axle, axle.Right));

    private static WheelAngles Angles(Axle axle, WheelAlignment stated)
    {
        var (change, isMoved) = axle.RideHeightChangeMm is null or 0 ? (default, false) : (AtRide(axle, stated)!.Value, true);
        return new()
        {
            CamberDeg = isMoved ? stated.CamberDeg + change.CamberDeg : stated.CamberDeg,
            CasterDeg = isMoved ? stated.CasterDeg + change.CasterDeg : stated.CasterDeg,
            ToeDeg = isMoved ? stated.ToeDeg + change.ToeDeg : stated.ToeDeg,
            SteeringAxisInclinationDeg = isMoved ? stated.SteeringAxisInclinationDeg + change.SteeringAxisInclinationDeg : stated.SteeringAxisInclinationDeg,
        };
    }

    /// <summary>By how much the angles at the present ride height differ from those stated; null where that is not known.</summary>
    private static WheelAngles? AtRide(Axle axle, WheelAlignment stated)
    {
        var setup = new WheelSetup { CamberDeg = stated.CamberDeg, ToeDeg = stated.ToeDeg, RideHeightChangeMm = axle.RideHeightChangeMm ?? 0 };
        if (SuspensionTracker.Start(axle.Suspension, setup with { RideHeightChangeMm = 0 })?.AtRide is not { } there) return null;
        if (SuspensionTracker.Start(axle.Suspension, setup)?.AtRide is not { } here) return null;
        return new WheelAngles
        {
            CamberDeg = here.CamberDeg - there.CamberDeg,
            CasterDeg = here.CasterDeg - there.CasterDeg,
            ToeDeg = here.ToeDeg - there.ToeDeg,
            SteeringAxisInclinationDeg = here.SteeringAxisInclinationDeg - there.SteeringAxisInclinationDeg,
        };
    }

    private static AxleAlignmentResponse Axle(in AxleAngles axle, double diameterMm)
    {
        var left = ToeFigures.Of(axle.Left.ToeDeg, diameterMm);
        var right = ToeFigures.Of(axle.Right.ToeDeg, diameterMm);
        return new AxleAlignmentResponse
        {
            TotalToe = ToeResponse.Of(left + right),
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
        Toe = ToeResponse.Of(toe),
        IncludedAngleDeg = wheel.IncludedAngleDeg,
    };

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
            var outside = value is not { } known ? (double?)null : known < range.From ? known - range.From : known > range.To ? known - range.To : 0;
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
        if (request.MeasuringDiameterMm is null) list.Add(GeometryAssumptions.MeasuringDiameter);
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

    private static UnknownResponse[] Gaps(AlignmentRequest request, Vehicle vehicle, AlignmentFigures figures)
    {
        var gaps = new List<UnknownResponse>();
        AddAxle("/front", figures.Front);
        AddAxle("/rear", figures.Rear);
        var (front, rear) = (Toe("/front", figures.Front.Right), Toe("/rear", figures.Rear.Right));
        var (frontLeft, rearLeft) = (Toe("/front", figures.Front.Left), Toe("/rear", figures.Rear.Left));
        Add("/thrustAngleDeg", rearLeft, rear);
        Add("/steerAheadDeg", frontLeft, front, rearLeft, rear);
        Add("/frontLeftToeToThrustLine", frontLeft, rearLeft, rear);
        Add("/frontRightToeToThrustLine", front, rearLeft, rear);
        Add("/setbackAngleDeg", ("/setbackMm", request.SetbackMm), (Front + "/trackMm", vehicle.Front.TrackMm));
        return [.. gaps];

        void AddAxle(string axle, AxleAngles angles)
        {
            var (left, right) = (angles.Left, angles.Right);
            Add(axle + "/totalToe", Toe(axle, left), Toe(axle, right));
            Add(axle + "/crossCamberDeg", Camber(axle, left), Camber(axle, right));
            Add(axle + "/crossCasterDeg", Caster(axle, left), Caster(axle, right));
            Add(axle + "/crossSteeringAxisInclinationDeg", Inclination(axle, left), Inclination(axle, right));
            foreach (var output in new[] { "/crossIncludedAngleDeg", "/includedAngleHint" })
                Add(axle + output, Camber(axle, left), Inclination(axle, left), Camber(axle, right), Inclination(axle, right));
            AddWheel(axle, axle + "/left", left);
            AddWheel(axle, axle + "/right", right);
        }

        void AddWheel(string axle, string wheel, WheelAngles angles)
        {
            Add(wheel + "/camberDeg", Camber(axle, angles));
            Add(wheel + "/casterDeg", Caster(axle, angles));
            Add(wheel + "/steeringAxisInclinationDeg", Inclination(axle, angles));
            Add(wheel + "/toe", Toe(axle, angles));
            Add(wheel + "/includedAngleDeg", Camber(axle, angles), Inclination(axle, angles));
        }

        void Add(string output, params ReadOnlySpan<(string Input, double? Value)> inputs)
        {
            var missing = new List<string>();
            foreach (var (input, value) in inputs)
            {
                if (value is null && !missing.Contains(input)) missing.Add(input);
            }

            if (missing.Count > 0) gaps.Add(UnknownResponse.Of(output, Needs.Of(missing), [.. missing]));
        }
    }

    // What is not given for the right is as on the left, so what lacks is the left's.
    private static (string Input, double? Value) Toe(string axle, in WheelAngles angles) => ($"/vehicle{axle}/alignment/toeDeg", angles.ToeDeg);

    private static (string Input, double? Value) Camber(string axle, in WheelAngles angles) => ($"/vehicle{axle}/alignment/camberDeg", angles.CamberDeg);

    private static (string Input, double? Value) Caster(string axle, in WheelAngles angles) => ($"/vehicle{axle}/alignment/casterDeg", angles.CasterDeg);

    private static (string Input, double? Value) Inclination(string axle, in WheelAngles angles) =>
        ($"/vehicle{axle}/alignment/steeringAxisInclinationDeg", angles.SteeringAxisInclinationDeg);
}
