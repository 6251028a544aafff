namespace Terminus.Tests.Marks;

/// <summary>Two marks are equal when all their members are.</summary>
public class MarkTest
{
    [Fact]
    public void Equals_MarksOfTheTable_WhenAllThatTheyShowIsEqual()
    {
        string[] texts = [.. TestTable.Rows("marks", "corners.csv").Where(row => row[0] is "numbers" or "status").Select(row => row[1])];
        (Mark Mark, string Shown)[] marks = [.. texts.Concat(texts.Select(text => " " + text))
            .SelectMany(text => Inscription.Read(text).Marks).Select(mark => (mark, Shown(mark)))];
        foreach ((Mark one, string shown) in marks.Where((_, i) => i % 7 == 0))
        {
            Assert.All(marks, other => Assert.Equal(shown == other.Shown, one.Equals(other.Mark)));
        }
    }

    [Fact]
    public void Equals_TheSameTextReadAgain_IsEqualAndHasTheSameHash()
        => Assert.All(TestTable.Rows("marks", "corners.csv"), row =>
        {
            Inscription one = Inscription.Read(row[1]);
            Inscription other = Inscription.Read(row[1]);
            Assert.Equal(one, other);
            Assert.Equal(one.GetHashCode(), other.GetHashCode());
            Assert.Equal(one.Marks.Select(mark => mark.GetHashCode()), other.Marks.Select(mark => mark.GetHashCode()));
            Assert.NotEqual(one, Inscription.Read(row[1] + " "));
        });

    [Fact]
    public void Equals_SameWordsElsewhereOrInOtherRegisters_IsAnother()
    {
        Mark mark = Assert.Single(Inscription.Read("PAT. 2345678").Marks);
        var own = new Register("US", "utility", [new RegisterRow(1, 9_000_000, DateWindow.InYear(1901), RowOrigin.Source, "an invented gazette")]);
        Assert.NotEqual(mark, Assert.Single(Inscription.Read(" PAT. 2345678").Marks));
        Assert.NotEqual(mark, Assert.Single(Inscription.Read("PAT. 2345678", RegisterSet.BuiltIn.With(own)).Marks));
        Assert.False(mark.Equals(null));
    }

    private static string Shown(Mark mark)
        => string.Join("|", mark, mark.KindName, mark.Start, mark.Length, mark.Group, mark.IsUncertain, mark.WordingId, string.Join(",", mark.Windows),
            string.Join(",", mark.Reasons), string.Join(",", mark.Alternatives.Select(Shown)));
}
