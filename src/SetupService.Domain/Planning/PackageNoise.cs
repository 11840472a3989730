namespace SetupService.Domain.Planning;

/// <summary>
/// How much louder than the car as given a package makes it, by what is told of its parts: the hardest joint among them, and what the tyres' labels say. Stiffer springs and dampers
/// are told by the ride frequency. The weights are judgement; a label tells noise outside the car. Method page: docs/methods/plan.
/// </summary>
/// <param name="Joint">The hardest joint among its parts; null = none of them has one.</param>
/// <param name="TyreChangeDb">By how much the loudest of its tyres is louder than those fitted, dB; null = it has no other tyre.</param>
/// <param name="Untold">Places of the parts whose joint or label was not told.</param>
public sealed record PackageNoise(PartJoint? Joint, double? TyreChangeDb, IReadOnlyList<int> Untold)
{
    /// <summary>A difference of label that counts like the next harder kind of joint, dB; judgement.</summary>
    public const double StepDb = 3;

    /// <summary>Steps a package counts for of which it was not told how loud it is: those of a metal joint, so that nothing told is not taken for silence; judgement.</summary>
    public const double UntoldSteps = (double)PartJoint.Solid;

    /// <summary>Steps above the car as given; negative = quieter. Null where a part's joint or label was not told.</summary>
    public double? Steps => Untold.Count > 0 ? null : (double)(Joint ?? PartJoint.Rubber) + ((TyreChangeDb ?? 0) / StepDb);

    /// <summary>What is told of a package.</summary>
    /// <param name="parts">The parts on offer.</param>
    /// <param name="package">The package.</param>
    /// <param name="fittedDb">Noise on the label of the tyres fitted now, dB; null = nobody said.</param>
    public static PackageNoise From(IReadOnlyList<OfferedPart> parts, in PartPackage package, double? fittedDb)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var (joint, changeDb, untold) = ((PartJoint?)null, (double?)null, new List<int>());
        foreach (var place in package.Places())
        {
            var part = parts[place];
            if (OfferedPart.HasJoint(part.Kind))
            {
                if (part.Joint is not { } own) untold.Add(place);
                else if (!(joint >= own)) joint = own;
            }
            else if (part.Kind == PartKind.Tyre && (part.ChangeNumber >= 0 || part.NoiseDb is not null))
            {
                if (part.NoiseDb - fittedDb is not { } ownDb) untold.Add(place);
                else if (!(changeDb >= ownDb)) changeDb = ownDb;
            }
        }

        return new(joint, changeDb, untold);
    }
}
