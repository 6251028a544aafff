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
}
