using SetupService.Api.Fitment.Check;
using SetupService.Api.Http;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Tyres;
using SetupService.Api.Vehicles;
using SetupService.Api.Wheels;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Fitment.Pictures;

/// <summary>
/// A check in the few members that can be typed into the address of a picture: the wheel and tyre of now and of then, the three gaps,
/// the figures the load needs. It becomes the check's own request, so that picture and check cannot say different things.
/// </summary>
internal static class CompactQuery
{
    private const int LongestFitting = WheelMarkingReader.MaximumLength + TyreMarkingReader.MaximumLength + 2;
    private const string Sample = "8Jx17 ET40 5x108 CB63.4,225/45R17 94W XL";

    private static readonly TextParameter Now = new(
        "now", "The wheel and tyre fitted now: both markings with a comma between.", LongestFitting, "7.5Jx17 ET45 5x108,225/45R17 91W");

    private static readonly TextParameter New = new(
        "new", "The wheel and tyre to be checked: both markings with a comma between.", LongestFitting, Sample)
    {
        IsRequired = true,
    };

    private static readonly EnumParameter Axle = new("axle", "Which axle.", EnumNames<CarAxle>.List, Default: "front");

    private static readonly NumberParameter Inboard = new("in", "Gap inboard, straight ahead, mm.", -100, 500, 14);
    private static readonly NumberParameter Outboard = new("out", "Gap to the arch lip, mm.", -200, 500, 18);
    private static readonly NumberParameter Over = new("over", "Gap over the tread, mm.", -100, 500, 12);
    private static readonly NumberParameter AxleLoad = new("maximumAxleLoadKg", "Largest load the axle may carry.", 50, 5000, 870);
    private static readonly NumberParameter LoadIndex = new("minimumLoadIndex", "Lowest tyre load index the car's papers allow.", 0, 200, 87) { IsWhole = true };
    private static readonly NumberParameter HubBore = new("centreBoreMm", "Diameter of the hub's spigot.", 30, 250, 63.4);

    /// <summary>The members, and the units of the texts.</summary>
    public static QueryParameter[] Parameters { get; } = [New, Now, Axle, Inboard, Outboard, Over, AxleLoad, LoadIndex, TyreQuery.TopSpeedKmh, HubBore, QueryParameters.Units];

    /// <summary>The check asked for; refused with every fault under the name of its parameter.</summary>
    public static MapResult<CheckedFitting> Evaluate(QueryReader query)
    {
        Refusal? refusal = null;
        var candidate = Fitting(New, query.Text(New)!, ref refusal);
        var current = query.Text(Now) is { } now ? Fitting(Now, now, ref refusal) : null;
        if (refusal is not null)
            return refusal;

        var axle = new AxleDocument
        {
            Wheel = current?.Wheel,
            Tyre = current?.Tyre,
            MaximumAxleLoadKg = query.Number(AxleLoad),
            MinimumLoadIndex = (int?)query.Number(LoadIndex),
            Hub = new HubDocument { CentreBoreMm = query.Number(HubBore) },
            Clearance = new ClearanceDocument { InboardMm = query.Number(Inboard), OutboardMm = query.Number(Outboard), RadialMm = query.Number(Over) },
        };
        var position = query.Word<CarAxle>(Axle) ?? CarAxle.Front;
        var vehicle = new VehicleDocument { TopSpeedKmh = query.Number(TyreQuery.TopSpeedKmh) };
        if (position == CarAxle.Front) vehicle.Front = axle;
        else vehicle.Rear = axle;
        var done = CheckedFitting.Evaluate(new CheckRequest { Axle = position, Vehicle = vehicle, Candidate = candidate! });
        return done.Refusal is { } refused ? Refusal.From([.. refused.Select(ToParameter)])! : done;
    }

    /// <summary>The 422 of a picture whose tyre has no dimensions, under the name of the parameter.</summary>
    public static Problem WithoutSize(CheckedFitting done)
    {
        var problem = SizeProblems.NotKnown(("/candidate", done.Candidate.Tyre));
        return problem with { Errors = [.. problem.Errors.Select(ToParameter)] };
    }

    private static Fault ToParameter(Fault fault) => fault with
    {
        Pointer = null,
        Parameter = fault.Pointer!.StartsWith("/candidate", StringComparison.Ordinal) ? New.Name : Now.Name,
    };

    /// <summary>Both markings of a pair. Either may have commas of its own (7,5Jx17), so the comma counts that leaves two markings that can be read.</summary>
    private static FittingDocument? Fitting(TextParameter parameter, string text, ref Refusal? refusal)
    {
        (string Wheel, string Tyre)? pair = null;
        for (var comma = text.IndexOf(','); comma >= 0; comma = text.IndexOf(',', comma + 1))
        {
            var (wheel, tyre) = (text[..comma].Trim(), text[(comma + 1)..].Trim());
            var (readsWheel, readsTyre) = (WheelMarkingReader.Read(wheel).TryGet(out _, out _), TyreMarkingReader.Read(tyre).TryGet(out _, out _));
            if (pair is null || readsWheel || readsTyre) pair = (wheel, tyre);
            if (readsWheel && readsTyre) break;
        }

        if (pair is { } both)
            return new FittingDocument { Wheel = new WheelDocument { Marking = both.Wheel }, Tyre = new TyreDocument { Marking = both.Tyre } };
        var fault = new Refusal(Fault.ForParameter(
            parameter.Name, FaultCodes.Unreadable, $"{parameter.Name} is {TokenText.Quote(text)}; the markings of a wheel and a tyre are needed, with a comma between: {Sample}."));
        refusal = refusal?.And(fault) ?? fault;
        return null;
    }
}
