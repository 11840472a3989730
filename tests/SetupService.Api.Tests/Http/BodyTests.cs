using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Http;

public class SmokeTests
{
    [Fact]
    public async Task Smoke()
    {
        await using RunningService service = await EchoService.StartAsync("Production");
        await File.WriteAllTextAsync("/tmp/openapi-raw.json", await service.Client.GetStringAsync("/openapi/v1.json"));
    }
}
