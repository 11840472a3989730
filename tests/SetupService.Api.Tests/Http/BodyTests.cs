using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Http;

public class SmokeTests
{
    [Fact]
    public async Task Smoke()
    {
        await using RunningService service = await EchoService.StartAsync("Production");
        using StringContent content = new(await File.ReadAllTextAsync("/tmp/b.json"), System.Text.Encoding.UTF8, "application/json");
        Console.WriteLine(await (await service.Client.PostAsync("/test/vehicle", content)).Content.ReadAsStringAsync());
        await File.WriteAllTextAsync("/tmp/openapi-raw.json", await service.Client.GetStringAsync("/openapi/v1.json"));
    }
}
