using FluentValidation;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Vehicles;
using SetupService.Domain.Geometry.Adjusting;
using SetupService.Domain.Geometry.Suspensions;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>What each adjuster named must keep: the suspension has it, and its amounts are of its unit.</summary>
internal static class AdjusterRules
{
    public static void Check(ValidationContext<AdjustmentRequest> context, string member, IReadOnlyList<AdjusterDocument?>? documents, AdjustmentRequest request)
    {
        if (documents is null) return;
        var suspension = SuspensionReading.Read(request.Suspension);
        var seen = new HashSet<(AdjusterWord, int?)>();
        for (var i = 0; i < documents.Count; i++)
        {
            if (documents[i] is not { } one) continue;
            var place = FormattableString.Invariant($"{member}[{i}]");
            var word = Words<AdjusterWord>.Of(one.Adjuster);
            if (suspension is not null) CheckKind(context, place, word, (Adjuster)one.Adjuster, suspension);
            if (!seen.Add((one.Adjuster, one.Link))) context.Add(place, FaultCodes.Inconsistent, $"{word} is named twice; give it once with the whole amount.");
            if (one.Adjuster == AdjusterWord.TieRodLength && request.ResetToe == true)
                context.Add(place, FaultCodes.Inconsistent, "resetToe sets the tie rod's length itself; it would undo tieRodLength.");
            CheckLink(context, place, one);
            CheckBolts(context, place, one);
            CheckAmounts(context, place, one);
        }
    }

    private static void CheckKind(ValidationContext<AdjustmentRequest> context, string place, string? word, Adjuster adjuster, Suspension suspension)
    {
        if (!Adjusters.Has(suspension, adjuster)) context.Add($"{place}.Adjuster", FaultCodes.Inconsistent, $"this kind of suspension has no {word}.");
    }

    private static void CheckLink(ValidationContext<AdjustmentRequest> context, string place, AdjusterDocument one)
    {
        var needsLink = one.Adjuster == AdjusterWord.LinkLength;
        if (needsLink && one.Link is null) context.Add($"{place}.Link", FaultCodes.Required, "linkLength needs link: which of the five, from 1.");
        if (!needsLink && one.Link is not null) context.Add($"{place}.Link", FaultCodes.Inconsistent, "link goes with linkLength only.");
    }

    private static void CheckBolts(ValidationContext<AdjustmentRequest> context, string place, AdjusterDocument one)
    {
        if (one.Adjuster != AdjusterWord.KnuckleEccentric)
        {
            if (one.BoltSpacingMm is not null) context.Add($"{place}.BoltSpacingMm", FaultCodes.Inconsistent, "boltSpacingMm goes with knuckleEccentric only.");
            if (one.Pivot is not null) context.Add($"{place}.Pivot", FaultCodes.Inconsistent, "pivot goes with knuckleEccentric only.");
            return;
        }

        if (one.BoltSpacingMm is not { } spacing)
        {
            context.Add($"{place}.BoltSpacingMm", FaultCodes.Required, "knuckleEccentric needs boltSpacingMm: the angle is the throw over the distance of the bolts.");
        }
        else if (LargestMm(one) is { } largest && largest >= 0.5 * spacing)
        {
            context.Add(place, FaultCodes.Inconsistent, FormattableString.Invariant($"a throw of {largest} mm is no small part of the {spacing} mm between the bolts; at most half of it is taken."));
        }
    }

    private static double? LargestMm(AdjusterDocument one) => one switch
    {
        AdjustmentDocument { AmountMm: { } amount } => Math.Abs(amount),
        AdjusterRoomDocument room => Math.Max(Math.Abs(room.MinimumMm ?? 0), Math.Abs(room.MaximumMm ?? 0)),
        _ => null,
    };

    private static void CheckAmounts(ValidationContext<AdjustmentRequest> context, string place, AdjusterDocument one)
    {
        var isAngle = one.Adjuster is AdjusterWord.HubShimCamber or AdjusterWord.HubShimToe;
        if (one is AdjustmentDocument adjustment)
        {
            CheckUnit(context, $"{place}.AmountDeg", isAngle, adjustment.AmountDeg is not null, isNeeded: true, "amountDeg");
            CheckUnit(context, $"{place}.AmountMm", !isAngle, adjustment.AmountMm is not null, isNeeded: true, "amountMm");
        }

        if (one is not AdjusterRoomDocument room) return;
        CheckUnit(context, $"{place}.MinimumDeg", isAngle, room.MinimumDeg is not null, isNeeded: false, "minimumDeg");
        CheckUnit(context, $"{place}.MaximumDeg", isAngle, room.MaximumDeg is not null, isNeeded: false, "maximumDeg");
        CheckUnit(context, $"{place}.MinimumMm", !isAngle, room.MinimumMm is not null, isNeeded: false, "minimumMm");
        CheckUnit(context, $"{place}.MaximumMm", !isAngle, room.MaximumMm is not null, isNeeded: false, "maximumMm");
        TargetRules.CheckOrder(context, place, room.MinimumMm, room.MaximumMm);
        TargetRules.CheckOrder(context, place, room.MinimumDeg, room.MaximumDeg);
    }

    private static void CheckUnit(ValidationContext<AdjustmentRequest> context, string place, bool isMeant, bool isGiven, bool isNeeded, string name)
    {
        if (isMeant && isNeeded && !isGiven) context.Add(place, FaultCodes.Required, $"{name} is missing: how far it is adjusted.");
        if (!isMeant && isGiven) context.Add(place, FaultCodes.Inconsistent, $"{name} is of the other unit than this adjuster's amounts.");
    }
}
