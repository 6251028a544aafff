using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace Terminus.Tests.Architecture;

/// <summary>The house rules of the code that a machine can check, over everything the library exports and every file of it.</summary>
public partial class HouseRulesTest
{
    private const int MostLines = 400;
    private const BindingFlags Own = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    // Files above the limit, each with its reason.
    private static readonly Dictionary<string, string> LongFiles = new()
    {
    };

    // Files that are not named for a type in them, each with its reason.
    private static readonly Dictionary<string, string> OddNames = new()
    {
        ["Downlevel.cs"] = "What the older target lacks, in namespaces of the platform.",
        ["Pieces/PieceEntries.cs"] = "The small records of one document, a list of members each.",
    };

    private static readonly Type[] Exported = typeof(Dating).Assembly.GetExportedTypes();

    [Fact]
    public void Namespace_EveryExportedType_IsTerminus() => Assert.All(Exported, type => Assert.Equal("Terminus", type.Namespace));

    [Fact]
    public void Classes_EveryExported_IsSealedOrStaticOrAClosedFamily()
        => Assert.Empty(Exported.Where(type => type.IsClass && !type.IsSealed && !IsClosedFamily(type)).Select(type => type.Name));

    [Fact]
    public void Setters_EveryExported_IsInitOnly()
        => Assert.Empty(Properties().Where(p => p.SetMethod is { IsPublic: true } set && !IsInit(set)).Select(Name));

    [Fact]
    public void Fields_EveryExported_IsAConstant()
        => Assert.Empty(Exported.Where(t => !t.IsEnum).SelectMany(t => t.GetFields(Own)).Where(f => !f.IsLiteral).Select(Name));

    [Fact]
    public void Collections_EveryExportedProperty_IsAReadOnlyInterface()
        => Assert.Empty(Properties().Where(p => IsCollection(p.PropertyType) && !p.PropertyType.IsInterface).Select(Name));

    [Fact]
    public void Records_WithAList_KeepItByContent()
    {
        ILookup<string, SourceFile> files = SourceTree.Library.SelectMany(f => f.Types.Select(t => (t, f))).ToLookup(t => t.t, t => t.f);
        Assert.Empty(Exported.Where(IsRecord).Where(type => type.GetProperties(Own).Any(p => IsCollection(p.PropertyType)))
            .Where(type => !files[type.Name].Any(f => f.Code.Contains("ValueList", StringComparison.Ordinal))).Select(t => t.Name));
    }

    [Fact]
    public void Structs_EveryDefault_CanBeReadPrintedAndCompared()
    {
        foreach (Type type in Exported.Where(t => t is { IsValueType: true, IsEnum: false, ContainsGenericParameters: false }))
        {
            object value = Activator.CreateInstance(type)!;
            foreach (PropertyInfo property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0))
            {
                Assert.Null(Record.Exception(() => property.GetValue(value)));
            }

            Assert.Equal(value, Activator.CreateInstance(type));
            Assert.NotNull(value.ToString());
        }
    }

    [Fact]
    public void Structs_EveryExported_IsReadOnlyAndEquatable()
        => Assert.Empty(Exported.Where(t => t is { IsValueType: true, IsEnum: false }
            && !(t.CustomAttributes.Any(a => a.AttributeType.Name == nameof(IsReadOnlyAttribute)) && t.GetInterfaces().Contains(typeof(IEquatable<>).MakeGenericType(t)))).Select(t => t.Name));

    [Fact]
    public void TryMethods_EveryExported_ReturnABoolAndAnOut()
        => Assert.Empty(Exported.SelectMany(t => t.GetMethods(Own)).Where(m => m.Name.StartsWith("Try", StringComparison.Ordinal))
            .Where(m => m.ReturnType != typeof(bool) || !m.GetParameters().Any(p => p.IsOut)).Select(Name));

    [Fact]
    public void Exceptions_EveryExported_CarriesData()
        => Assert.Empty(Exported.Where(t => t.IsSubclassOf(typeof(Exception)) && t.GetProperties(Own).Length == 0).Select(t => t.Name));

    [Fact]
    public void Files_EveryOne_IsNamedForATypeInIt()
        => Assert.Empty(SourceTree.Library.Where(f => !f.Types.Contains(f.Name.Split('.')[0]) && !OddNames.ContainsKey(f.ToString())).Select(f => f.ToString()));

    [Fact]
    public void Files_EveryOne_HasAtMost400LinesOrAReason()
        => Assert.Empty(SourceTree.Library.Where(f => f.Lines > MostLines && !LongFiles.ContainsKey(f.ToString())).Select(f => $"{f}: {f.Lines} lines"));

    [Fact]
    public void Exemptions_EveryOne_IsStillNeeded()
    {
        Assert.All(LongFiles.Keys, name => Assert.True(SourceTree.Library.Single(f => f.ToString() == name).Lines > MostLines));
        Assert.All(OddNames.Keys, name => Assert.DoesNotContain(name.Split('.')[0], SourceTree.Library.Single(f => f.ToString() == name).Types));
    }

    [Fact]
    public void Library_EveryFile_IsPure()
        => Assert.Empty(SourceTree.Library.SelectMany(f => Impure().Matches(f.Code).Select(m => $"{f}: {m.Value}")));

    [Theory]
    [InlineData("var now = DateTime.UtcNow;")]
    [InlineData("Console.WriteLine();")]
    [InlineData("string s = File.ReadAllText(path);")]
    [InlineData("string s = Environment.NewLine;")]
    [InlineData("var c = CultureInfo.CurrentCulture;")]
    [InlineData("var t = SystemClock.Instance.GetCurrentInstant();")]
    public void Impure_ClockFileConsoleEnvironmentOrCulture_IsFound(string code) => Assert.Matches(Impure(), code);

    [Theory]
    [InlineData("var f = SourceFile.Text;")]
    [InlineData("int line = problem.File.Length;")]
    [InlineData("var c = CultureInfo.InvariantCulture;")]
    public void Impure_OtherCode_IsPassedOver(string code) => Assert.DoesNotMatch(Impure(), code);

    private static bool IsClosedFamily(Type type)
        => type.IsAbstract && type.GetConstructors(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance)
            .All(c => c.IsFamilyAndAssembly || c.IsAssembly || c.IsPrivate || IsCopy(c));

    // The compiler gives a record a protected constructor that copies; it takes an instance, so it opens no family.
    private static bool IsCopy(ConstructorInfo constructor)
        => constructor.IsFamily && constructor.GetParameters() is [{ } only] && only.ParameterType == constructor.DeclaringType;

    private static bool IsRecord(Type type) => type.GetMethod("<Clone>$") is not null;

    private static bool IsInit(MethodInfo set) => set.ReturnParameter.GetRequiredCustomModifiers().Any(m => m.Name == "IsExternalInit");

    private static bool IsCollection(Type type) => type != typeof(string) && typeof(IEnumerable).IsAssignableFrom(type);

    private static IEnumerable<PropertyInfo> Properties() => Exported.SelectMany(t => t.GetProperties(Own));

    private static string Name(MemberInfo member) => member.DeclaringType!.Name + "." + member.Name;

    [GeneratedRegex(@"(?<![\w.])(?:Console\.|File\.|Directory\.|Environment\.|HttpClient\b|SystemClock\b|DateTime(?:Offset)?\.(?:Now|UtcNow|Today)\b)|\bCurrent(?:UI)?Culture\b|\bGetCurrentInstant\b")]
    private static partial Regex Impure();
}
