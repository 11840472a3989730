using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Geometry.Alignment;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Geometry.Alignment;

/// <summary>Answers for an alignment.</summary>
internal static class AlignmentAnswers
{
    /// <summary>The answer; every part of the request may be missing.</summary>
    public static AlignmentAnswer Of(AlignmentRequest request)
    {
        var figures = AlignmentReading.Read(request);
        var diameterMm = request.MeasuringDiameterMm ?? AxleInputs.DefaultMeasuringDiameterMm;
        return new AlignmentAnswer
        {
            Front = Axle(figures.Front, diameterMm),
            Rear = Axle(figures.Rear, diameterMm),
            ThrustAngleDeg = figures.ThrustAngleDeg,
            SteerAheadDeg = figures.SteerAheadDeg,
            FrontLeftToeToThrustLine = ToePart.Of(ToeFigures.Of(figures.FrontLeftToeToThrustLineDeg, diameterMm)),
            FrontRightToeToThrustLine = ToePart.Of(ToeFigures.Of(figures.FrontRightToeToThrustLineDeg, diameterMm)),
            SetbackAngleDeg = request is { SetbackMm: { } setbackMm, FrontTrackMm: { } trackMm } ? AlignmentFigures.SetbackAngleDeg(setbackMm, trackMm) : null,
            MeasuringDiameterMm = diameterMm,
            Unknown = AlignmentGaps.Of(request, figures),
            Method = "alignment",
            Edition = Edition.Current,
            Assumptions = request.MeasuringDiameterMm is null ? AssumptionResponse.Of([GeometryAssumptions.MeasuringDiameter]) : [],
            Cautions = CautionResponse.Of(AlignmentCautions.For(figures)),
        };
    }

    private static AxleAlignmentPart Axle(in AxleAngles axle, double diameterMm)
    {
        var left = ToeFigures.Of(axle.Left.ToeDeg, diameterMm);
        var right = ToeFigures.Of(axle.Right.ToeDeg, diameterMm);
        return new AxleAlignmentPart
        {
            TotalToe = ToePart.Of(left + right),
            CrossCamberDeg = axle.CrossCamberDeg,
            CrossCasterDeg = axle.CrossCasterDeg,
            CrossSteeringAxisInclinationDeg = axle.CrossInclinationDeg,
            CrossIncludedAngleDeg = axle.CrossIncludedAngleDeg,
            IncludedAngleHint = Hint(axle),
            Left = new WheelAlignmentPart { Toe = ToePart.Of(left), IncludedAngleDeg = axle.Left.IncludedAngleDeg },
            Right = new WheelAlignmentPart { Toe = ToePart.Of(right), IncludedAngleDeg = axle.Right.IncludedAngleDeg },
        };
    }

    // Its sentences hold degrees only, which no choice of units changes.
    private static IncludedAngleHintPart? Hint(in AxleAngles axle) =>
        axle.Hint is { } hint && IncludedAngleWords.Explain(axle, UnitSystem.Metric) is { } text
            ? new IncludedAngleHintPart { Hint = hint, Text = text }
            : null;
}
