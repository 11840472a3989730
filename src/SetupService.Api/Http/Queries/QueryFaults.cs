using System.Globalization;
using SetupService.Api.Http.Faults;

namespace SetupService.Api.Http.Queries;

/// <summary>Checks a query string against the parameters its endpoint declares.</summary>
internal static class QueryFaults
{
    public static IReadOnlyList<Fault> Find(HttpContext context)
    {
        var declared = context.GetEndpoint()?.Metadata.GetOrderedMetadata<QueryParameter>() ?? [];
        if (declared.Count == 0 && !context.Request.QueryString.HasValue)
            return [];

        var text = context.Request.QueryString.Value ?? "";
        if (text.Length > CapSettings.From(context).QueryLength)
            return [TooLong(text.Length, CapSettings.From(context).QueryLength)];

        var query = context.Request.Query;
        FaultList faults = new();
        foreach (var parameter in declared)
        {
            if (DeclaredFault(parameter, query) is { } fault)
                faults.Add(fault);
        }

        foreach (var name in query.Keys)
        {
            if (!declared.Any(parameter => parameter.Name == name))
                faults.Add(Unknown(name, declared));
        }

        return faults.ToList();
    }

    private static Fault? DeclaredFault(QueryParameter parameter, IQueryCollection query)
    {
        var name = parameter.Name;
        var values = query[name];
        if (values.Count > 1)
            return Fault.ForParameter(name, FaultCodes.RepeatedParameter, string.Create(CultureInfo.InvariantCulture, $"{name} is given {values.Count} times; give it once."));

        var text = values.ToString();
        if (text.Length > 0)
            return parameter.Check(text);
        if (parameter.IsRequired)
            return Fault.ForParameter(name, FaultCodes.Required, $"{name} is missing: {parameter.Description}");
        return values.Count == 0 ? null : Fault.ForParameter(name, FaultCodes.Required, $"{name} is given without a value; leave it out or give one.");
    }

    private static Fault Unknown(string name, IReadOnlyList<QueryParameter> declared)
    {
        var names = declared.Select(parameter => parameter.Name);
        var meant = NearestName.Find(name, names) is { } near ? $"; {near} may be meant" : "";
        var known = declared.Count == 0 ? "It has none." : $"Known: {string.Join(", ", names)}.";
        return Fault.ForParameter(name, FaultCodes.UnknownParameter, $"The call has no query parameter {TokenText.Quote(name)}{meant}. {known}");
    }

    private static Fault TooLong(int length, int most) =>
        Fault.ForParameter(
            "",
            FaultCodes.TooLong,
            string.Create(CultureInfo.InvariantCulture, $"The query string has {length} characters; at most {most} are read."),
            new FaultLimits { Maximum = most });
}
