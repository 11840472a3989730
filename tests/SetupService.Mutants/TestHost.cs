using System.Reflection;
using System.Runtime.Loader;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace SetupService.Mutants;

/// <summary>The tests over one build of the domain, both loaded for this host alone, so that what is computed once is computed anew.</summary>
internal sealed class TestHost
{
    private const string Tests = "SetupService.Domain.Tests";
    private readonly Loader _loader;
    private readonly IAssemblyInfo _tests;

    public TestHost(byte[] domain)
    {
        _loader = new Loader(domain);
        _tests = Reflector.Wrap(_loader.LoadFromAssemblyPath(Path.Combine(AppContext.BaseDirectory, $"{Tests}.dll")));
    }

    public Assembly Domain => _loader.Domain;

    /// <summary>Classes with tests; those that read the checkout or the assembly's shape are no tests of what it computes.</summary>
    public IEnumerable<string> Classes => _tests.GetTypes(includePrivateTypes: false).Select(type => type.Name)
        .Where(name => name.EndsWith("Tests", StringComparison.Ordinal) && !name.StartsWith($"{Tests}.Architecture.", StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    public IReadOnlyList<IXunitTestCase> Find(string type)
    {
        using var discoverer = new XunitTestFrameworkDiscoverer(_tests, new NullSourceInformationProvider(), new NullSink());
        using var found = new Collector();
        discoverer.Find(type, includeSourceInformation: false, found, new Settings());
        found.Done.Wait();
        return found.Cases;
    }

    /// <summary>Runs the cases one after the other, up to the first that fails; false where one does.</summary>
    public bool Pass(IEnumerable<IXunitTestCase> cases)
    {
        var watcher = new Watcher();
        Run(cases, watcher);
        return watcher.Failed.Count == 0;
    }

    public void Run(IEnumerable<IXunitTestCase> cases, IMessageSink watcher)
    {
        using var runner = new XunitTestAssemblyRunner(new TestAssembly(_tests), cases, new NullSink(), watcher, new Settings());
        runner.RunAsync().GetAwaiter().GetResult();
    }

    private sealed class Loader(byte[] domain) : AssemblyLoadContext("mutant")
    {
        private Assembly? _domain;

        public Assembly Domain => _domain ??= LoadFromStream(new MemoryStream(domain));

        protected override Assembly? Load(AssemblyName name) => name.Name == "SetupService.Domain" ? Domain : null;
    }

    private sealed class Settings : ITestFrameworkDiscoveryOptions, ITestFrameworkExecutionOptions
    {
        private readonly Dictionary<string, object?> _values = new()
        {
            ["xunit.discovery.PreEnumerateTheories"] = false,
            ["xunit.execution.DisableParallelization"] = true,
            ["xunit.execution.SynchronousMessageReporting"] = true,
        };

        public TValue GetValue<TValue>(string name) => _values.TryGetValue(name, out var value) && value is TValue known ? known : default!;

        public void SetValue<TValue>(string name, TValue value) => _values[name] = value;
    }

    private sealed class NullSink : IMessageSink
    {
        public bool OnMessage(IMessageSinkMessage message) => true;
    }

    private sealed class NullSourceInformationProvider : ISourceInformationProvider
    {
        public ISourceInformation GetSourceInformation(ITestCase testCase) => new SourceInformation();

        public void Dispose()
        {
        }
    }

    private sealed class Collector : IMessageSink, IDisposable
    {
        public List<IXunitTestCase> Cases { get; } = [];

        public ManualResetEventSlim Done { get; } = new();

        public bool OnMessage(IMessageSinkMessage message)
        {
            if (message is ITestCaseDiscoveryMessage { TestCase: IXunitTestCase found })
                Cases.Add(found);
            if (message is IDiscoveryCompleteMessage)
                Done.Set();
            return true;
        }

        public void Dispose() => Done.Dispose();
    }
}

/// <summary>Hears the runner: which test failed, and, where asked, when each begins and ends.</summary>
internal sealed class Watcher(Action<string>? begun = null, Action<string>? ended = null) : IMessageSink
{
    public HashSet<string> Failed { get; } = [];

    public bool OnMessage(IMessageSinkMessage message)
    {
        switch (message)
        {
            case ITestCaseStarting start:
                begun?.Invoke(start.TestCase.TestMethod.Method.Name);
                break;
            case ITestCaseFinished end:
                ended?.Invoke(end.TestCase.TestMethod.Method.Name);
                break;
            case ITestFailed failure:
                Failed.Add(failure.TestCase.TestMethod.Method.Name);
                break;
            case ITestClassCleanupFailure or ITestAssemblyCleanupFailure or IErrorMessage:
                Failed.Add("");
                break;
            default:
                break;
        }

        return ended is not null || Failed.Count == 0;
    }
}
