using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace Terminus.Tests.Marks;

/// <summary>What holds for every text, whatever was typed.</summary>
public class InscriptionLawsTest
{
    [Property(Arbitrary = [typeof(Gens.Marks)], MaxTest = 1000)]
    public void EveryCharacterBelongsToAMarkOrToTheRest(InscriptionText text)
    {
        Inscription read = Inscription.Read(text.Value);
        var parts = read.Marks.Select(m => (m.Start, m.Text)).Concat(read.Unread.Select(u => (u.Start, u.Text))).OrderBy(p => p.Start).ToList();

        Assert.Equal(text.Value, string.Concat(parts.Select(p => p.Text)));
        int position = 0;
        foreach ((int start, string part) in parts)
        {
            Assert.Equal(position, start);
            position += part.Length;
        }
    }

    [Property(Arbitrary = [typeof(Gens.Marks)], MaxTest = 1000)]
    public void OnAverageNoCharacterIsLookedAtMoreThanEightTimes(InscriptionText text)
    {
        Inscription.Read(text.Value, null, out int visits);

        // The limit of docs/limits.md: it holds for broken brackets among lost letters as well.
        Assert.True(visits <= 8 * text.Value.Length, visits + " visits of " + text.Value.Length + " characters");
    }

    [Property(Arbitrary = [typeof(Gens.Marks)])]
    public void TheSameTextAlwaysGivesTheSameReadingInAnyCulture(InscriptionText text)
    {
        Inscription expected = Inscription.Read(text.Value);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            foreach (string culture in new[] { "tr-TR", "fr-FR", "ar-SA" })
            {
                CultureInfo.CurrentCulture = new CultureInfo(culture);
                Assert.Equal(expected, Inscription.Read(text.Value));
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Property(Arbitrary = [typeof(Gens.Marks)], MaxTest = 300)]
    public void WindowsAreNestedAndConfidencesNeverRise(InscriptionText text)
    {
        foreach (Mark mark in Inscription.Read(text.Value).Marks.SelectMany(m => m.Alternatives.Prepend(m)))
        {
            for (int i = 1; i < mark.Windows.Count; i++)
            {
                Assert.True(mark.Windows[i - 1].Window.Contains(mark.Windows[i].Window));
                Assert.True(mark.Windows[i - 1].Confidence >= mark.Windows[i].Confidence);
            }
        }
    }

    [Theory]
    [InlineData("PATAPPLIEDFO")]
    [InlineData("GESETZLICHGESCHUTZ")]
    [InlineData("MADEINMADEIX")]
    public void JoinedWordsCostInProportionToTheirNumber(string word)
    {
        // Each run is taken back at its end, so that a list which moved what stands behind it would cost the square of its length.
        string few = string.Concat(Enumerable.Repeat(word + " ", 50));
        string many = string.Concat(Enumerable.Repeat(few, 4));
        Inscription.Read(few, null, out int visitsOfFew);
        Inscription.Read(many, null, out int visitsOfMany);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Inscription.Read(few);
        long ofFew = GC.GetAllocatedBytesForCurrentThread() - before;
        before = GC.GetAllocatedBytesForCurrentThread();
        Inscription.Read(many);
        long ofMany = GC.GetAllocatedBytesForCurrentThread() - before;

        Assert.Equal(4 * visitsOfFew, visitsOfMany);
        Assert.InRange(ofMany, 0, 5 * ofFew);
    }

    [Property(Arbitrary = [typeof(Gens.Marks)], MaxTest = 300)]
    public void WhatIsAskedForFirstAndInWhichOrderChangesNothing(InscriptionText text)
    {
        Inscription one = Inscription.Read(text.Value);
        Inscription other = Inscription.Read(text.Value);
        _ = other.Unread;
        foreach (Mark mark in other.Marks.Reverse())
        {
            _ = (mark.Alternatives, mark.WordingId, mark.Reasons, mark.Windows);
        }

        Assert.Equal(one, other);
        Assert.Equal(one.GetHashCode(), other.GetHashCode());
        Assert.Equal(one.Marks.Select(m => m.GetHashCode()), other.Marks.Select(m => m.GetHashCode()));
        Assert.Equal(one.Unread, other.Unread);
    }

    [Fact]
    public void ThreadsThatAskForTheSameMarkGetTheSameLists()
    {
        foreach (int _ in Enumerable.Range(0, 100))
        {
            Mark mark = Inscription.Read("PAT. NO. 123456").Marks[0];
            var lists = new IReadOnlyList<StatedWindow>[4];
            Parallel.For(0, lists.Length, i => lists[i] = mark.Windows);
            Assert.All(lists, list => Assert.Same(lists[0], list));
        }
    }

    [Fact]
    public void LongTextsAreReadInProportionToTheirLength()
    {
        foreach (string piece in new[] { "PAT. APR. 17-94 ", "PATPATPAT", "1 234 567 ", "&,&,", "[[[[", "MADE IN ", "D.R.G.M.", "?", "J*", "U.S. & ", "1/", "PATAPPLIEDFO", "GESETZLICHGESCHUTZ" })
        {
            string text = string.Concat(Enumerable.Repeat(piece, Inscription.LongestText / piece.Length));
            Inscription.Read(text, null, out int visits);
            Assert.True(visits <= 4 * text.Length, piece + ": " + visits + " visits of " + text.Length);
        }
    }
}
