using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Faults;

namespace SetupService.Api.Vehicles;

/// <summary>One change of a car: values set, parts taken off, and whether it is to stand as before. At least one of vehicle, remove and keepRideHeight says something.</summary>
public sealed record CarChangeDocument : IKeepsFaults
{
    /// <summary>The most parts one change takes off.</summary>
    public const int MostRemoved = 16;

    /// <summary>What the caller calls it.</summary>
    [StringLength(80)]
    [Sample("front springs 40 N/mm")]
    public string? Label { get; set; }

    /// <summary>The members set; the rest stays as it is.</summary>
    public VehicleChange? Vehicle { get; set; }

    /// <summary>Parts taken off, each as a JSON Pointer within the vehicle: an anti-roll bar, a bump stop, a spacer (spacerMm of a wheel), aerodynamic parts. A part taken off counts as none; one never given is not the same, it is assumed as typical.</summary>
    [StringLength(100)]
    [Count(0, MostRemoved)]
    [Sample("/front/antiRollBar")]
    public string[]? Remove { get; set; }

    /// <summary>Whether the spring seats are trimmed so that the body stands as high as before, whatever springs, masses and tyres do; false where left out.</summary>
    [Sample(false)]
    public bool? KeepRideHeight { get; set; }

    IReadOnlyList<Fault>? IKeepsFaults.Faults { get; set; }
}
