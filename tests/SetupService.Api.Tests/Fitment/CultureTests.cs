using System.Globalization;
using System.Net.Http.Headers;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment;

/// <summary>Changes the culture of the whole process, so it runs by itself.</summary>
[Collection(nameof(ByItself))]
public sealed class CultureTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    [Theory]
    [InlineData(Calls.Check)]
    [InlineData(Calls.Drawing)]
    public async Task The_culture_of_the_machine_and_of_the_caller_reaches_no_answer(string path)
    {
        var body = Requests.Check().ToJsonString();
        using var plain = await fixture.Client.PostAsync(path, body);
        var expected = await Calls.Text(plain);

        // Decimal comma, points in thousands, another minus: the machine's culture is what threads start with.
        var german = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        german.NumberFormat.NumberDecimalSeparator = ",";
        german.NumberFormat.NumberGroupSeparator = ".";
        german.NumberFormat.NegativeSign = "\u2212";
        var before = CultureInfo.DefaultThreadCurrentCulture;
        CultureInfo.DefaultThreadCurrentCulture = german;
        try
        {
            using HttpRequestMessage request = new(HttpMethod.Post, new Uri(path, UriKind.Relative));
            request.Content = new StringContent(body, new MediaTypeHeaderValue("application/json"));
            request.Headers.AcceptLanguage.ParseAdd("de-DE");
            using var response = await fixture.Client.SendAsync(request);
            Assert.Equal(expected, await Calls.Text(response));
        }
        finally
        {
            CultureInfo.DefaultThreadCurrentCulture = before;
        }
    }
}
