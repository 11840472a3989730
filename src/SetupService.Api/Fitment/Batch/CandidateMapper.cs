using SetupService.Api.Http;
using SetupService.Api.Http.Faults;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Cars;

namespace SetupService.Api.Fitment.Batch;

/// <summary>Maps the candidate of a line or row.</summary>
internal static class CandidateMapper
{
    private static readonly Refusal Nothing = new(Fault.At(
        "/candidate", FaultCodes.Required, "candidate is missing: give it, or the wheel and tyre for the front, the rear or both."));

    private static readonly Refusal Both = new(Fault.At(
        "/candidate", FaultCodes.Inconsistent, "candidate stands beside front or rear: give the one, or the others."));

    /// <summary>The candidate; refused with every fault of its parts, where it has none, and where it names axles and none at once.</summary>
    public static MapResult<CarCandidate> Map(BatchCandidateLine line)
    {
        if (line is { Candidate: { } only, Front: null, Rear: null })
            return FitmentMapper.Map(only).TryGet(out var fitting, out var found) ? new CarCandidate(fitting) : found.Under("candidate");
        if (line is { Candidate: null, Front: null, Rear: null })
            return Nothing;
        var refusal = line.Candidate is not null ? Both : null;
        Map(line.Candidate, "candidate", ref refusal);
        var front = Map(line.Front, "front", ref refusal);
        var rear = Map(line.Rear, "rear", ref refusal);
        if (refusal is not null)
            return refusal;
        return new CarCandidate(front, rear);
    }

    private static Fitting? Map(FittingDocument? document, string member, ref Refusal? refusal) =>
        document is null ? null : Known(FitmentMapper.Map(document), member, ref refusal);

    private static Fitting? Known(MapResult<Fitting> result, string member, ref Refusal? refusal)
    {
        var fitting = result.Take(member, ref refusal);
        return result.Refusal is null ? fitting : null;
    }
}
