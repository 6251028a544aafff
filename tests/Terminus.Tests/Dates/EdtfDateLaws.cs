using System.Globalization;
using FsCheck.Xunit;
using NodaTime;

namespace Terminus.Tests.Dates;

[Properties(Arbitrary = [typeof(Gens)], MaxTest = 300)]
public class EdtfDateLaws
{
    [Property]
    public void A_valid_text_is_read_and_written_back_unchanged(EdtfText text)
    {
        EdtfDate date = EdtfDate.Parse(text.Value);
        Assert.Equal(text.Value, date.ToString());
        Assert.Equal(date, EdtfDate.Parse(date.ToString()));
        Assert.InRange(date.Level, 0, 2);
    }

    [Property]
    public void A_date_never_ends_before_it_begins(EdtfText text)
    {
        EdtfDate date = EdtfDate.Parse(text.Value);
        bool isClosed = date.Earliest.Kind == EdtfBoundKind.Known && date.Latest.Kind == EdtfBoundKind.Known;
        Assert.False(isClosed && date.Latest.IsBefore(date.Earliest));
    }

    [Property(MaxTest = 2000)]
    public void Reading_any_text_never_throws_and_a_refusal_points_into_it(JunkText junk)
    {
        bool isRead = EdtfDate.TryParse(junk.Value, out EdtfDate? date, out EdtfError? error);
        Assert.Equal(isRead, date is not null);
        Assert.Equal(isRead, error is null);
        if (error is not null)
        {
            Assert.InRange(error.Position, 0, junk.Value.Length);
            Assert.Matches("[.?]$", error.Reason);
        }
        else
        {
            Assert.Null(Record.Exception(() => (date!.Window, date.Level, date.Earliest.ToString(), date.Latest.ToString())));
        }
    }

    [Property]
    public void A_window_is_read_back_from_its_text(DateWindow window)
        => Assert.Equal(window.IsAny ? null : window, EdtfDate.From(window)?.Window);

    [Property]
    public void A_day_is_the_window_of_that_day(LocalDate day) => Assert.Equal(DateWindow.On(day), EdtfDate.From(day).Window);

    [Property]
    public void A_year_is_the_window_of_that_year(LocalDate day)
        => Assert.Equal(DateWindow.InYear(day.Year), EdtfDate.InYear(day.Year).Window);

    [Property]
    public void An_interval_is_the_hull_of_its_ends(LocalDate one, LocalDate other)
    {
        (EdtfDate start, EdtfDate end) = (EdtfDate.From(LocalDate.Min(one, other)), EdtfDate.From(LocalDate.Max(one, other)));
        Assert.Equal(DateWindow.On(one).Hull(DateWindow.On(other)), EdtfDate.Parse(start + "/" + end).Window);
    }

    [Property]
    public void A_set_is_the_hull_of_its_members_in_any_order(LocalDate one, LocalDate other)
    {
        DateWindow hull = DateWindow.On(one).Hull(DateWindow.On(other));
        Assert.Equal(hull, EdtfDate.Parse($"[{EdtfDate.From(one)},{EdtfDate.From(other)}]").Window);
        Assert.Equal(hull, EdtfDate.Parse($"{{{EdtfDate.From(other)},{EdtfDate.From(one)}}}").Window);
    }

    [Property]
    public void A_qualifier_changes_no_end(EdtfText text)
    {
        string bare = new([.. text.Value.Where(c => c is not ('?' or '~' or '%'))]);
        (EdtfDate qualified, EdtfDate plain) = (EdtfDate.Parse(text.Value), EdtfDate.Parse(bare));
        Assert.Equal((plain.Earliest, plain.Latest), (qualified.Earliest, qualified.Latest));
        Assert.False(plain.IsUncertain || plain.IsApproximate);
    }

    [Property]
    public void No_culture_changes_what_is_read_or_written(EdtfText text, JunkText junk)
    {
        string expected = Describe(text.Value) + Describe(junk.Value);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            foreach (string name in new[] { "tr-TR", "ar-SA", "th-TH", "fa-IR" })
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
                Assert.Equal(expected, Describe(text.Value) + Describe(junk.Value));
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static string Describe(string text)
        => EdtfDate.TryParse(text, out EdtfDate? date, out EdtfError? error)
            ? $"{date} {date.Earliest} {date.Latest} {date.Window} {date.Window?.NotBefore?.Year.ToString(CultureInfo.InvariantCulture)}"
            : error.ToString();
}
