using FluentValidation;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Api.Geometry.Adjustments;

/// <summary>What an adjustment must keep beyond types and ranges: adjustments or angles wanted, never both, and with each only what goes with it.</summary>
public sealed class AdjustmentRules : AbstractValidator<AdjustmentRequest>
{
    private const string Exclude = "adjustments and the angles wanted exclude each other: ask what adjustments do, or which do it.";

    /// <summary>Makes the rules; they hold no state.</summary>
    public AdjustmentRules()
    {
        this.CornerIsWhole(NeedsSuspension);
        ChooseOne();
        RuleFor(request => request).Custom((request, context) =>
        {
            AdjusterRules.Check(context, "Adjustments", request.Adjustments, request);
            AdjusterRules.Check(context, "Adjusters", request.Adjusters, request);
        });
        RuleFor(request => request.ResetToe).NotEqual(true).When(request => request.Suspension is SemiTrailingArmDocument or TwistBeamDocument)
            .Says(FaultCodes.Inconsistent, "this kind of suspension has no tie rod to reset toe with.");
        RuleFor(request => request.Target!.ToeDeg).Null().When(request => request is { ResetToe: true, Target: not null })
            .Says(FaultCodes.Inconsistent, "resetToe keeps toe as it is; ask for a toe or reset it, not both.");
        RuleFor(request => request.Change!.ToeDeg).Null().When(request => request is { ResetToe: true, Change: not null })
            .Says(FaultCodes.Inconsistent, "resetToe keeps toe as it is; ask for a toe or reset it, not both.");
    }

    /// <summary>An eccentric or a shim turns the wheel in its upright, whatever the suspension is.</summary>
    private static bool NeedsSuspension(AdjustmentRequest request)
    {
        AdjusterDocument?[] used = [.. request.Adjustments ?? [], .. request.Adjusters ?? []];
        return used.Length == 0 || !Array.TrueForAll(used, one => one is { Pivot: null, Adjuster: Adjuster.KnuckleEccentric or Adjuster.HubShimCamber or Adjuster.HubShimToe });
    }

    private void ChooseOne()
    {
        RuleFor(request => request.Adjustments).Must((request, _, context) => IsAdjusted(request, context) || IsWanted(request, context))
            .Says(FaultCodes.Required, "adjustments, target or change is needed: what is adjusted, or the angles wanted.");
        RuleFor(request => request.Target).Must((request, _, context) => !(IsTargeted(request, context) && IsAdjusted(request, context))).Says(FaultCodes.Inconsistent, Exclude);
        RuleFor(request => request.Change).Must((request, _, context) => IsTargeted(request, context) || !(IsChanged(request, context) && IsAdjusted(request, context))).Says(FaultCodes.Inconsistent, Exclude);
        RuleFor(request => request.Change).Must((request, _, context) => !(IsTargeted(request, context) && IsChanged(request, context)))
            .Says(FaultCodes.Inconsistent, "target and change exclude each other: give the angles wanted, or by how much they are to change.");
        RuleFor(request => request.Target).Must(static target => target is not { CamberDeg: null, CasterDeg: null, ToeDeg: null })
            .Says(FaultCodes.Required, "target names no angle; camberDeg, casterDeg or toeDeg is needed.").WhenRead(nameof(AdjustmentRequest.Target));
        RuleFor(request => request.Change).Must(static change => change is not { CamberDeg: null, CasterDeg: null, ToeDeg: null })
            .Says(FaultCodes.Required, "change names no angle; camberDeg, casterDeg or toeDeg is needed.").WhenRead(nameof(AdjustmentRequest.Change));
        RuleFor(request => request.Adjusters).NotNull().When((request, context) => IsWanted(request, context))
            .Says(FaultCodes.Required, "adjusters is needed with target or change: what may be adjusted, and how far.");
        RuleFor(request => request.Adjusters).Null().When((request, context) => !IsWanted(request, context))
            .Says(FaultCodes.Inconsistent, "adjusters goes with target or change: given adjustments are not looked for.");
        RuleFor(request => request.ArchGapMm).Null().When((request, context) => !IsWanted(request, context))
            .Says(FaultCodes.Inconsistent, "archGapMm goes with target or change: given adjustments are not limited.");
    }

    // What was refused was still sent.
    private static bool IsAdjusted(AdjustmentRequest request, ValidationContext<AdjustmentRequest> context) => request.Adjustments is not null || context.IsRefused(nameof(request.Adjustments));

    private static bool IsTargeted(AdjustmentRequest request, ValidationContext<AdjustmentRequest> context) => request.Target is not null || context.IsRefused(nameof(request.Target));

    private static bool IsChanged(AdjustmentRequest request, ValidationContext<AdjustmentRequest> context) => request.Change is not null || context.IsRefused(nameof(request.Change));

    private static bool IsWanted(AdjustmentRequest request, ValidationContext<AdjustmentRequest> context) => IsTargeted(request, context) || IsChanged(request, context);
}

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
            var word = EnumNames<Adjuster>.GetName(one.Adjuster);
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
        AdjusterRangeDocument range => Math.Max(Math.Abs(range.RangeMm?.From ?? 0), Math.Abs(range.RangeMm?.To ?? 0)),
        _ => null,
    };

    private static void CheckAmounts(ValidationContext<AdjustmentRequest> context, string place, AdjusterDocument one)
    {
        var word = EnumNames<Adjuster>.GetName(one.Adjuster);
        var isAngle = one.Adjuster is Adjuster.HubShimCamber or Adjuster.HubShimToe;
        if (one is AdjustmentDocument adjustment)
        {
            if ((isAngle ? adjustment.AmountDeg : adjustment.AmountMm) is null)
                context.Add($"{place}.Amount{(isAngle ? "Deg" : "Mm")}", FaultCodes.Required, $"{word} needs amount{(isAngle ? "Deg" : "Mm")}: how far it is adjusted.");
            CheckUnit(isAngle ? adjustment.AmountMm : adjustment.AmountDeg, "Amount");
        }

        if (one is not AdjusterRangeDocument range) return;
        if ((isAngle ? (object?)range.RangeMm : range.RangeDeg) is not null) AddUnit(isAngle ? "RangeMm" : "RangeDeg");
        CheckOrder("RangeMm", range.RangeMm?.From, range.RangeMm?.To, "mm");
        CheckOrder("RangeDeg", range.RangeDeg?.From, range.RangeDeg?.To, "deg");

        void CheckUnit(double? ofOtherUnit, string name)
        {
            if (ofOtherUnit is not null) AddUnit(name + (isAngle ? "Mm" : "Deg"));
        }

        void AddUnit(string member) => context.Add(
            $"{place}.{member}", FaultCodes.Inconsistent, $"{char.ToLowerInvariant(member[0])}{member[1..]} does not go with {word}, whose amounts are in {(isAngle ? "degrees" : "mm")}.");

        void CheckOrder(string member, double? from, double? to, string unit)
        {
            if (from > to && !context.IsRefused($"{place}.{member}"))
                context.Add($"{place}.{member}", FaultCodes.Inconsistent, FormattableString.Invariant($"from, {from} {unit}, is above to, {to} {unit}."));
        }
    }
}
