using CsCheck;
using SetupService.Domain.Tests.Tyres;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Wheels;

public class WheelMarkingTableTests
{
    private static readonly IReadOnlyList<TypedMarking> Table = TypedMarkings.Rows("wheel-markings.csv");

    public static TheoryData<string> Texts => [.. Table.Select(row => row.Text)];

    [Theory]
    [MemberData(nameof(Texts))]
    public void Every_marking_of_the_table_means_what_it_says_there(string text)
    {
        var row = Table.Single(one => one.Text == text);
        if (row.Standard is not { } standard)
        {
            var fault = WheelMarkingReader.Read(text).Fault;
            Assert.NotNull(fault);
            Assert.Equal(row.RefusedPart, fault.Part);
            Assert.Equal(fault.Part, text.Substring(fault.Position, fault.Part.Length));
            return;
        }

        Assert.True(WheelMarkingReader.Read(text).TryGet(out var marking, out var refused), refused?.Message);
        Assert.Equal(standard, marking.StandardText);
        Assert.Equal((row.Number("widthIn"), row.Number("diameterIn"), row.Number("offsetMm")), (marking.RimWidthIn, marking.RimDiameterIn, marking.OffsetMm));
        Assert.Equal((row.Cells["boltCircle"], row.Number("boreMm")), (marking.BoltCircle?.ToString() ?? "", marking.CentreBoreMm));
    }

    [Fact]
    public void The_usual_spelling_is_read_as_the_same_marking_again() => Assert.All(
        Table.Where(row => row.Standard is not null),
        row =>
        {
            var once = WheelMarkingReader.Read(row.Text).Value!;
            Assert.Equal(once with { Text = once.StandardText }, WheelMarkingReader.Read(once.StandardText).Value);
        });

    [Fact]
    public void Mutated_rows_are_read_or_refused_by_name_and_what_is_read_stays()
    {
        const string alphabet = "0123456789/.,-+*()xXJKBETISOHLCØ \"'×–\u00a0;|½Ω\u0000\ud800";
        Gen.Select(Gen.Int[0, Table.Count - 1], Gen.Int[0, 60], Gen.Int[0, 3], Gen.Int[0, alphabet.Length - 1]).Sample(
            (index, at, kind, letter) =>
            {
                var text = Table[index].Text;
                at = Math.Min(at, text.Length);
                var mutated = kind switch
                {
                    0 when at < text.Length => text.Remove(at, 1),
                    1 when at < text.Length => text.Insert(at, text[at].ToString()),
                    2 when at + 1 < text.Length => text[..at] + text[at + 1] + text[at] + text[(at + 2)..],
                    _ => text.Insert(at, alphabet[letter].ToString()),
                };
                if (WheelMarkingReader.Read(mutated).TryGet(out var marking, out var fault))
                {
                    Assert.Equal(marking with { Text = marking.StandardText }, WheelMarkingReader.Read(marking.StandardText).Value);
                    return;
                }

                Assert.Equal(fault.Part, mutated.Substring(fault.Position, fault.Part.Length));
            },
            iter: 40_000);
    }

    // 8x100/108 has four holes on each circle; one of two is enough for a hub: common practice, no source.
    [Theory]
    [InlineData("4x100/4x108", "4x108", true)]
    [InlineData("8x100/108", "4x100", true)]
    [InlineData("4x100", "8x100/108", true)]
    [InlineData("8x100/108", "8x100", false)]
    [InlineData("4x100/4x108", "4x98", false)]
    public void A_wheel_drilled_for_two_goes_on_either(string wheel, string hub, bool expected)
    {
        var (on, one) = (BoltCircleReader.Read(wheel).Value!, BoltCircleReader.Read(hub).Value!);

        Assert.Equal(expected, on.Matches(one));
        Assert.Equal(expected ? one.DiameterMm : on.DiameterMm, expected && one.Second is null ? on.For(one).DiameterMm : on.DiameterMm);
    }
}
