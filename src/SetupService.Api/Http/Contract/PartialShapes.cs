namespace SetupService.Api.Http.Contract;

/// <summary>
/// Makes of a document's shape that of a change to it: the same members and limits, none required. An object of several kinds
/// becomes one object with the members of all of them, since a change need not repeat the kind; which of them belong together
/// shows when the change is made. The elements of an array stay whole, as arrays are replaced whole.
/// </summary>
internal sealed class PartialShapes
{
    private readonly Dictionary<ContractShape, ContractShape> _known = [];

    public ContractShape Of(ContractShape shape)
    {
        if (_known.TryGetValue(shape, out var known))
            return known;

        return shape switch
        {
            ObjectShape whole => Complete(shape, new ObjectShape(whole.Type), [whole]),
            VariantShape variant => Complete(shape, new ObjectShape(variant.Type, variant.Teller), variant.Shapes),
            _ => shape,
        };
    }

    private ObjectShape Complete(ContractShape whole, ObjectShape partial, IReadOnlyList<ObjectShape> kinds)
    {
        _known.Add(whole, partial);
        return Fill(partial, kinds);
    }

    private ObjectShape Fill(ObjectShape partial, IReadOnlyList<ObjectShape> kinds)
    {
        partial.Complete(
        [
            .. kinds.SelectMany(kind => kind.Members).GroupBy(member => member.Name, StringComparer.Ordinal)
                .Select(same => new MemberShape(same.Key, isRequired: false, Join(partial, same.Key, [.. same.Select(member => member.Shape).Distinct()]))),
        ]);
        return partial;
    }

    /// <summary>The shape of a member of that name, whichever kind it is of.</summary>
    private ContractShape Join(ObjectShape parent, string name, ContractShape[] shapes)
    {
        if (shapes.Length == 1)
            return Of(shapes[0]);
        if (shapes is [WordShape, ..] && Array.TrueForAll(shapes, shape => shape is WordShape))
            return new WordShape([.. shapes.Cast<WordShape>().SelectMany(shape => shape.Words).Distinct(StringComparer.Ordinal)]);
        if (Array.TrueForAll(shapes, shape => shape is ObjectShape))
            return Fill(new ObjectShape(parent.Type), [.. shapes.Cast<ObjectShape>()]);
        throw new InvalidOperationException($"The kinds of {parent.Type.Name} have members {name} that no change can hold as one.");
    }
}
