using System.Globalization;
using nietras.SeparatedValues;
using SetupService.Api.Handling.Turns;
using SetupService.Api.Http.Faults;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>Reads the cornering a request asks for, in any of its three forms, with what is wrong with it.</summary>
internal sealed class BendMixMapper
{
    /// <summary>The least lateral acceleration, g, of the hardest corner: below it a tyre's inclination tells nothing, and no figure of it holds.</summary>
    public const double LeastHardestG = 0.05;

    private readonly CamberTargetRequest _request;
    private readonly List<BendShare> _corners = [];
    private readonly List<(string Place, string Code, string Message)> _faults = [];

    private BendMixMapper(CamberTargetRequest request)
    {
        _request = request;
        if (request.LateralG is { } lateralG) Add("LateralG", lateralG, 100, request.CornerRadiusM, request.SpeedKmh, request.Turn);
        for (var i = 0; i < request.Corners?.Length; i++)
        {
            if (request.Corners[i] is not { } one) continue;
            if (one is { CornerRadiusM: not null, SpeedKmh: not null }) Fault($"Corners[{i}].SpeedKmh", FaultCodes.Inconsistent, "cornerRadiusM and speedKmh exclude each other: with the lateral acceleration one follows from the other.");
            else Add($"Corners[{i}]", one.LateralG, one.SharePct, one.CornerRadiusM, one.SpeedKmh, one.Turn);
        }

        if (request.HistogramCsv is { } csv) Map(csv);
        if (_faults.Count == 0 && Form is { } form && !_corners.Exists(one => one.Demand.LateralG >= LeastHardestG))
            Fault(form, FaultCodes.Inconsistent, FormattableString.Invariant($"no corner has both a share and {LeastHardestG} g of lateral acceleration; without cornering there is nothing to stand flat for."));
    }

    /// <summary>The corners with a share; empty where something is wrong.</summary>
    public IReadOnlyList<BendShare> Corners => _faults.Count > 0 ? [] : _corners;

    /// <summary>What is wrong: where (as a member's path), which kind, why.</summary>
    public IReadOnlyList<(string Place, string Code, string Message)> Faults => _faults;

    /// <summary>Whether a corner is taken as a left one because nothing says which way it turns.</summary>
    public bool IsTurnAssumed { get; private set; }

    /// <summary>Sum of the shares, percent where they are that.</summary>
    public double ShareSum => _corners.Sum(one => one.Share);

    private string? Form => _request.LateralG is not null ? "LateralG" : _request.Corners is { Length: > 0 } ? "Corners" : _request.HistogramCsv is not null ? "HistogramCsv" : null;

    public static BendMixMapper Map(CamberTargetRequest request) => new(request);

    private void Add(string place, double lateralG, double share, double? radiusM, double? speedKmh, TurnDirection? turn, string where = "")
    {
        if (radiusM is null && speedKmh is null) (radiusM, speedKmh) = (_request.CornerRadiusM, _request.SpeedKmh);
        var way = turn ?? _request.Turn ?? TurnDirection.Left;
        if (radiusM is null && speedKmh is null)
        {
            var lacks = place is "LateralG" or "HistogramCsv" ? "CornerRadiusM" : place + ".CornerRadiusM";
            if (!_faults.Exists(one => one.Place == lacks)) Fault(lacks, FaultCodes.Required, where + "cornerRadiusM or speedKmh is needed, here or for all: how tight the corner is, or how fast it is driven.");
            return;
        }

        var demand = radiusM is { } radius ? new CorneringDemand(lateralG, radius, way) : CorneringDemand.AtSpeed(lateralG, speedKmh!.Value, way);
        if (demand.RadiusM < TurnRules.LeastRadiusM)
        {
            Fault(place, FaultCodes.Inconsistent, FormattableString.Invariant($"{where}at {speedKmh} km/h {lateralG} g makes a corner of {demand.RadiusM:0.##} m radius, less than the {TurnRules.LeastRadiusM} m a car can drive."));
            return;
        }

        if (!(share > 0)) return;
        IsTurnAssumed |= turn is null && _request.Turn is null;
        _corners.Add(new(demand, share, IsAtSpeed: radiusM is null));
    }

    private void Map(string csv)
    {
        try
        {
            using var reader = Open(csv);
            var names = reader.Header.ColNames;
            var g = names.ToList().IndexOf("lateralG");
            var share = names.Any(name => name == "sharePct") ? names.ToList().IndexOf("sharePct") : names.ToList().IndexOf("count");
            if (names.FirstOrDefault(name => name is not ("lateralG" or "sharePct" or "count" or "cornerRadiusM" or "speedKmh" or "turn")) is { } unknown)
                Csv(1, $"the column {TokenText.Quote(unknown)} is not known; known are lateralG, sharePct or count, cornerRadiusM, speedKmh, turn.");
            if (g < 0 || share < 0) Csv(1, "the header must name lateralG, and sharePct or count.");
            if (names.Contains("sharePct") && names.Contains("count")) Csv(1, "sharePct and count exclude each other: either is a corner's share.");
            if (_faults.Count > 0) return;
            var rows = 0;
            var isSigned = !names.Contains("turn") && HasNegative(csv, g);
            foreach (var row in reader)
            {
                if (++rows > CamberTargetRequest.MostCorners)
                {
                    Csv(row.LineNumberFrom, FormattableString.Invariant($"the table has more than {CamberTargetRequest.MostCorners} rows."));
                    return;
                }

                Row(row, names, g, share, isSigned);
            }
        }
        catch (Exception broken) when (broken is InvalidDataException or ArgumentException)
        {
            Csv(1, "it cannot be read as a table with as many cells in each row as in the header.");
        }
    }

    /// <summary>Whether signs tell the way each row turns: they do where there is a negative one.</summary>
    private static bool HasNegative(string csv, int column)
    {
        using var reader = Open(csv);
        foreach (var row in reader)
        {
            if (double.TryParse(row[column].Span, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && value < 0) return true;
        }

        return false;
    }

    private static SepReader Open(string csv) =>
        Sep.Reader(static options => options with { Unescape = true, Trim = SepTrim.All }).FromText(csv.TrimStart('\uFEFF').TrimEnd());

    private void Row(SepReader.Row row, IReadOnlyList<string> names, int g, int share, bool isSigned)
    {
        var line = row.LineNumberFrom;
        var before = _faults.Count;
        var signed = Number(row, g, "lateralG", -3, 3);
        var part = Number(row, share, names[share], 0, 1e9);
        var radiusM = Number(row, names.ToList().IndexOf("cornerRadiusM"), "cornerRadiusM", TurnRules.LeastRadiusM, 10_000);
        var speedKmh = Number(row, names.ToList().IndexOf("speedKmh"), "speedKmh", 1, 500);
        var turn = Turn(row, names, signed, isSigned, line);
        if (_faults.Count > before) return;
        if (signed is null || part is null) Csv(line, "lateralG and its share must both be there.");
        else if (radiusM is not null && speedKmh is not null) Csv(line, "cornerRadiusM and speedKmh exclude each other.");
        else Add("HistogramCsv", Math.Abs(signed.Value), part.Value, radiusM, speedKmh, turn, FormattableString.Invariant($"line {line}: "));
    }

    /// <summary>A cell as a number; null where it is empty, the column is not there, or it is refused.</summary>
    private double? Number(SepReader.Row row, int column, string name, double least, double most)
    {
        if (column < 0 || row[column].ToString() is not { Length: > 0 } text) return null;
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && value >= least && value <= most) return value;
        Csv(row.LineNumberFrom, FormattableString.Invariant($"{name} is {TokenText.Quote(text)}; it must be a number from {least} to {most}."));
        return null;
    }

    private TurnDirection? Turn(SepReader.Row row, IReadOnlyList<string> names, double? signed, bool isSigned, int line)
    {
        var column = names.ToList().IndexOf("turn");
        if (column < 0) return !isSigned ? null : signed < 0 ? TurnDirection.Right : TurnDirection.Left;
        var text = row[column].ToString();
        if (signed < 0) Csv(line, "lateralG is negative beside a column turn; leave its sign out, or the column.");
        switch (text)
        {
            case "": return null;
            case "left": return TurnDirection.Left;
            case "right": return TurnDirection.Right;
            default:
                Csv(line, $"turn is {TokenText.Quote(text)}; it must be one of: left, right.");
                return null;
        }
    }

    private void Csv(int line, string message) => Fault("HistogramCsv", FaultCodes.Unreadable, FormattableString.Invariant($"line {line}: {message}"));

    private void Fault(string place, string code, string message) => _faults.Add((place, code, message));
}
