#:property PublishAot=false
#:property RestorePackagesWithLockFile=false
#:property RestoreLockedMode=false
#:property GenerateDocumentationFile=false
#:property EnforceCodeStyleInBuild=false

// dotnet run profile.cs -- COUNTS REFERENCES PROFILE
// Makes the profile the native compiler takes (.mibc) of the counts the runtime writes as text (DOTNET_WritePGOData; .ci/profile.sh does the whole). REFERENCES is the compiler's
// response file: only methods and types of the assemblies it compiles are written, since its own class library is another one than the JIT's. A .mibc is an assembly whose
// global methods hold, for each method counted, its token and its counts as constants; the method AssemblyDictionary names them by the assemblies they speak of
// (dotnet/runtime, src/coreclr/tools/dotnet-pgo/README.md and src/coreclr/tools/Common/Pgo/PgoFormat.cs).
using System.Collections.Immutable;
using System.Globalization;
using System.IO.Compression;
using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;

if (args is not [var countsFile, var responseFile, var profileFile])
{
    Console.Error.WriteLine("usage: profile.cs COUNTS REFERENCES PROFILE");
    return 2;
}

// A method that ran less often than this is left to the compiler's own judgement.
const long FewestCounts = 50;

Universe universe = new(File.ReadLines(responseFile)
    .Select(static line => line.StartsWith("-r:", StringComparison.Ordinal) ? line[3..] : line)
    .Where(static line => line.EndsWith(".dll", StringComparison.Ordinal) && File.Exists(line)));
Emitter emitter = new(universe);
int written = 0, skipped = 0;
foreach (var method in CountedMethod.Read(File.ReadLines(countsFile)))
{
    if (method.GreatestCount < FewestCounts)
        continue;
    if (emitter.TryAdd(method))
        written++;
    else
        skipped++;
}

emitter.Save(profileFile);
Console.WriteLine($"{written} methods written, {skipped} that the native compiler has not or that are generic themselves left out");
return 0;

/// <summary>One record of a method: what is counted at a place of its IL, and the counts or the types seen there.</summary>
internal sealed record Place(int Kind, int IlOffset, int Count, int Other, IReadOnlyList<string> Data)
{
    private const int MarshalMask = 0xF;
    private const int TypeHandle = 3;
    private const int MethodHandle = 4;

    public bool HoldsTypes => (Kind & MarshalMask) == TypeHandle;

    public bool HoldsMethods => (Kind & MarshalMask) == MethodHandle;
}

internal sealed record CountedMethod(string Name, int IlSize, IReadOnlyList<Place> Places)
{
    public long GreatestCount => Places.Where(static place => place is { HoldsTypes: false, HoldsMethods: false }).SelectMany(static place => place.Data)
        .Select(static count => long.Parse(count, CultureInfo.InvariantCulture)).DefaultIfEmpty().Max();

    public static IEnumerable<CountedMethod> Read(IEnumerable<string> lines)
    {
        var size = 0;
        string? name = null;
        List<Place> places = [];
        List<string> data = [];
        foreach (var line in lines)
        {
            if (line.StartsWith("@@@", StringComparison.Ordinal) || line.StartsWith("***", StringComparison.Ordinal))
            {
                if (name is not null)
                    yield return new(name, size, places);
                (name, places) = (null, []);
                if (line.Contains("ilSize", StringComparison.Ordinal))
                    size = int.Parse(line.Split(' ')[6].AsSpan(2), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
            }
            else if (line.StartsWith("MethodName: ", StringComparison.Ordinal))
            {
                name = line["MethodName: ".Length..].TrimEnd();
            }
            else if (line.StartsWith("Schema ", StringComparison.Ordinal))
            {
                var part = line.Split(' ');
                data = [];
                places.Add(new(int.Parse(part[2], CultureInfo.InvariantCulture), int.Parse(part[4], CultureInfo.InvariantCulture), int.Parse(part[6], CultureInfo.InvariantCulture),
                    unchecked((int)uint.Parse(part[8], CultureInfo.InvariantCulture)), data));
            }
            else if (!line.StartsWith("Signature: ", StringComparison.Ordinal) && places.Count > 0)
            {
                data.Add(line.StartsWith("TypeHandle: ", StringComparison.Ordinal) ? line["TypeHandle: ".Length..].TrimEnd() : Number(line));
            }
        }
    }

    /// <summary>A count of eight bytes stands as its lower and its upper half.</summary>
    private static string Number(string line) => line.Split(' ', StringSplitOptions.RemoveEmptyEntries) is [var lower, var upper] && uint.TryParse(upper, out var high)
        ? (uint.Parse(lower, CultureInfo.InvariantCulture) + ((long)high << 32)).ToString(CultureInfo.InvariantCulture)
        : line.Trim();
}

internal sealed record Definition(MetadataReader Reader, PEReader File, TypeDefinitionHandle Handle, string Assembly)
{
    public TypeDefinition Type => Reader.GetTypeDefinition(Handle);

    public bool IsValueType
    {
        get
        {
            var parent = Type.BaseType;
            if (parent.IsNil)
                return false;
            var name = parent.Kind == HandleKind.TypeReference
                ? Reader.GetString(Reader.GetTypeReference((TypeReferenceHandle)parent).Name)
                : parent.Kind == HandleKind.TypeDefinition ? Reader.GetString(Reader.GetTypeDefinition((TypeDefinitionHandle)parent).Name) : "";
            return name is "ValueType" or "Enum" && Reader.GetString(Type.Name) != "Enum";
        }
    }
}

/// <summary>All types the native compiler has, by their names as reflection writes them.</summary>
internal sealed class Universe
{
    private readonly Dictionary<string, Definition> _types = new(StringComparer.Ordinal);

    public Universe(IEnumerable<string> files)
    {
        foreach (var file in files)
        {
            PEReader assembly = new(ImmutableArray.Create(File.ReadAllBytes(file)));
            var reader = assembly.GetMetadataReader();
            var name = reader.GetString(reader.GetAssemblyDefinition().Name);
            foreach (var handle in reader.TypeDefinitions)
                _types.TryAdd(NameOf(reader, handle), new Definition(reader, assembly, handle, name));
        }
    }

    public Definition? Find(string name) => _types.GetValueOrDefault(name);

    private static string NameOf(MetadataReader reader, TypeDefinitionHandle handle)
    {
        var type = reader.GetTypeDefinition(handle);
        var name = reader.GetString(type.Name);
        if (type.IsNested)
            return NameOf(reader, type.GetDeclaringType()) + "+" + name;
        return type.Namespace.IsNil ? name : reader.GetString(type.Namespace) + "." + name;
    }
}

/// <summary>Writes the assembly that is the profile.</summary>
internal sealed class Emitter(Universe universe) : ISignatureTypeProvider<byte[], object?>
{
    private readonly MetadataBuilder _metadata = new();
    private readonly Dictionary<string, AssemblyReferenceHandle> _assemblies = new(StringComparer.Ordinal);
    private readonly Dictionary<(EntityHandle Scope, string Namespace, string Name), TypeReferenceHandle> _references = [];
    private readonly Dictionary<string, InstructionEncoder> _groups = new(StringComparer.Ordinal);

    /// <summary>False where the native compiler has no such method, or it cannot be told which is meant.</summary>
    public bool TryAdd(CountedMethod counted)
    {
        try
        {
            if (Find(counted) is not var (owner, assembly, name, signature))
                return false;
            if (!_groups.TryGetValue(assembly, out var il))
                _groups.Add(assembly, il = new InstructionEncoder(new BlobBuilder()));
            il.OpCode(ILOpCode.Ldtoken);
            il.Token(_metadata.AddMemberReference(owner, _metadata.GetOrAddString(name), _metadata.GetOrAddBlob(signature)));
            il.LoadString(_metadata.GetOrAddUserString("InstrumentationDataStart"));
            foreach (var place in counted.Places.Where(static place => !place.HoldsMethods))
            {
                // A mask that says that all four members of the record follow, then they, then its data.
                il.LoadConstantI4(0xF);
                il.LoadConstantI4(place.IlOffset);
                il.LoadConstantI4(place.Kind);
                il.LoadConstantI4(place.Count);
                il.LoadConstantI4(place.Other);
                foreach (var data in place.Data)
                    Write(il, place, data);
            }

            il.LoadString(_metadata.GetOrAddUserString("InstrumentationDataEnd"));
            il.OpCode(ILOpCode.Pop);
            return true;
        }
        catch (NotSupportedException)
        {
            return false;
        }
    }

    public void Save(string file)
    {
        _metadata.AddModule(0, _metadata.GetOrAddString("profile.dll"), _metadata.GetOrAddGuid(Guid.Empty), default, default);
        _metadata.AddAssembly(_metadata.GetOrAddString("profile"), new Version(0, 0, 0, 0), default, default, default, AssemblyHashAlgorithm.None);
        MethodBodyStreamEncoder bodies = new(new BlobBuilder());
        BlobBuilder nothing = new();
        new BlobEncoder(nothing).MethodSignature().Parameters(0, static returned => returned.Void(), static _ => { });
        var signature = _metadata.GetOrAddBlob(nothing);
        MethodDefinitionHandle Method(string name, InstructionEncoder il) => _metadata.AddMethodDefinition(
            MethodAttributes.Public | MethodAttributes.Static, MethodImplAttributes.IL, _metadata.GetOrAddString(name), signature, bodies.AddMethodBody(il, 8), default);

        InstructionEncoder dictionary = new(new BlobBuilder());
        var first = default(MethodDefinitionHandle);
        foreach (var (assembly, il) in _groups.OrderBy(static group => group.Key, StringComparer.Ordinal))
        {
            var method = Method("Assemblies_" + assembly, il);
            if (first.IsNil)
                first = method;
            dictionary.LoadString(_metadata.GetOrAddUserString(assembly + ";"));
            dictionary.OpCode(ILOpCode.Ldtoken);
            dictionary.Token(method);
            dictionary.OpCode(ILOpCode.Pop);
        }

        Method("AssemblyDictionary", dictionary);
        _metadata.AddTypeDefinition(default, default, _metadata.GetOrAddString("<Module>"), default, MetadataTokens.FieldDefinitionHandle(1), first);
        BlobBuilder image = new();
        new ManagedPEBuilder(new PEHeaderBuilder(imageCharacteristics: Characteristics.Dll), new MetadataRootBuilder(_metadata), bodies.Builder).Serialize(image);
        File.Delete(file);
        using var archive = ZipFile.Open(file, ZipArchiveMode.Create);
        using var entry = archive.CreateEntry("profile.dll", CompressionLevel.SmallestSize).Open();
        image.WriteContentTo(entry);
    }

    public byte[] GetArrayType(byte[] elementType, ArrayShape shape) =>
        [0x14, .. elementType, .. Compressed(shape.Rank), .. Compressed(shape.Sizes.Length), .. shape.Sizes.SelectMany(Compressed), .. Compressed(shape.LowerBounds.Length), .. shape.LowerBounds.SelectMany(Compressed)];

    public byte[] GetByReferenceType(byte[] elementType) => [0x10, .. elementType];

    public byte[] GetFunctionPointerType(MethodSignature<byte[]> signature) => throw new NotSupportedException();

    public byte[] GetGenericInstantiation(byte[] genericType, ImmutableArray<byte[]> typeArguments) =>
        [0x15, .. genericType, .. Compressed(typeArguments.Length), .. typeArguments.SelectMany(static argument => argument)];

    public byte[] GetGenericMethodParameter(object? genericContext, int index) => [0x1E, .. Compressed(index)];

    public byte[] GetGenericTypeParameter(object? genericContext, int index) => [0x13, .. Compressed(index)];

    public byte[] GetModifiedType(byte[] modifier, byte[] unmodifiedType, bool isRequired) => [(byte)(isRequired ? 0x1F : 0x20), .. modifier[1..], .. unmodifiedType];

    public byte[] GetPinnedType(byte[] elementType) => throw new NotSupportedException();

    public byte[] GetPointerType(byte[] elementType) => [0x0F, .. elementType];

    public byte[] GetPrimitiveType(PrimitiveTypeCode typeCode) => [(byte)typeCode];

    public byte[] GetSZArrayType(byte[] elementType) => [0x1D, .. elementType];

    public byte[] GetTypeFromDefinition(MetadataReader reader, TypeDefinitionHandle handle, byte rawTypeKind)
    {
        var assembly = reader.GetString(reader.GetAssemblyDefinition().Name);
        return [Kind(rawTypeKind), .. Token(ReferenceTo(reader, handle, assembly))];
    }

    public byte[] GetTypeFromReference(MetadataReader reader, TypeReferenceHandle handle, byte rawTypeKind) => [Kind(rawTypeKind), .. Token(ReferenceTo(reader, handle))];

    public byte[] GetTypeFromSpecification(MetadataReader reader, object? genericContext, TypeSpecificationHandle handle, byte rawTypeKind) => throw new NotSupportedException();

    private static byte Kind(byte raw) => raw is 0x11 or 0x12 ? raw : (byte)0x12;

    private void Write(InstructionEncoder il, Place place, string data)
    {
        if (!place.HoldsTypes)
        {
            var count = long.Parse(data, CultureInfo.InvariantCulture);
            if (count is >= int.MinValue and <= int.MaxValue)
                il.LoadConstantI4((int)count);
            else
                il.LoadConstantI8(count);
        }
        else if (data != "NULL" && TypeName.TryParse(data, out var name) && TypeHandleOf(name) is { } type)
        {
            il.OpCode(ILOpCode.Ldtoken);
            il.Token(type);
        }
        else
        {
            // 0 = none seen; any other small number = one that is not known here.
            il.LoadConstantI4(data == "NULL" ? 0 : 1 + (Math.Abs(StringComparer.Ordinal.GetHashCode(data)) & 0xFFFF));
        }
    }

    /// <summary>The method by the longest part of its name that is a type; told from others of its name by the size of its IL.</summary>
    private (EntityHandle Owner, string Assembly, string Name, byte[] Signature)? Find(CountedMethod counted)
    {
        for (var dot = counted.Name.LastIndexOf('.'); dot > 0; dot = counted.Name.LastIndexOf('.', dot - 1))
        {
            if (!TypeName.TryParse(counted.Name.AsSpan(0, dot), out var type) || type.IsArray || DefinitionOf(type) is not { } definition)
                continue;
            var name = counted.Name[(dot + 1)..];
            var fitting = definition.Type.GetMethods().Select(definition.Reader.GetMethodDefinition)
                .Where(method => definition.Reader.GetString(method.Name) == name && method.RelativeVirtualAddress != 0 && method.GetGenericParameters().Count == 0
                    && definition.File.GetMethodBody(method.RelativeVirtualAddress).GetILBytes()!.Length == counted.IlSize)
                .ToList();
            if (fitting is not [var only])
                return null;
            return TypeHandleOf(type) is { } owner ? (owner, definition.Assembly, name, Signature(only.DecodeSignature(this, null))) : null;
        }

        return null;
    }

    private static byte[] Signature(MethodSignature<byte[]> signature) =>
        [signature.Header.RawValue, .. Compressed(signature.ParameterTypes.Length), .. signature.ReturnType, .. signature.ParameterTypes.SelectMany(static type => type)];

    private Definition? DefinitionOf(TypeName name) => universe.Find((name.IsConstructedGenericType ? name.GetGenericTypeDefinition() : name).FullName);

    private EntityHandle? TypeHandleOf(TypeName name)
    {
        if (name.IsSimple)
            return DefinitionOf(name) is { } definition ? ReferenceTo(definition.Reader, definition.Handle, definition.Assembly) : null;
        return Encoded(name) is { } signature ? _metadata.AddTypeSpecification(_metadata.GetOrAddBlob(signature)) : null;
    }

    /// <summary>A type as a signature writes it; null where the native compiler has no such type.</summary>
    private byte[]? Encoded(TypeName name)
    {
        if (name.IsSZArray)
            return Encoded(name.GetElementType()) is { } element ? [0x1D, .. element] : null;
        if (name.IsArray || name.IsPointer || name.IsByRef || DefinitionOf(name) is not { } definition)
            return null;
        byte[] plain = [(byte)(definition.IsValueType ? 0x11 : 0x12), .. Token(ReferenceTo(definition.Reader, definition.Handle, definition.Assembly))];
        if (!name.IsConstructedGenericType)
            return plain;
        var arguments = name.GetGenericArguments().Select(Encoded).ToImmutableArray();
        return arguments.Contains(null) ? null : GetGenericInstantiation(plain, arguments!);
    }

    private TypeReferenceHandle ReferenceTo(MetadataReader reader, TypeDefinitionHandle handle, string assembly)
    {
        var type = reader.GetTypeDefinition(handle);
        return type.IsNested
            ? Reference(ReferenceTo(reader, type.GetDeclaringType(), assembly), "", reader.GetString(type.Name))
            : Reference(Assembly(assembly), reader.GetString(type.Namespace), reader.GetString(type.Name));
    }

    private TypeReferenceHandle ReferenceTo(MetadataReader reader, TypeReferenceHandle handle)
    {
        var type = reader.GetTypeReference(handle);
        EntityHandle scope = type.ResolutionScope.Kind switch
        {
            HandleKind.TypeReference => ReferenceTo(reader, (TypeReferenceHandle)type.ResolutionScope),
            HandleKind.AssemblyReference => Assembly(reader.GetString(reader.GetAssemblyReference((AssemblyReferenceHandle)type.ResolutionScope).Name)),
            _ => throw new NotSupportedException(),
        };
        return Reference(scope, reader.GetString(type.Namespace), reader.GetString(type.Name));
    }

    private TypeReferenceHandle Reference(EntityHandle scope, string space, string name)
    {
        if (!_references.TryGetValue((scope, space, name), out var reference))
            _references.Add((scope, space, name), reference = _metadata.AddTypeReference(scope, space.Length == 0 ? default : _metadata.GetOrAddString(space), _metadata.GetOrAddString(name)));
        return reference;
    }

    private AssemblyReferenceHandle Assembly(string name)
    {
        if (!_assemblies.TryGetValue(name, out var assembly))
            _assemblies.Add(name, assembly = _metadata.AddAssemblyReference(_metadata.GetOrAddString(name), new Version(0, 0, 0, 0), default, default, default, default));
        return assembly;
    }

    private static IEnumerable<byte> Token(TypeReferenceHandle type) => Compressed(CodedIndex.TypeDefOrRef(type));

    private static IEnumerable<byte> Compressed(int value)
    {
        BlobBuilder bytes = new();
        bytes.WriteCompressedInteger(value);
        return bytes.ToArray();
    }
}
