using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Cautions;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>The cautions of a diagnosis: the tyres' own first, then those of the work it leads to.</summary>
public static class WearDiagnosisCautions
{
    private const double Likely = 0.2;

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Caution> Of(IReadOnlyList<TyreCondition> tyres, WearDiagnosis diagnosis, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(diagnosis);
        var list = new List<Caution>(TyreCautions.Of(tyres, units));
        list.Add(new("notAnInspection", "A diagnosis by numbers names no cause with certainty and sees no damage it is not told of. Have a tyre professional look at tyres that worry you; local law decides what may be driven."));
        if (Has(diagnosis, WearCause.LowNegativeCamber, WearCause.HighNegativeCamber, WearCause.ToeIn, WearCause.ToeOut, WearCause.AxleMisaligned))
        {
            list.Add(new("alignAfterwards", "Changing camber or toe changes the other. Have the alignment measured and set after it, and fasteners tightened to the vehicle maker's torque at ride height; drive carefully until that is done. Whether a setting is allowed on the road is for local law."));
            list.Add(new("innerShoulder", "With more negative camber look at the inner shoulder often, on a lift: worn to the cords there a tyre can burst while its outside looks good."));
        }

        if (Has(diagnosis, WearCause.UnderInflation, WearCause.OverInflation))
            list.Add(new("pressureForLoad", "Never set a pressure below what the car's plate asks for its load; set road pressures again before driving home."));
        if (Has(diagnosis, WearCause.WeakDamping)) list.Add(CommonCautions.SpringsUnderLoad);
        if (Has(diagnosis, WearCause.WheelLocking))
            list.Add(new("brakes", "Work on brakes is for those trained to it; test them at low speed, away from traffic, before driving."));
        return list;
    }

    private static bool Has(WearDiagnosis diagnosis, params ReadOnlySpan<WearCause> causes)
    {
        foreach (var finding in diagnosis.Causes)
        {
            if (finding.Probability >= Likely && causes.Contains(finding.Cause)) return true;
        }

        return false;
    }
}
