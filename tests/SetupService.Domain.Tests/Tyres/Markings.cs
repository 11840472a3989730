using SetupService.Domain.Answers;
using SetupService.Domain.Tyres;

namespace SetupService.Domain.Tests.Tyres;

/// <summary>Reads markings for tests, failing the test where the reader does not do as expected.</summary>
internal static class Markings
{
    public static TyreMarking Read(string text)
    {
        var reading = TyreMarkingReader.Read(text);
        Assert.True(reading.TryGet(out var marking, out var fault), $"{text}: {fault?.Message}");
        return marking;
    }

    public static ParseFault Fault(string text)
    {
        var reading = TyreMarkingReader.Read(text);
        Assert.False(reading.TryGet(out var marking, out var fault), $"{text} was read as {marking}");
        return fault;
    }
}
