using System.Collections;
using FsCheck.Xunit;

namespace Terminus.Tests;

public class ValueListTest
{
    [Fact]
    public void Of_Nothing_IsTheEmptyList()
    {
        Assert.Same(ValueList<string>.Empty, ValueList.Of<string>(null));
        Assert.Same(ValueList<string>.Empty, ValueList.Of(Array.Empty<string>()));
        Assert.Same(ValueList<string>.Empty, ValueList<string>.Owning([]));
        Assert.Empty(ValueList<string>.Empty);
    }

    [Fact]
    public void Of_AValueList_IsThatList()
    {
        ValueList<int> list = ValueList.Of([1, 2]);
        Assert.Same(list, ValueList.Of(list));
    }

    [Fact]
    public void Of_AnArray_IsACopy_AndOwningIsTheArrayItself()
    {
        int[] source = [1, 2];
        ValueList<int> copy = ValueList.Of(source);
        ValueList<int> owning = ValueList<int>.Owning(source);
        source[0] = 3;
        Assert.Equal([1, 2], copy);
        Assert.Equal([3, 2], owning);
        Assert.Equal((2, 3, 2), (owning.Count, owning[0], owning.Span[1]));
    }

    [Property]
    public void Lists_are_equal_exactly_when_their_items_are(int[] one, int[] other)
    {
        ValueList<int> list = ValueList.Of(one);
        Assert.Equal(one.SequenceEqual(other), list.Equals(ValueList.Of(other)));
        Assert.Equal(one.SequenceEqual(other), list.Equals((object)ValueList.Of(other)));
        Assert.True(list.Equals(ValueList.Of(one.ToArray())));
        Assert.Equal(list.GetHashCode(), ValueList.Of(one.ToArray()).GetHashCode());
        Assert.False(list.Equals(ValueList.Of(one.Append(0))));
        Assert.False(list.Equals(null));
        Assert.False(list.Equals((object)one));
    }

    [Property]
    public void A_list_enumerates_its_items(string?[] items)
    {
        ValueList<string?> list = ValueList.Of(items);
        Assert.Equal(items, list.ToArray());
        Assert.Equal(items, ((IEnumerable)list).Cast<string?>());
        Assert.Equal("[" + string.Join(", ", items) + "]", list.ToString());
    }

    [Fact]
    public void GetHashCode_OfShortLists_TellsItemsAndTheirOrderApart()
    {
        IEnumerable<ValueList<string?>> lists = from first in Words() from second in Words() select ValueList.Of<string?>([first, second]);
        Assert.InRange(lists.Select(list => list.GetHashCode()).Distinct().Count(), 955, 961);

        static IEnumerable<string?> Words() => Enumerable.Range(0, 30).Select(i => (string?)("word " + i)).Append(null);
    }
}
