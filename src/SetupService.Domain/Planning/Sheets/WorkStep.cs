using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Planning.Sheets;

/// <summary>The part of a job a step belongs to, in the order they are done.</summary>
public enum WorkStage
{
    /// <summary>Before anything is undone.</summary>
    Prepare,

    /// <summary>Taking apart, once for all parts on the same strip-down.</summary>
    Strip,

    /// <summary>Fitting the new parts.</summary>
    Renew,

    /// <summary>Putting back together.</summary>
    Refit,

    /// <summary>What may be tightened only with the car standing at ride height.</summary>
    AtRideHeight,

    /// <summary>Setting pressures and alignment.</summary>
    SetUp,

    /// <summary>Checking before and after the first drive.</summary>
    Check,
}

/// <summary>One step of a job.</summary>
/// <param name="Stage">The part of the job it belongs to.</param>
/// <param name="Axle">At which axle; null = at the whole car, or where nobody told the axle.</param>
/// <param name="Text">What to do.</param>
/// <param name="Parts">The parts it is about.</param>
/// <param name="Fasteners">What is tightened in it.</param>
/// <param name="Cautions">Codes of the cautions to read before it.</param>
public sealed record WorkStep(WorkStage Stage, CarAxle? Axle, string Text, IReadOnlyList<string> Parts, IReadOnlyList<FastenerTorque> Fasteners, IReadOnlyList<string> Cautions);

/// <summary>A torque to tighten with.</summary>
/// <param name="Fastener">What is tightened.</param>
/// <param name="Axle">At which axle; null = at both alike, or where nobody told the axle.</param>
/// <param name="TorqueNm">The caller's own figure, N m; null = see the maker's figure.</param>
public readonly record struct FastenerTorque(Fastener Fastener, CarAxle? Axle, double? TorqueNm);
