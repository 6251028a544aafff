using System.Reflection;
using FsCheck.Xunit;
using NodaTime;

namespace Terminus.Tests.Dates;

[Properties(Arbitrary = [typeof(Gens)], MaxTest = 300)]
public class DateWindowLaws
{
    [Property]
    public void No_getter_throws(DateWindow window)
    {
        foreach (PropertyInfo property in typeof(DateWindow).GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            Assert.Null(Record.Exception(() => property.GetValue(window)));
        }

        Assert.NotEmpty(window.ToString());
    }

    [Property]
    public void Both_ends_belong_to_the_window(DateWindow window)
    {
        Assert.True(window.NotBefore is not { } first || window.Contains(first));
        Assert.True(window.NotAfter is not { } last || window.Contains(last));
    }

    [Property]
    public void A_window_is_its_ends(DateWindow window)
        => Assert.Equal(window, DateWindow.Between(window.NotBefore, window.NotAfter));

    [Property]
    public void A_day_lies_in_the_window_when_it_is_neither_before_nor_after_it(DateWindow window, LocalDate day)
        => Assert.Equal((window.NotBefore ?? day) <= day && day <= (window.NotAfter ?? day), window.Contains(day));

    [Property]
    public void Containing_is_the_order_of_sets(DateWindow one, DateWindow two, DateWindow three)
    {
        Assert.True(one.Contains(one));
        Assert.True(DateWindow.Any.Contains(one));
        Assert.Equal(one == two, one.Contains(two) && two.Contains(one));
        Assert.True(!(one.Contains(two) && two.Contains(three)) || one.Contains(three));
    }

    [Property]
    public void Windows_meet_when_they_have_an_intersection(DateWindow one, DateWindow two)
    {
        Assert.Equal(one.Meets(two), one.Intersect(two) is not null);
        Assert.Equal(one.Meets(two), two.Meets(one));
        Assert.True(one.Meets(one));
    }

    [Property]
    public void A_day_lies_in_the_intersection_when_it_lies_in_both(DateWindow one, DateWindow two, LocalDate day)
    {
        Assert.Equal(one.Contains(day) && two.Contains(day), one.Intersect(two)?.Contains(day) ?? false);
        Assert.Equal(one.Intersect(two), two.Intersect(one));
        Assert.Equal(one, one.Intersect(DateWindow.Any));
    }

    [Property]
    public void The_hull_is_the_least_window_that_contains_both(DateWindow one, DateWindow two, DateWindow other)
    {
        DateWindow hull = one.Hull(two);
        Assert.True(hull.Contains(one) && hull.Contains(two));
        Assert.Equal(other.Contains(one) && other.Contains(two), other.Contains(hull));
        Assert.Equal(hull, two.Hull(one));
    }

    [Property]
    public void Intersecting_with_the_hull_changes_nothing(DateWindow one, DateWindow two)
    {
        Assert.Equal(one, one.Intersect(one.Hull(two)));
        Assert.True(one.Intersect(two) is not { } common || (one.Hull(common) == one && two.Hull(common) == two));
    }

    [Property]
    public void Equality_is_that_of_the_ends(DateWindow one, DateWindow two)
    {
        bool same = one.NotBefore == two.NotBefore && one.NotAfter == two.NotAfter;
        Assert.Equal((same, same, !same), (one.Equals((object)two), one == two, one != two));
        Assert.True(!same || one.GetHashCode() == two.GetHashCode());
    }

    [Property]
    public void The_text_of_a_window_is_EDTF_for_it_and_any_date_has_none(DateWindow window)
    {
        string? text = window.ToEdtf();
        Assert.Equal(window.IsAny, text is null);
        Assert.True(text is null || EdtfDate.Parse(text).Window == window);
    }
}
