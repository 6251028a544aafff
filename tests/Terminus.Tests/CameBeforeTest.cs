namespace Terminus.Tests;

public class CameBeforeTest
{
    [Fact]
    public void Note_Again_CameBefore()
    {
        var came = new CameBefore(8);
        Assert.False(came.Note(5));
        Assert.True(came.Note(5));
        Assert.True(came.Note(5));
    }

    [Fact]
    public void Note_AnotherOfItsPlaceBetween_CameNotBefore()
    {
        var came = new CameBefore(8);
        came.Note(5);
        came.Note(13);
        Assert.False(came.Note(5));
    }

    [Fact]
    public void Note_AnyHash_HasAPlace()
    {
        var came = new CameBefore(8);
        foreach (int hash in new[] { int.MinValue, -1, int.MaxValue })
        {
            Assert.False(came.Note(hash));
            Assert.True(came.Note(hash));
        }
    }
}
