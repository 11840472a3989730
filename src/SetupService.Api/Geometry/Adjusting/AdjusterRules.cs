using FluentValidation;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Vehicles;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>What each adjuster named must keep: the suspension has it, and its amounts are of its unit.</summary>
internal static class AdjusterRules
{
    /// <summary>An eccentric's largest throw, as a share of the distance of the bolts: it turns the knuckle by 30°.</summary>
    public const double MostThrow = 0.5;

    public static void Check(ValidationContext<AdjustmentRequest> context, string member, IReadOnlyList<AdjusterDocument?>? documents, AdjustmentRequest request)
    {
        if (documents is null) return;
        var suspension = SuspensionMapper.Read(request.Suspension);
        var seen = new HashSet<(Adjuster, int?)>();
        for (var i = 0; i < documents.Count; i++)
        {
            if (documents[i] is not { } one) continue;
            var place = FormattableString.Invariant($"{member}[{i}]");
            if (context.IsRefused($"{place}.Adjuster")) continue;
            var word = EnumNames<Adjuster>.Of(one.Adjuster);
            if (suspension is not null) CheckKind(context, place, word, one.Adjuster, suspension);
            CheckLink(context, place, one);
            CheckBolts(context, place, one);
            CheckAmounts(context, place, one);

            // A fault of an adjuster as a whole hides later ones of its members, so these come last.
            CheckThrow(context, place, one);
            CheckOnce(context, place, one, word, seen);
            if (request.ResetToe == true && IsTieRod(one))
                context.Add(place, FaultCodes.Inconsistent, $"resetToe sets the length of the tie rod or toe link itself; it would undo {word}.");
        }
    }

    private static void CheckKind(ValidationContext<AdjustmentRequest> context, string place, string? word, Adjuster adjuster, Hardpoints suspension)
    {
        if (Adjusters.Has(suspension, adjuster)) return;
        var others = EnumNames<Adjuster>.List.Where((_, index) => Adjusters.Has(suspension, (Adjuster)index));
        context.Add($"{place}.Adjuster", FaultCodes.Inconsistent, $"this kind of suspension has no {word}; it has: {string.Join(", ", others)}.");
    }

    /// <summary>The fifth link is the tie rod or toe link, so its length has two names.</summary>
    private static void CheckOnce(
        ValidationContext<AdjustmentRequest> context, string place, AdjusterDocument one, string? word, HashSet<(Adjuster, int?)> seen)
    {
        if (context.IsRefused($"{place}.Link") || seen.Add(KeyOf(one))) return;
        var name = one is { Adjuster: Adjuster.LinkLength, Link: { } link } ? FormattableString.Invariant($"{word} of link {link}") : word;
        context.Add(place, FaultCodes.Inconsistent, IsTieRod(one)
            ? "the tie rod's or toe link's length (tieRodLength, or linkLength of link 5) is adjusted twice; give it once with the whole amount."
            : $"{name} is given twice; give it once with the whole amount.");
    }

    private static (Adjuster, int?) KeyOf(AdjusterDocument one) =>
        IsTieRod(one) ? (Adjuster.TieRodLength, null) : (one.Adjuster, one.Adjuster == Adjuster.LinkLength ? one.Link : null);

    private static bool IsTieRod(AdjusterDocument one) => one is { Adjuster: Adjuster.TieRodLength } or { Adjuster: Adjuster.LinkLength, Link: 5 };

    private static void CheckLink(ValidationContext<AdjustmentRequest> context, string place, AdjusterDocument one)
    {
        var needsLink = one.Adjuster == Adjuster.LinkLength;
        if (needsLink && one.Link is null) context.Add($"{place}.Link", FaultCodes.Required, "linkLength needs link: which of the five, from 1.");
        if (!needsLink && one.Link is not null) context.Add($"{place}.Link", FaultCodes.Inconsistent, "link goes with linkLength only.");
    }

    private static void CheckBolts(ValidationContext<AdjustmentRequest> context, string place, AdjusterDocument one)
    {
        if (one.Adjuster != Adjuster.KnuckleEccentric)
        {
            if (one.BoltSpacingMm is not null) context.Add($"{place}.BoltSpacingMm", FaultCodes.Inconsistent, "boltSpacingMm goes with knuckleEccentric only.");
            if (one.Pivot is not null) context.Add($"{place}.Pivot", FaultCodes.Inconsistent, "pivot goes with knuckleEccentric only.");
            return;
        }

        if (one.BoltSpacingMm is null)
            context.Add($"{place}.BoltSpacingMm", FaultCodes.Required, "knuckleEccentric needs boltSpacingMm: the angle is the throw over the distance of the bolts.");
    }

    private static void CheckThrow(ValidationContext<AdjustmentRequest> context, string place, AdjusterDocument one)
    {
        if (one is { Adjuster: Adjuster.KnuckleEccentric, BoltSpacingMm: { } spacing } && LargestMm(one) is { } largest && largest > MostThrow * spacing)
            context.Add(place, FaultCodes.Inconsistent, FormattableString.Invariant($"a throw of {largest} mm is more than half of the {spacing} mm between the bolts; at most half is taken."));
    }

    private static double? LargestMm(AdjusterDocument one) => one switch
    {
        AdjustmentDocument { AmountMm: { } amount } => Math.Abs(amount),
        AdjusterRoomDocument room => Math.Max(Math.Abs(room.MinimumMm ?? 0), Math.Abs(room.MaximumMm ?? 0)),
        _ => null,
    };

    private static void CheckAmounts(ValidationContext<AdjustmentRequest> context, string place, AdjusterDocument one)
    {
        var word = EnumNames<Adjuster>.Of(one.Adjuster);
        var isAngle = one.Adjuster is Adjuster.HubShimCamber or Adjuster.HubShimToe;
        if (one is AdjustmentDocument adjustment)
        {
            if ((isAngle ? adjustment.AmountDeg : adjustment.AmountMm) is null)
                context.Add($"{place}.Amount{(isAngle ? "Deg" : "Mm")}", FaultCodes.Required, $"{word} needs amount{(isAngle ? "Deg" : "Mm")}: how far it is adjusted.");
            CheckUnit(isAngle ? adjustment.AmountMm : adjustment.AmountDeg, "Amount");
        }

        if (one is not AdjusterRoomDocument room) return;
        CheckUnit(isAngle ? room.MinimumMm : room.MinimumDeg, "Minimum");
        CheckUnit(isAngle ? room.MaximumMm : room.MaximumDeg, "Maximum");
        TargetRules.CheckOrder(context, place, room.MinimumMm, room.MaximumMm, "mm");
        TargetRules.CheckOrder(context, place, room.MinimumDeg, room.MaximumDeg, "deg");

        void CheckUnit(double? ofOtherUnit, string name)
        {
            if (ofOtherUnit is null) return;
            var member = name + (isAngle ? "Mm" : "Deg");
            context.Add($"{place}.{member}", FaultCodes.Inconsistent, $"{char.ToLowerInvariant(member[0])}{member[1..]} does not go with {word}, whose amounts are in {(isAngle ? "degrees" : "mm")}.");
        }
    }
}
