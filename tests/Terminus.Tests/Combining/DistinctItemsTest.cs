namespace Terminus.Tests.Combining;

public class DistinctItemsTest
{
    // The number decides how they are compared.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(16)]
    public void Of_ItemsOfWhichNoneIsTwice_IsTheSameList(int count)
    {
        ValueList<Evidence> items = Items(count);
        Assert.Same(items, DistinctItems.Of(items));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(15)]
    [InlineData(16)]
    [InlineData(40)]
    public void Of_ItemsOfWhichOneIsTwice_HasEachOnceInTheOrderMet(int count)
    {
        for (int twice = 0; twice < count - 1; twice++)
        {
            Assert.Equal(Items(count - 1), DistinctItems.Of(ValueList.Of(Items(count - 1).Append(Items(count)[twice]))));
        }
    }

    private static ValueList<Evidence> Items(int count)
        => ValueList.Of<Evidence>(Enumerable.Range(0, count).Select(i => new Opinion(DateWindow.InYear(1900 + i), 0.5, "witness " + i)));
}
