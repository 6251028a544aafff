using System.Text;
using FsCheck;
using FsCheck.Xunit;

namespace Terminus.Tests.Documents;

public class DocumentReaderTest
{
    private enum Colour
    {
        Red,
        Green,
    }

    private static readonly Choices<Colour> Colours = new(("red", Colour.Red), ("green", Colour.Green));
    private static readonly MemberNames Names = new("a thing", "!id", "title", "colour", "sure", "tags", "parts", "format", "flag");

    [Fact]
    public void Read_SoundDocument_HasNoProblemAndAllValues()
    {
        (string read, IReadOnlyList<DocumentProblem> problems) = Read(
            """{ "format": 1, "id": "QH-1", "title": "té\u00e9\n", "colour": "green", "sure": 0.5, "flag": true, "tags": [ "a", "b" ], "parts": [ { "id": "x" } ] }""");
        Assert.Empty(problems);
        Assert.Equal("id=QH-1;title=téé\n;colour=Green;sure=0.5;flag=True;tags=a,b;[id=x;]", read);
    }

    [Fact]
    public void Read_ByteOrderMark_IsAccepted()
    {
        (string read, IReadOnlyList<DocumentProblem> problems) = Read([0xEF, 0xBB, 0xBF, .. "{\"id\":\"a\"}"u8]);
        Assert.Empty(problems);
        Assert.Equal("id=a;", read);
    }

    [Theory]
    [InlineData("""{ "id": "a", "titel": "x" }""", "$.titel", "Did you mean \"title\"?")]
    [InlineData("""{ "id": "a", "id": "b" }""", "$.id", "stands twice")]
    [InlineData("""{ "title": "x" }""", "$", "\"id\" is missing")]
    [InlineData("""{ "id": 7 }""", "$.id", "Found the number 7 where a name, a string, is wanted.")]
    [InlineData("""{ "id": null }""", "$.id", "Leave the member out")]
    [InlineData("""{ "id": "" }""", "$.id", "1 to 200 characters")]
    [InlineData("""{ "id": " a" }""", "$.id", "no space at either end")]
    [InlineData("""{ "id": "a", "title": [ 1, { "x": [] } ] }""", "$.title", "Found a list where a string is wanted.")]
    [InlineData("""{ "id": "a", "title": "\ud800" }""", "$.title", "no Unicode characters")]
    [InlineData("""{ "id": "a", "title": "x\u0000y" }""", "$.title", "U+0000")]
    [InlineData("""{ "id": "a", "\udc00": 1 }""", "$['�']", "is not known")]
    [InlineData("""{ "id": "a", "colour": "gren" }""", "$.colour", "(\"red\", \"green\") is wanted. Did you mean \"green\"?")]
    [InlineData("""{ "id": "a", "sure": 1.1 }""", "$.sure", "Found the number 1.1 where a confidence")]
    [InlineData("""{ "id": "a", "sure": 1e999 }""", "$.sure", "Found the number 1e999")]
    [InlineData("""{ "id": "a", "sure": "0.5" }""", "$.sure", "Found the string \"0.5\"")]
    [InlineData("""{ "id": "a", "flag": 1 }""", "$.flag", "true or false")]
    [InlineData("""{ "id": "a", "tags": {} }""", "$.tags", "Found an object where a list of tags in [ ] is wanted.")]
    [InlineData("""{ "id": "a", "tags": [ "x", 2 ] }""", "$.tags[1]", "Found the number 2 where a tag")]
    [InlineData("""{ "id": "a", "parts": [ { "id": "x" }, { "colour": "red" } ] }""", "$.parts[1]", "\"id\" is missing")]
    [InlineData("""{ "id": "a", "parts": [ "x" ] }""", "$.parts[0]", "Found the string \"x\" where a thing, an object in { }, is wanted.")]
    [InlineData("""{ "id": "a", "format": 2 }""", "$.format", "has format 2")]
    [InlineData("""{ "id": "a", "format": 1.5 }""", "$.format", "the whole number 1")]
    [InlineData("""{ "id": "a" } {}""", "$", "This is not JSON from here on: found \"{\".")]
    [InlineData("""{ "id": "a", }""", "$", "Take out the comma before it.")]
    [InlineData("""{ "id": "a" // x""", "$", "Comments are not allowed.")]
    [InlineData("""{ 'id': "a" }""", "$", "double quotes")]
    [InlineData("""{ "id": "a" """, "$", "ends before its JSON does")]
    [InlineData("", "$", "The document is empty")]
    [InlineData("[]", "$", "Found a list where a thing")]
    [InlineData("null", "$", "Found null where a thing")]
    public void Read_OneFault_IsOneProblemWithPathAndWhatIsAllowed(string json, string path, string message)
    {
        DocumentProblem problem = Assert.Single(Read(json).Problems);
        Assert.Equal(path, problem.Path);
        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        Assert.Equal("box.json", problem.File);
    }

    [Fact]
    public void Read_UnknownMember_ListsTheAllowedOnes()
        => Assert.Contains(
            "a thing has \"id\", \"title\", \"colour\", \"sure\", \"tags\", \"parts\", \"format\", \"flag\".",
            Assert.Single(Read("""{ "id": "a", "zzzzzzzz": 1 }""").Problems).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Read_ManyFaults_AreAllReportedInOrderWithLineAndColumn()
    {
        IReadOnlyList<DocumentProblem> problems = Read("{\n  \"id\": 1,\r\n  \"é\": 2, \"title\": 3,\n\"parts\": [\n {},\n  { \"id\": \"b\", \"sure\": 2 } ] }").Problems;
        Assert.Equal(
            ["2:9 $.id", "3:3 $.é", "3:20 $.title", "5:2 $.parts[0]", "6:24 $.parts[1].sure"],
            problems.Select(p => $"{p.Line}:{p.Column} {p.Path}"));
    }

    [Fact]
    public void Read_MalformedAfterFaults_KeepsThemAndEndsWithThePlace()
    {
        IReadOnlyList<DocumentProblem> problems = Read("{\n \"id\": 1,\n \"title\" \"x\" }").Problems;
        Assert.Equal(["2:8", "3:10"], problems.Select(p => $"{p.Line}:{p.Column}"));
        Assert.Equal("box.json:3:10: $: This is not JSON from here on: found \"\"\". A comma may be missing before it.", problems[1].ToString());
    }

    [Theory]
    [InlineData(63, false)]
    [InlineData(64, true)]
    public void Read_Nesting_IsReadTo64Levels(int lists, bool refused)
    {
        string json = "{ \"id\": \"a\", \"title\": " + new string('[', lists) + new string(']', lists) + " }";
        DocumentProblem problem = Read(json).Problems[^1];
        Assert.Equal(refused, problem.Message.Contains("deeper than 64", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_InvalidUtf8InAString_IsAProblemThere()
    {
        DocumentProblem problem = Assert.Single(Read([.. "{\"id\":\"a\",\"title\":\""u8, 0xFF, 0xC3, .. "\"}"u8]).Problems);
        Assert.Equal("$.title", problem.Path);
    }

    [Fact]
    public void Read_DocumentAboveTheLimit_IsOneProblem()
    {
        byte[] large = new byte[DocumentReader.MaxLength + 1];
        Assert.Contains("at most 67108864 are read", Assert.Single(Read(large).Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_MoreThanAThousandProblems_EndsThere()
    {
        string json = "{ \"id\": \"a\", \"tags\": [ " + string.Join(", ", Enumerable.Repeat("1", 5000)) + " ] }";
        IReadOnlyList<DocumentProblem> problems = Read(json).Problems;
        Assert.Equal(DocumentReader.MaxProblems + 1, problems.Count);
        Assert.Contains("the rest of the document was not read", problems[^1].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_ByteOrderMark_DoesNotCountAsAColumn()
        => Assert.Equal(8, Assert.Single(Read([0xEF, 0xBB, 0xBF, .. "{\"id\": 7}"u8]).Problems).Column);

    [Property(MaxTest = 500)]
    public void ReadingAnyBytesNeverThrows(byte[] bytes) => Read(bytes);

    [Property(MaxTest = 500)]
    public void ReadingABrokenCopyOfADocumentNeverThrows(PositiveInt place, byte unit, bool cut)
    {
        byte[] bytes = Encoding.UTF8.GetBytes("""{ "format": 1, "id": "QH-1", "title": "té\u00e9\n", "colour": "green", "sure": 0.5, "tags": [ "a" ], "parts": [ { "id": "x" } ] }""");
        int index = place.Get % bytes.Length;
        bytes[index] = unit;
        Read(cut ? bytes[..index] : bytes);
    }

    private static (string Read, IReadOnlyList<DocumentProblem> Problems) Read(string json) => Read(Encoding.UTF8.GetBytes(json));

    private static (string Read, IReadOnlyList<DocumentProblem> Problems) Read(byte[] json)
    {
        var reader = new DocumentReader(json, "box.json");
        var read = new StringBuilder();
        ReadThing(ref reader, read);
        return (read.ToString(), reader.Finish());
    }

    private static void ReadThing(ref DocumentReader reader, StringBuilder read)
    {
        if (!reader.OpenObject(Names))
        {
            return;
        }

        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "id": read.Append("id=" + reader.ReadName() + ";"); break;
                case "title": read.Append("title=" + reader.ReadString() + ";"); break;
                case "colour": read.Append("colour=" + reader.ReadChoice(Colours, "a colour") + ";"); break;
                case "sure": read.Append(System.Globalization.CultureInfo.InvariantCulture, $"sure={reader.ReadConfidence()};"); break;
                case "flag": read.Append("flag=" + reader.ReadBool() + ";"); break;
                case "tags": read.Append("tags=" + string.Join(",", reader.ReadNames("tags", "a tag")) + ";"); break;
                case "format": reader.ReadFormat(); break;
                case "parts" when reader.OpenArray("things"):
                    while (reader.NextItem())
                    {
                        read.Append('[');
                        ReadThing(ref reader, read);
                        read.Append(']');
                    }

                    break;
            }
        }
    }

    [Fact]
    public void OrThrow_OfNothing_SaysThatTheDocumentSaysNothing()
    {
        var error = Assert.Throws<DocumentException>(() => new DocumentResult<Piece>(null, []).OrThrow());
        Assert.Equal("The document says nothing.", error.Message);
        Assert.Empty(error.Problems);
        var two = new DocumentException([new DocumentProblem("One.", "$.a", "f.json", 3, 4), new DocumentProblem("Two.")]);
        Assert.Equal("f.json:3:4: $.a: One.\n$: Two.", two.Message);
    }

    [Theory]
    [InlineData("{ \"id\": \"a\", \"flag\": \"\\ud800\" }", "Found a string that is not Unicode where true or false is wanted.")]
    [InlineData("{ \"id\": \"a\", \"format\": 2 }", "The document has format 2; this version of the library reads format 1 and needs to be newer.")]
    [InlineData("{ 'id': 1 }", "This is not JSON from here on: found \"'\". Strings and names stand in double quotes.")]
    [InlineData("{ \"id\": \"a\" \"title\": 1 }", "This is not JSON from here on: found \"\"\". A comma may be missing before it.")]
    [InlineData("{ \"id\": \"a\nb\" }", "This is not JSON from here on: found the control character or space 0x0A. Inside a string a line break is written \\n and a tab \\t.")]
    [InlineData("{ \"id\": é }", "This is not JSON from here on: found \"é\".")]
    [InlineData("{ \"id\": \ud83d\ude00 }", "This is not JSON from here on: found \"\ud83d\ude00\".")]
    [InlineData("", "The document is empty; JSON is wanted.")]
    [InlineData("{ \"id\": \"a\"", "The document ends before its JSON does: a quotation mark, bracket or brace is not closed.")]
    [InlineData("]", "This is not JSON from here on: found \"]\".")]
    public void Read_OneFault_SaysExactlyWhatIsFoundAndWhatToDo(string json, string message)
        => Assert.Contains(message, Read(json).Problems.Select(p => p.Message));
}
