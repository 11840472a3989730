using System.Net.Http.Headers;
using System.Text;
using SetupService.Api.Tests.Contract;

namespace SetupService.Api.Tests.Examples;

/// <summary>A call shown by files of api/examples: what is sent, and what the service answers.</summary>
/// <param name="Method">The HTTP method.</param>
/// <param name="Path">The path, with the query of the example.</param>
/// <param name="Request">The file sent, or null where the call has no body.</param>
/// <param name="Answer">The file that holds the answer.</param>
internal sealed record ExampleCall(string Method, string Path, string? Request, string Answer)
{
    private const string Tyre =
        "/v1/tyres/decode?marking=225/45R17%2094W%20XL&rimWidthIn=8&pressureKpa=230&topSpeedKmh=228&loadKg=435&verticalRateNPerMm=210&units=metric";

    private const string Compact =
        "?new=8Jx17%20ET40%205x108%20CB63.4,225/45R17%2094W%20XL&now=7.5Jx17%20ET45%205x108,225/45R17%2091W&axle=front&in=14&out=18&over=12&maximumAxleLoadKg=870&minimumLoadIndex=87&topSpeedKmh=228&centreBoreMm=63.4&units=metric";

    /// <summary>Every example there is.</summary>
    public static IReadOnlyList<ExampleCall> All { get; } =
    [
        new("GET", "/health/live", null, "health-live.answer.json"),
        new("GET", "/health/ready", null, "health-ready.answer.json"),
        new("GET", Tyre, null, "tyre-decode.answer.json"),
        new("GET", "/v1/wheels/decode?marking=8.5Jx18%20ET44&units=metric", null, "wheel-decode.answer.json"),
        new("GET", "/v1/reference/load-indices", null, "load-indices.answer.json"),
        new("GET", "/v1/reference/speed-symbols", null, "speed-symbols.answer.json"),
        new("POST", "/v1/fitment/comparison", "fitment-comparison.request.json", "fitment-comparison.answer.json"),
        new("POST", "/v1/fitment/check", "fitment-check.request.json", "fitment-check.answer.json"),
        new("POST", "/v1/fitment/window", "fitment-window.request.json", "fitment-window.answer.json"),
        new("POST", "/v1/tyres/ranking", "tyre-ranking.request.json", "tyre-ranking.answer.json"),
        new("POST", "/v1/fitment/car-check", "fitment-car-check.request.json", "fitment-car-check.answer.json"),
        new("POST", "/v1/fitment/drawing", "fitment-drawing.request.json", "fitment-drawing.answer.svg"),
        new("POST", "/v1/fitment/check/report", "fitment-check.request.json", "fitment-report.answer.html"),
        new("GET", "/v1/fitment/drawing" + Compact, null, "fitment-picture.answer.svg"),
        new("GET", "/v1/fitment/badge" + Compact, null, "fitment-badge.answer.svg"),
        new("POST", "/v1/fitment/batch", "fitment-batch.request.ndjson", "fitment-batch.answer.ndjson"),
        new("POST", "/v1/fitment/batch/csv", "fitment-batch.request.csv", "fitment-batch.answer.csv"),
        new("POST", "/v1/fitment/catalogue", "fitment-catalogue.request.csv", "fitment-catalogue.answer.ndjson"),
        new("POST", "/v1/geometry/travel-sweep", "travel-sweep.request.json", "travel-sweep.answer.json"),
        new("POST", "/v1/geometry/travel-sweep/chart", "travel-sweep.request.json", "travel-sweep.answer.svg"),
        new("POST", "/v1/geometry/drawing", "geometry-drawing.request.json", "geometry-drawing.answer.svg"),
        new("POST", "/v1/geometry/adjustment", "adjustment.request.json", "adjustment.answer.json"),
        new("POST", "/v1/geometry/steering-axis", "steering-axis.request.json", "steering-axis.answer.json"),
        new("POST", "/v1/geometry/steer-sweep", "steer-sweep.request.json", "steer-sweep.answer.json"),
        new("POST", "/v1/geometry/steer-sweep/chart", "steer-sweep.request.json", "steer-sweep.answer.svg"),
        new("POST", "/v1/geometry/caster-from-readings", "caster-from-readings.request.json", "caster-from-readings.answer.json"),
        new("POST", "/v1/geometry/alignment", "alignment.request.json", "alignment.answer.json"),
        new("POST", "/v1/handling/ride", "ride.request.json", "ride.answer.json"),
        new("POST", "/v1/handling/ride/chart", "ride.request.json", "ride.answer.svg"),
        new("POST", "/v1/handling/camber-target", "camber-target.request.json", "camber-target.answer.json"),
        new("POST", "/v1/handling/camber-target/chart", "camber-target.request.json", "camber-target.answer.svg"),
        new("POST", "/v1/handling/what-if", "what-if.request.json", "what-if.answer.json"),
        new("POST", "/v1/handling/what-if/chart", "what-if.request.json", "what-if.answer.svg"),
        new("POST", "/v1/handling/cornering", "cornering.request.json", "cornering.answer.json"),
        new("POST", "/v1/handling/cornering-sweep", "cornering-sweep.request.json", "cornering-sweep.answer.json"),
        new("POST", "/v1/handling/cornering-sweep/chart", "cornering-sweep.request.json", "cornering-sweep.answer.svg"),
        new("POST", "/v1/handling/envelope", "envelope.request.json", "envelope.answer.json"),
        new("POST", "/v1/handling/envelope/chart", "envelope.request.json", "envelope.answer.svg"),
        new("POST", "/v1/wear/diagnosis", "wear-diagnosis.request.json", "wear-diagnosis.answer.json"),
        new("POST", "/v1/wear/diagnosis/chart", "wear-diagnosis.request.json", "wear-diagnosis.answer.svg"),
        new("POST", "/v1/wear/temperatures", "wear-temperatures.request.json", "wear-temperatures.answer.json"),
        new("POST", "/v1/wear/forecast", "wear-forecast.request.json", "wear-forecast.answer.json"),
        new("POST", "/v1/wear/forecast/chart", "wear-forecast.request.json", "wear-forecast.answer.svg"),
        new("POST", "/v1/wear/before-after", "wear-before-after.request.json", "wear-before-after.answer.json"),
        new("POST", "/v1/wear/before-after/chart", "wear-before-after.request.json", "wear-before-after.answer.svg"),
        new("POST", "/v1/plans", "plan.request.json", "plan.answer.json"),
        new("POST", "/v1/plans/sheets", "plan-sheets.request.json", "plan-sheets.answer.json"),
        new("POST", "/v1/plans/sheets/page", "plan-sheets.request.json", "plan-sheets.answer.html"),
    ];

    /// <summary>Further examples of calls, which the description has no room for: the cars of docs/demo.</summary>
    public static IReadOnlyList<ExampleCall> Further { get; } =
    [
        new("POST", "/v1/plans", "further/plan-rear-driven.request.json", "further/plan-rear-driven.answer.json"),
        new("POST", "/v1/plans", "further/plan-jack-and-ruler.request.json", "further/plan-jack-and-ruler.answer.json"),
    ];

    public static string FileOf(string name) => ContractFile.Path(System.IO.Path.Combine("examples", name));

    public async Task<string> SendAsync(HttpClient client)
    {
        using var response = await AskAsync(client);
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, $"{Answer}: {(int)response.StatusCode} {text}");
        return text;
    }

    /// <summary>The answer to the call, whatever it is, with a piece of query added.</summary>
    public async Task<HttpResponseMessage> AskAsync(HttpClient client, string furtherQuery = "")
    {
        var path = furtherQuery.Length == 0 ? Path : Path + (Path.Contains('?', StringComparison.Ordinal) ? "&" : "?") + furtherQuery;
        using HttpRequestMessage request = new(new HttpMethod(Method), new Uri(path, UriKind.Relative)) { Content = await BodyAsync() };
        return await client.SendAsync(request);
    }

    public override string ToString() => Answer;

    private async Task<HttpContent?> BodyAsync()
    {
        if (Request is null)
            return null;
        if (Request.EndsWith(".csv", StringComparison.Ordinal))
            return await FormAsync(Request);

        var type = Request.EndsWith(".ndjson", StringComparison.Ordinal) ? "application/x-ndjson" : "application/json";
        return Typed(await File.ReadAllTextAsync(FileOf(Request)), type);
    }

    /// <summary>The car, or the cars of a catalogue, go before the table; they stand in the file beside it.</summary>
    private static async Task<HttpContent> FormAsync(string table)
    {
        var cars = table.Replace(".request.csv", ".cars.ndjson", StringComparison.Ordinal);
        var car = table.Replace(".request.csv", ".car.json", StringComparison.Ordinal);
        MultipartFormDataContent form = [];
        if (File.Exists(FileOf(cars)))
            form.Add(Typed(await File.ReadAllTextAsync(FileOf(cars)), "application/x-ndjson"), "cars");
        else
            form.Add(Typed(await File.ReadAllTextAsync(FileOf(car)), "application/json"), "car");
        form.Add(Typed(await File.ReadAllTextAsync(FileOf(table)), "text/csv"), "candidates");
        return form;
    }

    private static StringContent Typed(string text, string type) => new(text, Encoding.UTF8, new MediaTypeHeaderValue(type));
}
