namespace Terminus.Tests;

public class TextBufferTest
{
    [Fact]
    public void Add_MoreThanThereIsRoomFor_KeepsAll()
        => Assert.Equal("abc–12-345", new TextBuffer(1).Add('a').Add("bc").Add('–').AddDigits(12).AddDigits(-345).ToString());

    [Fact]
    public void AddDigits_EndsOfTheIntegers_AreWhole()
        => Assert.Equal("-2147483648 2147483647", new TextBuffer().AddDigits(int.MinValue).Add(' ').AddDigits(int.MaxValue).ToString());

    [Fact]
    public void Clear_WhatWasAdded_IsGone()
    {
        TextBuffer text = new TextBuffer().Add("before");
        text.Clear();
        Assert.Equal("after", text.Add("after").ToString());
    }

    [Fact]
    public void Capitalise_AnEmptyText_StaysEmpty()
    {
        var text = new TextBuffer();
        text.Capitalise(0);
        Assert.Equal(0, text.Length);
    }

    [Fact]
    public void Capitalise_ALetter_IsThatLetterAlone()
    {
        TextBuffer text = new TextBuffer().Add("abc");
        text.Capitalise(1);
        text.Capitalise(3);
        Assert.Equal("aBc", text.ToString());
    }

    // Each way of adding at every fullness, so that what does not fit is noticed at the one that lacks it.
    [Fact]
    public void Add_EachWayAtEveryFullness_KeepsAll()
    {
        for (int full = 0; full <= 20; full++)
        {
            string before = new('x', full);
            Assert.Equal(before + "y", new TextBuffer(8).Add(before).Add('y').ToString());
            Assert.Equal(before + "yz", new TextBuffer(8).Add(before).Add("yz").ToString());
            Assert.Equal(before + "0.25", new TextBuffer(8).Add(before).AddFixedPoint(250, 3).ToString());
            Assert.Equal(before + "-7", new TextBuffer(8).Add(before).AddDigits(-7).ToString());
            Assert.Equal(before, new TextBuffer(8).Add(before).Add((string?)null).ToString());
            Assert.Equal(full, new TextBuffer(8).Add(before).Length);
        }
    }

    [Fact]
    public void AddDigits_Zero_IsOneDigit() => Assert.Equal("0", new TextBuffer().AddDigits(0).ToString());
}
