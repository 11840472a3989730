// Which of these wheels fit the car? Asks for many in one batch and lists those that do, the one with most room first.
//   dotnet run --project docs/recipes/csharp [URL]
using SetupService.Client;

using HttpClient http = new() { BaseAddress = new Uri(args.FirstOrDefault() ?? "http://localhost:5080") };
SetupClient client = new(http);

BatchCarLine car = new()
{
    Axle = CarAxle.Front,
    Vehicle = new VehicleDocument
    {
        TopSpeedKmh = 228,
        Front = new AxleDocument
        {
            MaximumAxleLoadKg = 870,
            Wheel = new WheelDocument { Marking = "7.5Jx17 ET45 5x108" },
            Tyre = new TyreDocument { Marking = "225/45R17 91W" },
            Hub = new HubDocument { CentreBoreMm = 63.4 },
            Clearance = new ClearanceDocument { InboardMm = 14, OutboardMm = 18 },
        },
    },
};

string[] markings = ["7.5Jx17 ET40 5x108 CB63.4", "8Jx17 ET42 5x108 CB63.4", "8.5Jx17 ET35 5x108 CB63.4", "9Jx17 ET20 5x108 CB63.4", "8Jx17 ET42 5x112 CB63.4"];
var fits = new List<BatchAnswerLine>();
try
{
    await foreach (var answer in client.FitmentBatchAsync(Lines()))
    {
        if (answer.Problem is { } problem)
            Console.WriteLine($"{answer.Id}: {problem.Detail}");
        else if (answer.Verdict is CheckStatus.Pass or CheckStatus.Caution)
            fits.Add(answer);
    }
}
catch (SetupServiceException refusal) when (refusal.RetryAfter is { } later)
{
    Console.Error.WriteLine($"The service is busy; again in {later.TotalSeconds} s.");
    return 1;
}

foreach (var one in fits.OrderByDescending(one => one.WorstCaseMm))
    Console.WriteLine($"{one.Id}: {one.Verdict}, {one.WorstCaseMm:0.0} mm of room in the worst case ({one.Governing})");
return 0;

// The car once, then the candidates.
async IAsyncEnumerable<object> Lines()
{
    await Task.CompletedTask;
    yield return car;
    foreach (var marking in markings)
    {
        yield return new BatchCandidateLine
        {
            Id = marking,
            Candidate = new FittingDocument { Wheel = new WheelDocument { Marking = marking }, Tyre = new TyreDocument { Marking = "225/45R17 94W XL" } },
        };
    }
}
