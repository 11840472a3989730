using Mono.Cecil;
using Mono.Cecil.Cil;

namespace SetupService.Tests.Shared;

/// <summary>
/// Which folder of an assembly uses which, read from its compiled code once. A folder is a namespace; a type uses every type named in
/// its bases, members, attributes and method bodies. Constants and nameof leave no trace in compiled code and are not seen.
/// </summary>
internal sealed class FolderGraph
{
    private readonly string _root;
    private readonly Dictionary<(string From, string To), SortedSet<string>> _uses = [];
    private readonly Dictionary<string, SortedSet<string>> _outside = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _folders = new(StringComparer.Ordinal);

    private FolderGraph(string root) => _root = root;

    /// <summary>The folders, by their namespaces below the root.</summary>
    public IReadOnlyCollection<string> Folders => _folders;

    /// <summary>Full names of the types used that are not below the root.</summary>
    public IReadOnlyCollection<string> Outside => _outside.Keys;

    /// <param name="assemblyFile">The compiled assembly.</param>
    /// <param name="root">Namespace all folders stand in, with its closing dot.</param>
    public static FolderGraph Read(string assemblyFile, string root)
    {
        FolderGraph graph = new(root);
        using var module = ModuleDefinition.ReadModule(assemblyFile);
        foreach (var type in module.GetTypes())
        {
            if (graph.FolderOf(type) is { } folder)
                graph.AddType(folder, type);
        }

        return graph;
    }

    /// <summary>The types of one folder that use another, or of one room (a first part of a name) another; empty where none does.</summary>
    public IReadOnlyCollection<string> Uses(string from, string to) =>
        [.. _uses.Where(use => IsIn(use.Key.From, from) && IsIn(use.Key.To, to) && !(IsIn(use.Key.From, to) || IsIn(use.Key.To, from))).SelectMany(use => use.Value).Distinct()];

    /// <summary>Types whose full names begin so, used by the assembly.</summary>
    public IEnumerable<string> UsesOutside(string start) => _outside.Keys.Where(name => name == start || name.StartsWith(start + ".", StringComparison.Ordinal));

    /// <summary>Types of the assembly that use a type whose full name begins so.</summary>
    public IEnumerable<string> UsersOf(string start) => UsesOutside(start).SelectMany(name => _outside[name]).Distinct();

    /// <summary>
    /// The circles: pairs of folders that use each other, as "A, B" in order of name, and the longer circles that are left where no such pair is
    /// followed. A folder and one inside it may use each other: the outer one maps the calls of its inner ones and holds what they share.
    /// </summary>
    public IReadOnlyList<string> Circles()
    {
        SortedSet<string> circles = new(StringComparer.Ordinal);
        foreach ((var from, var to) in _uses.Keys)
        {
            if (string.CompareOrdinal(from, to) < 0 && _uses.ContainsKey((to, from)) && !IsIn(from, to) && !IsIn(to, from))
                circles.Add($"{from}, {to}");
        }

        return [.. circles.Concat(LongerCircles())];
    }

    private IEnumerable<string> LongerCircles()
    {
        var oneWay = _uses.Keys.Where(use => !_uses.ContainsKey((use.To, use.From))).ToLookup(use => use.From, use => use.To);
        var groups = _folders.ToDictionary(folder => folder, folder => Reached(folder).Where(other => Reached(other).Contains(folder)).Append(folder).ToHashSet());
        return groups.Values.Where(group => group.Count > 1).Select(group => string.Join(", ", group.Order(StringComparer.Ordinal))).Distinct().Order(StringComparer.Ordinal);

        HashSet<string> Reached(string start)
        {
            HashSet<string> seen = [];
            Stack<string> left = new([start]);
            while (left.TryPop(out var next))
            {
                foreach (var to in oneWay[next].Where(seen.Add))
                    left.Push(to);
            }

            return seen;
        }
    }

    private static bool IsIn(string folder, string room) => folder == room || folder.StartsWith(room + ".", StringComparison.Ordinal);

    private void AddType(string folder, TypeDefinition type)
    {
        _folders.Add(folder);
        var user = Outermost(type).Name;
        Add(folder, user, type.BaseType);
        foreach (var one in type.Interfaces)
            Add(folder, user, one.InterfaceType);
        AddAttributes(folder, user, type);
        AddParameters(folder, user, type);
        foreach (var field in type.Fields)
        {
            Add(folder, user, field.FieldType);
            AddAttributes(folder, user, field);
        }

        foreach (var property in type.Properties)
            AddAttributes(folder, user, property);
        foreach (var method in type.Methods)
            AddMethod(folder, user, method);
    }

    private void AddMethod(string folder, string user, MethodDefinition method)
    {
        Add(folder, user, method.ReturnType);
        AddAttributes(folder, user, method);
        AddParameters(folder, user, method);
        foreach (var parameter in method.Parameters)
        {
            Add(folder, user, parameter.ParameterType);
            AddAttributes(folder, user, parameter);
        }

        if (!method.HasBody)
            return;
        foreach (var variable in method.Body.Variables)
            Add(folder, user, variable.VariableType);
        foreach (var handler in method.Body.ExceptionHandlers)
            Add(folder, user, handler.CatchType);
        foreach (var instruction in method.Body.Instructions)
            AddOperand(folder, user, instruction);
    }

    private void AddOperand(string folder, string user, Instruction instruction)
    {
        switch (instruction.Operand)
        {
            case TypeReference type:
                Add(folder, user, type);
                break;
            case MethodReference method:
                Add(folder, user, method.DeclaringType);
                Add(folder, user, method.ReturnType);
                foreach (var parameter in method.Parameters)
                    Add(folder, user, parameter.ParameterType);
                if (method is GenericInstanceMethod generic)
                {
                    foreach (var argument in generic.GenericArguments)
                        Add(folder, user, argument);
                }

                break;
            case FieldReference field:
                Add(folder, user, field.DeclaringType);
                Add(folder, user, field.FieldType);
                break;
        }
    }

    private void AddAttributes(string folder, string user, ICustomAttributeProvider place)
    {
        foreach (var attribute in place.CustomAttributes)
        {
            Add(folder, user, attribute.AttributeType);

            // What an attribute of a library is given cannot be read without that library.
            if (FolderOf(attribute.AttributeType) is null)
                continue;
            foreach (var argument in attribute.ConstructorArguments)
            {
                Add(folder, user, argument.Type);
                Add(folder, user, argument.Value as TypeReference);
            }
        }
    }

    private void AddParameters(string folder, string user, IGenericParameterProvider place)
    {
        foreach (var parameter in place.GenericParameters)
        {
            foreach (var constraint in parameter.Constraints)
                Add(folder, user, constraint.ConstraintType);
        }
    }

    private void Add(string folder, string user, TypeReference? type)
    {
        switch (type)
        {
            case null or GenericParameter:
                return;
            case GenericInstanceType generic:
                foreach (var argument in generic.GenericArguments)
                    Add(folder, user, argument);
                Add(folder, user, generic.ElementType);
                return;
            case TypeSpecification specification:
                Add(folder, user, specification.ElementType);
                return;
        }

        if (FolderOf(type) is not { } other)
        {
            var name = Outermost(type).FullName;
            if (!_outside.TryGetValue(name, out var own))
                _outside.Add(name, own = new(StringComparer.Ordinal));
            own.Add(user);
            return;
        }

        if (other == folder)
            return;
        if (!_uses.TryGetValue((folder, other), out var users))
            _uses[(folder, other)] = users = new(StringComparer.Ordinal);
        users.Add(user);
    }

    private string? FolderOf(TypeReference type)
    {
        var name = Outermost(type).Namespace;
        return name.StartsWith(_root, StringComparison.Ordinal) ? name[_root.Length..] : null;
    }

    private static TypeReference Outermost(TypeReference type)
    {
        while (type.DeclaringType is not null)
            type = type.DeclaringType;
        return type;
    }
}
