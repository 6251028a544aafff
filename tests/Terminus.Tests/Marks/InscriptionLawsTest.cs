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
    public void NoCharacterIsLookedAtMoreThanFourTimes(InscriptionText text)
    {
        Inscription.Read(text.Value, null, out int visits);

        Assert.True(visits <= 4 * text.Value.Length, visits + " visits of " + text.Value.Length + " characters");
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

    [Fact]
    public void LongTextsAreReadInProportionToTheirLength()
    {
        foreach (string piece in new[] { "PAT. APR. 17-94 ", "PATPATPAT", "1 234 567 ", "&,&,", "[[[[", "MADE IN ", "D.R.G.M.", "?", "J*", "U.S. & ", "1/", "PATAPPLIEDFO", "GESETZLICHGESCHUTZ" })
        {
            string text = string.Concat(Enumerable.Repeat(piece, 20_000 / piece.Length));
            Inscription.Read(text, null, out int visits);
            Assert.True(visits <= 4 * text.Length, piece + ": " + visits + " visits of " + text.Length);
        }
    }
}
