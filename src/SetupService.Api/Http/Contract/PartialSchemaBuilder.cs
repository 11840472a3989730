namespace SetupService.Api.Http.Contract;

/// <summary>
/// Makes of a document's schema that of a change to it: the same members and limits, none required. An object of several kinds
/// becomes one object with the members of all of them, since a change need not repeat the kind; which of them belong together
/// shows when the change is made. The elements of an array stay whole, as arrays are replaced whole.
/// </summary>
internal sealed class PartialSchemaBuilder
{
    private readonly Dictionary<ContractSchema, ContractSchema> _known = [];

    public ContractSchema Build(ContractSchema schema)
    {
        if (_known.TryGetValue(schema, out var known))
            return known;

        return schema switch
        {
            ObjectSchema whole => Complete(schema, new ObjectSchema(whole.Type), [whole]),
            VariantSchema variant => Complete(schema, new ObjectSchema(variant.Type, variant.Discriminator), variant.Schemas),
            _ => schema,
        };
    }

    private ObjectSchema Complete(ContractSchema whole, ObjectSchema partial, IReadOnlyList<ObjectSchema> kinds)
    {
        _known.Add(whole, partial);
        return Fill(partial, kinds);
    }

    private ObjectSchema Fill(ObjectSchema partial, IReadOnlyList<ObjectSchema> kinds)
    {
        partial.Complete(
        [
            .. kinds.SelectMany(kind => kind.Members).GroupBy(member => member.Name, StringComparer.Ordinal)
                .Select(same => new MemberSchema(same.Key, isRequired: false, Join(partial, same.Key, [.. same.Select(member => member.Schema).Distinct()]))),
        ]);
        return partial;
    }

    /// <summary>The schema of a member of that name, whichever kind it is of.</summary>
    private ContractSchema Join(ObjectSchema parent, string name, ContractSchema[] schemas)
    {
        if (schemas.Length == 1)
            return Build(schemas[0]);
        if (schemas is [EnumSchema, ..] && Array.TrueForAll(schemas, schema => schema is EnumSchema))
            return new EnumSchema([.. schemas.Cast<EnumSchema>().SelectMany(schema => schema.Words).Distinct(StringComparer.Ordinal)]);
        if (Array.TrueForAll(schemas, schema => schema is ObjectSchema))
            return Fill(new ObjectSchema(parent.Type), [.. schemas.Cast<ObjectSchema>()]);
        if (schemas is [NumberSchema first, ..] && Array.TrueForAll(schemas, schema => schema is NumberSchema other && IsSame(first, other)))
            return first;
        throw new InvalidOperationException($"The kinds of {parent.Type.Name} have members {name} that no change can hold as one.");
    }

    private static bool IsSame(NumberSchema one, NumberSchema other) =>
        (one.Minimum, one.Maximum, one.IsWhole, one.Unit) == (other.Minimum, other.Maximum, other.IsWhole, other.Unit);
}
