namespace Terminus.Tests.Architecture;

public class FolderOrderTest
{
    private static readonly SourceFile Below = new("Combining", "Dating.cs", "namespace Terminus;\n\npublic sealed class Dating\n{\n}\n");

    [Fact]
    public void DevelopersGuide_Table_IsTheOrderOfTheHouse()
        => Assert.Equal(
            [
                "", "Dates", "Documents", "Evidence", "Combining", "Registers", "Marks", "Sightings", "Reference", "Pieces", "Advice", "Reports", "Inventories",
            ],
            FolderOrder.OfDevelopersGuide().Order);

    [Fact]
    public void Library_EveryFile_UsesOnlyFoldersAboveItsOwn()
        => Assert.Empty(FolderOrder.OfDevelopersGuide().Violations(SourceTree.Library));

    [Theory]
    [InlineData("internal sealed class A\n{\n    private Dating dating;\n}")]
    [InlineData("internal sealed class A : Dating;")]
    [InlineData("internal static class A\n{\n    internal static object B() => new Dating();\n}")]
    [InlineData("internal static class A\n{\n    internal static object B() => Dating.Of();\n}")]
    [InlineData("internal static class A\n{\n    internal static List<Dating> B() => [];\n}")]
    [InlineData("internal static class A\n{\n    internal static bool B(object o) => o is Dating;\n}")]
    [InlineData("internal static class A\n{\n    internal static bool B(Dating? d, Dating[] e) => true;\n}")]
    [InlineData("internal static class A\n{\n    internal static object B() => Terminus.Dating.Of();\n}")]
    [InlineData("internal static class A\n{\n    internal static Type B() => typeof(Dating);\n}")]
    public void Violations_FileThatUsesAFolderBelow_NamesFileTypeAndFolder(string code)
        => Assert.Equal(["Dates/A.cs uses Dating of Combining"], Violations(code));

    [Theory]
    [InlineData("/// <summary>See <see cref=\"Dating\"/>.</summary>\ninternal sealed class A;")]
    [InlineData("internal static class A\n{\n    internal const string B = \"Dating\"; // Dating\n}")]
    [InlineData("internal static class A\n{\n    /* Dating */ internal static string B() => $@\"a \"\"Dating\"\" b\";\n}")]
    [InlineData("internal sealed class A\n{\n    public string Dating { get; }\n}")]
    [InlineData("internal sealed class A\n{\n    internal object B(A a) => a.Dating;\n}")]
    [InlineData("internal sealed class A\n{\n    internal A(string dating) => Dating = dating;\n\n    public string? Dating { get; }\n}")]
    [InlineData("internal sealed class DatingText;")]
    public void Violations_NameThatIsNoUseOfTheType_IsPassedOver(string code) => Assert.Empty(Violations(code));

    [Fact]
    public void Violations_FolderUsesItsOwnAndThoseAbove_AreNone()
        => Assert.Empty(new FolderOrder(["", "Dates", "Combining"]).Violations(
        [
            Below,
            new SourceFile("Dates", "A.cs", "internal sealed class A;"),
            new SourceFile("Combining", "B.cs", "internal sealed class B\n{\n    private Dating? dating;\n    private A? a;\n}"),
        ]));

    [Fact]
    public void Violations_FolderWithoutAPlace_IsNamed()
        => Assert.Equal(
            ["Sundries/A.cs is in a folder that the order does not name"],
            new FolderOrder(["", "Dates"]).Violations([new SourceFile("Sundries", "A.cs", "internal sealed class A;")]));

    private static IEnumerable<string> Violations(string code)
        => new FolderOrder(["", "Dates", "Combining"]).Violations([Below, new SourceFile("Dates", "A.cs", "namespace Terminus;\n\n" + code + "\n")]);
}
