using SetupService.Domain.Fitment;

namespace SetupService.Api.Drawings;

/// <summary>Names of the checks in running text.</summary>
internal static class CheckNames
{
    public static string Of(CheckId id) => id switch
    {
        CheckId.InboardClearance => "room inboard",
        CheckId.OutboardClearance => "room outboard",
        CheckId.RadialClearance => "room over the tread",
        CheckId.FullLockClearance => "room at full lock",
        CheckId.SpringSeatClearance => "room at the spring seat",
        CheckId.RimDiameter => "rim diameter",
        CheckId.RimWidth => "rim width",
        CheckId.LoadCapacity => "load capacity",
        CheckId.SpeedRating => "speed symbol",
        CheckId.WheelLoadRating => "wheel load rating",
        CheckId.BoltCircle => "bolt circle",
        CheckId.CentreBore => "centre bore",
        CheckId.Fastener => "fasteners",
        CheckId.BrakeClearance => "room over the brake",
        CheckId.AxleDiameterMatch => "front against rear diameter",
        CheckId.OverallDiameter => "overall diameter",
        _ => "arch cover",
    };

    /// <summary>The names of a set in the order of the checks, with commas.</summary>
    public static string List(CheckIdSet checks)
    {
        var names = new List<string>(checks.Count);
        for (var id = CheckId.InboardClearance; id <= CheckId.ArchCover; id++)
        {
            if (checks.Contains(id)) names.Add(Of(id));
        }

        return string.Join(", ", names);
    }
}
