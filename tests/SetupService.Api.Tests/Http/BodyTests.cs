using System.Net;
using System.Text;
using SetupService.Api.Http;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Vehicles;

namespace SetupService.Api.Tests.Http;

/// <summary>Bodies over a real connection: what is taken, and what is refused with which status.</summary>
public abstract class BodyTests(EchoFixture fixture)
{
    [Fact]
    public async Task A_good_body_is_answered_with_its_length_and_not_to_be_stored()
    {
        using var response = await Post(DemoCar.Car);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal("application/json; charset=utf-8", response.Content.Headers.ContentType!.ToString());
        Assert.True(response.Content.Headers.ContentLength > 0);
        Assert.True(response.Headers.CacheControl!.NoStore);
        Assert.Equal("""{"status":"Aldermoor Tarn, road trim"}""", await response.Content.ReadAsStringAsync());
    }

    [Theory]
    [InlineData("", FaultCodes.Required)]
    [InlineData("null", FaultCodes.Required)]
    [InlineData("{", FaultCodes.Syntax)]
    [InlineData("[]", FaultCodes.WrongType)]
    [InlineData("{\"drivenAxle\":\"left\"}", FaultCodes.UnknownWord)]
    [InlineData("{\"front\":{\"suspension\":{\"points\":{}}}}", FaultCodes.Required)]
    [InlineData("{\"wheelbaseMm\":1e999}", FaultCodes.NotFinite)]
    [InlineData("{\"wheelbaseMm\":\"NaN\"}", FaultCodes.WrongType)]
    public async Task A_body_out_of_contract_is_a_400_with_its_faults(string body, string code)
    {
        using var response = await Post(body);

        var problem = await Problems.Read(response, ProblemTypes.InvalidRequest);
        Assert.Equal(code, Assert.Single(problem.GetProperty("errors").EnumerateArray()).GetProperty("code").GetString());
    }

    [Theory]
    [InlineData("application/json")]
    [InlineData("application/json; charset=utf-8")]
    [InlineData("application/json; charset=\"UTF-8\"")]
    [InlineData("Application/JSON")]
    public async Task Json_in_utf8_is_read(string contentType)
    {
        using var response = await Post("{}", contentType);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/xml")]
    [InlineData("application/json; charset=utf-16")]
    [InlineData("application/vnd.own+json")]
    [InlineData("nonsense")]
    [InlineData(null)]
    public async Task Other_media_types_are_not_read(string? contentType)
    {
        using var response = await Post("{}", contentType);

        await Problems.Read(response, ProblemTypes.UnsupportedMediaType);
    }

    [Theory]
    [InlineData("gzip", HttpStatusCode.UnsupportedMediaType)]
    [InlineData("br", HttpStatusCode.UnsupportedMediaType)]
    [InlineData("identity", HttpStatusCode.OK)]
    public async Task A_compressed_body_is_not_read(string encoding, HttpStatusCode status)
    {
        using var request = Request("{}");
        request.Content!.Headers.ContentEncoding.Add(encoding);

        using var response = await fixture.Client.SendAsync(request);

        Assert.Equal(status, response.StatusCode);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_body_at_the_limit_is_read_and_one_byte_more_is_not(bool chunked)
    {
        var most = new CapSettings().BodyBytes;
        using var atLimit = await Send(most);
        using var beyond = await Send(most + 1);

        Assert.Equal(HttpStatusCode.OK, atLimit.StatusCode);
        await Problems.Read(beyond, ProblemTypes.TooLarge);

        async Task<HttpResponseMessage> Send(int bytes)
        {
            using var request = Request("{" + new string(' ', bytes - 2) + "}");
            request.Headers.TransferEncodingChunked = chunked;
            return await fixture.Client.SendAsync(request);
        }
    }

    [Theory]
    [InlineData("image/svg+xml")]
    [InlineData("application/x-ndjson")]
    [InlineData("text/html")]
    [InlineData("application/json;q=0")]
    [InlineData("*/*;q=0, text/csv")]
    public async Task What_the_caller_does_not_accept_is_refused_before_the_body_is_looked_at(string accept)
    {
        using var request = Request("{");
        request.Headers.TryAddWithoutValidation("Accept", accept);

        using var response = await fixture.Client.SendAsync(request);

        await Problems.Read(response, ProblemTypes.NotAcceptable);
    }

    [Theory]
    [InlineData("*/*")]
    [InlineData("application/*")]
    [InlineData("application/json")]
    [InlineData("text/html, application/json;q=0.1")]
    [InlineData("application/*;q=0, application/json")]
    [InlineData("not a media type at all")]
    public async Task What_the_caller_accepts_is_sent(string accept)
    {
        using var request = Request("{}");
        request.Headers.TryAddWithoutValidation("Accept", accept);

        using var response = await fixture.Client.SendAsync(request);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }

    [Fact]
    public async Task A_body_the_handler_refuses_gets_the_faults_the_rules_find()
    {
        using var response = await Post("""{ "rear": { "tyre": { "marking": "45Q17" } } }""", path: "/test/refuse");

        var problem = await Problems.Read(response, ProblemTypes.InvalidRequest);
        var error = Assert.Single(problem.GetProperty("errors").EnumerateArray());
        Assert.Equal(("/rear/tyre/marking", FaultCodes.Unreadable), (error.GetProperty("pointer").GetString(), error.GetProperty("code").GetString()));
    }

    [Fact]
    public async Task A_refused_large_body_can_be_read_again()
    {
        // More than one segment of the server's buffers.
        var body = $$"""{ "rear": { "tyre": { "marking": "45Q17" } } {{new string(' ', 50_000)}} }""";

        using var response = await Post(body, path: "/test/refuse");

        await Problems.Read(response, ProblemTypes.InvalidRequest);
    }

    [Fact]
    public async Task Faults_of_body_and_query_come_in_one_answer()
    {
        using var response = await Post("{\"colour\":1}", path: "/test/vehicle?unit=us");

        var problem = await Problems.Read(response, ProblemTypes.InvalidRequest);
        Assert.Equal(
            [FaultCodes.UnknownParameter, FaultCodes.UnknownMember],
            problem.GetProperty("errors").EnumerateArray().Select(error => error.GetProperty("code").GetString()));
    }

    [Fact]
    public async Task Requests_on_one_connection_do_not_disturb_each_other()
    {
        for (var round = 0; round < 20; round++)
        {
            using var good = await Post(DemoCar.Car);
            using var bad = await Post("{\"x\":" + new string('[', round));
            Assert.Equal((HttpStatusCode.OK, HttpStatusCode.BadRequest), (good.StatusCode, bad.StatusCode));
        }
    }

    private async Task<HttpResponseMessage> Post(string body, string? contentType = "application/json", string path = "/test/vehicle")
    {
        using var request = Request(body, contentType, path);
        return await fixture.Client.SendAsync(request);
    }

    private static HttpRequestMessage Request(string body, string? contentType = "application/json", string path = "/test/vehicle")
    {
        ByteArrayContent content = new(Encoding.UTF8.GetBytes(body));
        if (contentType is not null)
            content.Headers.TryAddWithoutValidation("Content-Type", contentType);
        return new HttpRequestMessage(HttpMethod.Post, new Uri(path, UriKind.Relative)) { Content = content };
    }
}
