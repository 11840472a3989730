using SetupService.Domain.Answers;

namespace SetupService.Domain.Suspension.Readings;

/// <summary>Says which inputs of a measured corner can hardly both be right, each caution naming both by their JSON pointers.</summary>
public static class SuspectInputCautions
{
    /// <summary>One caution.</summary>
    /// <param name="input">What was found.</param>
    /// <param name="readings">The readings it was found in.</param>
    /// <param name="axle">JSON pointer of what holds <c>suspension</c> and <c>alignment</c>; empty at the top of a body.</param>
    /// <param name="units">Units of the sentence.</param>
    public static Caution Describe(in SuspectInput input, CornerReadings readings, string axle, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(readings);
        var all = $"{axle}/suspension/{readings.TravelMember}";
        return input.Kind switch
        {
            SuspectInputKind.StatedCamber => new("statedCamberUnlikeReadings", StatedCamberText(input, all, axle + "/alignment/camberDeg", units)),
            SuspectInputKind.Caster => new("statedCasterUnlikeReadings", AxisText(input, "caster", axle, "casterDeg", units)),
            SuspectInputKind.Inclination => new("statedInclinationUnlikeReadings", AxisText(input, "inclination", axle, "steeringAxisInclinationDeg", units)),
            SuspectInputKind.CamberGain => new("camberGainUnusual", Prose.Write(
                units,
                $"Camber goes {input.GivenDeg:deg} more positive in bump over all of {all}; struts and wishbones usually go negative (common practice, no source). Check the signs of travelMm (positive in bump) and of camberDeg (negative with the top inboard).")),
            _ => Turned(input, readings, all, axle, units),
        };
    }

    private static string StatedCamberText(in SuspectInput input, string all, string stated, UnitSystem units) =>
        Prose.Write(units, $"The stated camber of {input.GivenDeg:deg} ({stated}) and the {input.ExpectedDeg:deg} that the readings give at ride height ({all}) are further apart than {input.AllowedDeg:deg}, which is more than the gauge's error. ")
        + (input.IsSignTurned ? "They agree with the sign of one turned: negative camber is top inboard. " : "")
        + "The curve keeps to the readings; correct the one that is wrong.";

    private static string AxisText(in SuspectInput input, string name, string axle, string member, UnitSystem units) =>
        Prose.Write(units, $"The stated {name} of {input.GivenDeg:deg} ({axle}/alignment/{member}) and the {input.ExpectedDeg:deg} that the readings on turn plates give ({axle}/suspension/steerReadings) are further apart than {input.AllowedDeg:deg}, which is more than the gauge's error. ")
        + (input.IsSignTurned ? "They agree with one sign turned: check the sign of the stated angle and of every steerDeg. " : "")
        + "The stated angle is used; correct the one that is wrong.";

    private static Caution Turned(in SuspectInput input, CornerReadings readings, string all, string axle, UnitSystem units)
    {
        var place = FormattableString.Invariant($"{all}/{input.Reading ?? 0}");
        var (code, member, advice) = input.Kind switch
        {
            SuspectInputKind.CamberSign => ("camberSignUnlikely", $"{place}/camberDeg", "It agrees with the sign of its camber turned: negative is top inboard."),
            SuspectInputKind.TravelSign => ("travelSignUnlikely", $"{place}/travelMm", "It agrees with the sign of its travel turned: positive is bump."),
            _ => ("travelOrCamberSignUnlikely", $"{place}/travelMm or {place}/camberDeg", "It agrees with the sign of its travel or of its camber turned: positive travel is bump, negative camber is top inboard."),
        };
        var others = readings.StatedCamberDeg is null ? $"the other readings ({all})" : $"the other readings ({all}) and the stated camber ({axle}/alignment/camberDeg)";
        var travelMm = readings.Travel[input.Reading ?? 0].TravelMm;
        return new(code, Prose.Write(
            units,
            $"The camber of {input.GivenDeg:deg} read at {travelMm:mm} ({(readings.IsTable ? all : member)}) does not agree with {others}, which give {input.ExpectedDeg:deg} there. ") + advice + " Correct it and ask again.");
    }
}
