using System.Globalization;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>Changes the culture of the whole process, so it runs by itself.</summary>
[Collection(nameof(ByItself))]
public sealed class SuspensionCultureTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    /// <summary>Answers with figures in their texts, and refusals that quote figures with a part after the point.</summary>
    public static TheoryData<string, string> Bodies() => new()
    {
        { GeometryCalls.Sweep, GeometryRequests.Sweep(GeometryRequests.Wishbone, -500, 500, 62.5).ToJsonString() },
        { GeometryCalls.Adjustment, GeometryRequests.AdjustedFor(GeometryRequests.Strut, -6, null, """{ "adjuster": "strutTopInboard", "rangeMm": { "from": -2.5, "to": 7.5 } }""").ToJsonString() },
        { GeometryCalls.Adjustment, GeometryRequests.Adjusted(GeometryRequests.Strut, """{ "adjuster": "knuckleEccentric", "amountMm": 1.5, "boltSpacingMm": 58.5 }""").ToJsonString() },
        { GeometryCalls.Sweep, GeometryRequests.Sweep(fromMm: -12.5, toMm: 12.5, stepMm: -0.25).ToJsonString() },
        { GeometryCalls.Sweep, GeometryRequests.Sweep(fromMm: 437.5, toMm: 437.5).ToJsonString() },
        { GeometryCalls.Sweep, GeometryRequests.Sweep().With("/vehicle/front/suspension/points/wheelCentre", Corners.Point(0, 717.5, 305)).ToJsonString() },
        { GeometryCalls.Adjustment, GeometryRequests.AdjustedFor(GeometryRequests.Strut, -6, null, """{ "adjuster": "strutTopInboard", "rangeMm": { "from": 2.5, "to": -7.5 } }""").ToJsonString() },
        { GeometryCalls.Adjustment, GeometryRequests.Adjusted(GeometryRequests.Strut, """{ "adjuster": "knuckleEccentric", "amountMm": 30.5, "boltSpacingMm": 58.5 }""").ToJsonString() },
        { GeometryCalls.Adjustment, GeometryRequests.Adjusted(GeometryRequests.Strut, """{ "adjuster": "tieRodLength", "amountMm": -99.5 }""").ToJsonString() },
    };

    [Theory]
    [MemberData(nameof(Bodies))]
    public async Task The_culture_of_the_machine_and_of_the_caller_reaches_no_answer(string path, string body)
    {
        var expected = await Answered(path, body, "en");

        // Decimal comma, points in thousands, another minus: the machine's culture is what threads start with.
        var german = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        german.NumberFormat.NumberDecimalSeparator = ",";
        german.NumberFormat.NumberGroupSeparator = ".";
        german.NumberFormat.NegativeSign = "\u2212";
        var before = CultureInfo.DefaultThreadCurrentCulture;
        CultureInfo.DefaultThreadCurrentCulture = german;
        try
        {
            Assert.Equal(expected, await Answered(path, body, "de-DE"));
        }
        finally
        {
            CultureInfo.DefaultThreadCurrentCulture = before;
        }
    }

    /// <summary>Status and body; a problem without the id of its request.</summary>
    private async Task<(int Status, string Text)> Answered(string path, string body, string language)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri(path, UriKind.Relative));
        request.Content = new StringContent(body, new System.Net.Http.Headers.MediaTypeHeaderValue("application/json"));
        request.Headers.AcceptLanguage.ParseAdd(language);
        using var response = await fixture.Client.SendAsync(request);
        var text = await response.Content.ReadAsStringAsync();
        var id = Assert.Single(response.Headers.GetValues("Request-Id"));
        Assert.True((int)response.StatusCode is 200 or 400 or 422, text);
        return ((int)response.StatusCode, text.Replace(id, "id", StringComparison.Ordinal));
    }
}
