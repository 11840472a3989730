using SetupService.Api.Vehicles;

namespace SetupService.Api.Geometry.Alignment;

/// <summary>What was measured at one wheel; what is left out was not, and nothing is carried over from another wheel.</summary>
public sealed record WheelAlignmentDocument : AlignmentAnglesDocument;
