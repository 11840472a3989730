using SetupService.Domain.Answers;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Wear.Cautions;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Diagnosis.Advice;

/// <summary>The cautions of a diagnosis: the tyres' own first, then those of the work it leads to.</summary>
public static class WearDiagnosisCautions
{
    private const double Likely = 0.2;

    // Where no more negative camber is set: what is worn inside is seen as little.
    private static readonly Caution InnerShoulder = new(
        "innerShoulder", "Look at the inner shoulders too, with the car safely on a lift or stands. Worn to the cords there, a tyre can burst while its outside looks good. Local law decides what depth is legal.");

    /// <summary>All.</summary>
    public static IReadOnlyList<Caution> Build(IReadOnlyList<TyreCondition> tyres, WearAdvice advice, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(advice);
        var list = new List<Caution>(TyreCautions.Build(tyres, units));
        if (LowOnAir(advice.Study.Case) is { } low) list.Add(low);
        if (Doubtful(advice.Study.Case) is { } doubtful) list.Add(doubtful);
        if (UnusableTyres.Overloaded(advice.Study.Case.Vehicle, units) is { } overloaded) list.Add(overloaded);
        list.Add(new("notAnInspection", "This is no inspection: a diagnosis from numbers is never certain and cannot see damage. Have a tyre professional look at tyres that worry you; local law decides what may be driven."));
        if (Has(advice, WearCause.LowNegativeCamber, WearCause.HighNegativeCamber, WearCause.ToeIn, WearCause.ToeOut, WearCause.AxleMisaligned))
        {
            var isMore = advice.Axles.Any(axle => axle.Actions.Any(action => action is { CamberDeg: not null, StepDeg: < 0 }));
            foreach (var caution in CamberTargetCautions.Build(CamberToSetDeg(advice))) list.Add(!isMore && caution.Code == InnerShoulder.Code ? InnerShoulder : caution);
        }

        if (Has(advice, WearCause.UnderInflation, WearCause.OverInflation))
            list.Add(new("pressureForLoad", "Never set a pressure below what the load needs, nor drive on the road below what the car's plate states: before driving home set the plate's pressures again, with the tyres cold."));
        if (Has(advice, WearCause.WeakDamping)) list.Add(CommonCautions.SpringsUnderLoad);
        if (Has(advice, WearCause.WheelLocking))
            list.Add(new("brakes", "Leave work on brakes to those trained for it, and test them at low speed, away from traffic, before driving."));
        return list;
    }

    /// <summary>The tyres with far too little air; null where none has.</summary>
    private static Caution? LowOnAir(WearCase wear)
    {
        var low = wear.Tyres.Where(PressureSteps.IsLow).Select(tyre => CorneringWords.Name(tyre.Position)).ToList();
        return low.Count == 0 ? null : new(
            "muchTooLittleAir",
            $"Do not drive on so little air: the {string.Join(" and the ", low)} {(low.Count == 1 ? "tyre has" : "tyres have")} lost a quarter or more of the cold pressure stated. Look for a leak before adding air. A tyre driven like that may be broken inside where nobody sees it: have a tyre professional take it off the rim and judge it.");
    }

    /// <summary>The tyres with so little air that it has to be compared with what they should have; null where none has.</summary>
    private static Caution? Doubtful(WearCase wear)
    {
        var doubtful = wear.Tyres.Where(PressureSteps.IsDoubtful).Select(tyre => CorneringWords.Name(tyre.Position)).ToList();
        return doubtful.Count == 0 ? null : new(
            "pressureToCompare",
            $"Compare the cold pressure of the {string.Join(" and the ", doubtful)} with the car's plate before driving: hardly a car is meant to run on so little, and nobody said what it should be. Where it has lost air, look for the leak first, and have a tyre professional judge a tyre that was driven on like that.");
    }

    /// <summary>The most negative camber that a step leads to, degrees; 0 where none does.</summary>
    private static double CamberToSetDeg(WearAdvice advice)
    {
        var mostDeg = 0.0;
        foreach (var axle in advice.Axles)
        {
            foreach (var action in axle.Actions)
            {
                if (action.CamberDeg is not null) mostDeg = Math.Min(mostDeg, action.SettingDeg ?? 0);
            }
        }

        return mostDeg;
    }

    /// <summary>True where one of some causes is likely and not settled, so that somebody may work on it.</summary>
    private static bool Has(WearAdvice advice, params ReadOnlySpan<WearCause> causes)
    {
        foreach (var finding in advice.Study.Diagnosis.Causes)
        {
            if (finding.Probability >= Likely && causes.Contains(finding.Cause) && !advice.IsSettled(finding)) return true;
        }

        return false;
    }
}
