using System.Text;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Http;

public class SmokeTests
{
    [Theory]
    [InlineData("Production")]
    [InlineData("Development")]
    public async Task Smoke(string environment)
    {
        await using RunningService service = await EchoService.StartAsync(environment);
        foreach (string body in new[] { "{}", """{"label":"x","front":{"trackMm":1,"wheel":{"rimDiameterIn":1e999,"rimWidthInn":3,"fastenerSeat":"cone6","innerProfile":[null,{"radiusMm":"a"}]},"suspension":{"points":{},"kind":"macPhersonStrut"}},"drivenAxle":3,"label":"y"}""", "", "{", "[]", "null", """{"front":{"suspension":{"points":{"wheelCentre":{"xMm":0,"yMm":1,"zMm":2},"pivotLeft":{"xMm":0,"yMm":1,"zMm":2},"beamShearCentre":{"xMm":0,"yMm":1,"zMm":2}},"\u006bind":"twistBeam"}}}""" })
        {
            using StringContent content = new(body, Encoding.UTF8, "application/json");
            using HttpResponseMessage response = await service.Client.PostAsync("/test/vehicle", content);
            Console.WriteLine($"{(int)response.StatusCode} {await response.Content.ReadAsStringAsync()}");
        }
        foreach (string path in new[] { "/version", "/health/live", "/none", "/test/fails", "/docs/problems/x", "/test/vehicle", "/openapi/v1.json", "/docs/index.html" })
        {
            using HttpResponseMessage response = await service.Client.GetAsync(path);
            string text = await response.Content.ReadAsStringAsync();
            Console.WriteLine($"{path} {(int)response.StatusCode} {response} {text[..Math.Min(text.Length, 300)]}");
        }
    }
}
