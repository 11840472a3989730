using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Text.RegularExpressions;
using Serilog.Events;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;

namespace SetupService.Api.Tests.Http;

/// <summary>Refusals the framework would make itself, requests ids, and the pages that explain both.</summary>
public sealed partial class ProblemTests(ProductionEcho fixture, DevelopmentEcho development)
    : IClassFixture<ProductionEcho>, IClassFixture<DevelopmentEcho>
{
    private const string TraceId = "4bf92f3577b34da6a3ce929d0e0e4736";

    public static TheoryData<string, string, string> Framework => new()
    {
        { "GET", "/none", "not-found" },
        { "GET", "/v1", "not-found" },
        { "GET", "/docs/problems/none", "not-found" },
        { "GET", "/docs/problems/..%2Fmethods%2Ffitment-check", "not-found" },
        { "GET", "/v1/fitment/check", "method-not-allowed" },
        { "DELETE", "/version", "method-not-allowed" },
        { "POST", "/test/vehicle", "unsupported-media-type" },
        { "GET", "/test/fails", "internal-error" },
        { "GET", "/test/not-a-number", "internal-error" },
    };

    [Theory]
    [MemberData(nameof(Framework))]
    public async Task Every_refusal_has_the_same_form(string verb, string path, string type)
    {
        foreach (var client in new[] { fixture.Client, development.Client })
        {
            foreach (var accept in new[] { null, "application/json", "image/svg+xml", "application/x-ndjson", "text/html, */*;q=0.1" })
            {
                using HttpRequestMessage request = new(new HttpMethod(verb), new Uri(path, UriKind.Relative));
                request.Headers.TryAddWithoutValidation("Accept", accept);

                using var response = await client.SendAsync(request);

                // A path that answers in one media type is first held to Accept.
                var isNotAcceptable = response.StatusCode == HttpStatusCode.NotAcceptable && accept is not null && !accept.Contains('*', StringComparison.Ordinal);
                await Problems.Read(response, isNotAcceptable ? ProblemTypes.NotAcceptable : ProblemTypes.All.Single(known => known.Name == type));
            }
        }
    }

    [Fact]
    public async Task A_405_names_the_methods_the_path_answers()
    {
        using var response = await fixture.Client.GetAsync(new Uri("/v1/fitment/check", UriKind.Relative));

        Assert.Equal(["POST"], response.Content.Headers.Allow);
    }

    [Fact]
    public async Task A_callers_trace_goes_on_and_its_id_is_in_header_problem_and_log()
    {
        using HttpRequestMessage request = new(HttpMethod.Get, new Uri("/test/fails", UriKind.Relative));
        request.Headers.Add("traceparent", $"00-{TraceId}-00f067aa0ba902b7-01");

        using var response = await fixture.Client.SendAsync(request);

        await Problems.Read(response, ProblemTypes.InternalError);
        Assert.Equal(TraceId, Assert.Single(response.Headers.GetValues("Request-Id")));
        var line = Assert.Single(fixture.Log.Events, entry => entry.Properties.TryGetValue("RequestId", out var id) && id.ToString() == $"\"{TraceId}\"");
        Assert.Equal(LogEventLevel.Error, line.Level);
        Assert.IsType<InvalidOperationException>(line.Exception);
    }

    [Theory]
    [InlineData("/version")]
    [InlineData("/none")]
    [InlineData("/docs")]
    public async Task Every_response_has_a_request_id_of_its_own(string path)
    {
        using var first = await fixture.Client.GetAsync(new Uri(path, UriKind.Relative));
        using var second = await fixture.Client.GetAsync(new Uri(path, UriKind.Relative));

        var id = Assert.Single(first.Headers.GetValues("Request-Id"));
        Assert.Matches(W3CTraceId(), id);
        Assert.NotEqual(id, Assert.Single(second.Headers.GetValues("Request-Id")));
    }

    [Fact]
    public async Task A_request_that_goes_well_leaves_no_line_in_the_log_and_a_refused_one_its_id()
    {
        using var good = await fixture.Client.GetAsync(new Uri("/version", UriKind.Relative));
        using var refused = await fixture.Client.GetAsync(new Uri("/none%0Anext", UriKind.Relative));

        Assert.Equal((HttpStatusCode.OK, HttpStatusCode.NotFound), (good.StatusCode, refused.StatusCode));
        Assert.Empty(LinesWith(good));
        Assert.Matches($"^Request \"{Id(refused)}\": \"GET\" \"none\" refused with 404 in [0-9]+(\\.[0-9]{{1,3}})? ms, 0 faults, 0 steps, client \"-\"$", Assert.Single(LinesWith(refused)));
    }

    private static string Id(HttpResponseMessage response) => Assert.Single(response.Headers.GetValues("Request-Id"));

    private string[] LinesWith(HttpResponseMessage response) =>
        [.. fixture.Log.Events.Select(entry => entry.RenderMessage(CultureInfo.InvariantCulture)).Where(line => line.Contains(Id(response), StringComparison.Ordinal))];

    [Fact]
    public async Task Nothing_tells_which_server_answers()
    {
        using var response = await fixture.Client.GetAsync(new Uri("/version", UriKind.Relative));

        Assert.Empty(response.Headers.Server);
        Assert.Equal(["X-Content-Type-Options"], response.Headers.Select(header => header.Key).Where(name => name.StartsWith("X-", StringComparison.OrdinalIgnoreCase)));
    }

    [Fact]
    public async Task Each_type_has_its_page()
    {
        foreach (var type in ProblemTypes.All)
        {
            using var response = await fixture.Client.GetAsync(new Uri(type.Uri, UriKind.Relative));

            Assert.Equal(HttpStatusCode.OK, response.StatusCode);
            Assert.Equal(new MediaTypeHeaderValue("text/markdown", "utf-8"), response.Content.Headers.ContentType);
            var page = await response.Content.ReadAsStringAsync();
            Assert.StartsWith($"# {type.Title} ({type.Status})", page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task The_page_of_codes_lists_exactly_the_codes()
    {
        var page = await fixture.Client.GetStringAsync(new Uri("/docs/problems/codes", UriKind.Relative));

        Assert.Equal(FaultCodes.All, CodeRow().Matches(page).Select(row => row.Groups[1].Value));
    }

    [Fact]
    public void Types_and_codes_are_unique()
    {
        Assert.Equal(ProblemTypes.All.Count, ProblemTypes.All.DistinctBy(type => type.Name).Count());

        // What the framework refuses has one kind a status; of the two kinds of 422 it makes neither.
        Assert.Equal(ProblemTypes.All.Count - 1, ProblemTypes.All.DistinctBy(type => type.Status).Count());
        Assert.Equal(ProblemTypes.NotComputable, ProblemTypes.ForStatus(ProblemTypes.WorkExceeded.Status));
        Assert.Equal(FaultCodes.All.Count, FaultCodes.All.Distinct().Count());
    }

    [GeneratedRegex("^\\| `(\\w+)` \\|", RegexOptions.Multiline)]
    private static partial Regex CodeRow();

    // W3C Trace Context, section 3.2.2.3: 32 lower-case hexadecimal digits.
    [GeneratedRegex("^[0-9a-f]{32}$")]
    private static partial Regex W3CTraceId();
}
