namespace Terminus.Tests.Dates;

public class WindowMoveTest
{
    private static readonly DateWindow Fifties = DateWindow.BetweenYears(1950, 1959);

    [Fact]
    public void Days_LaterStartAndEarlierEnd_HaveTheirSigns()
    {
        var move = new WindowMove(Fifties, DateWindow.BetweenYears(1951, 1958));
        Assert.True(move.IsMove);
        Assert.Equal((365, -365), (move.StartDays, move.EndDays));
    }

    [Fact]
    public void Days_OpenEndThatStaysOpen_IsNoMove()
    {
        var move = new WindowMove(DateWindow.From(new(1950, 1, 1)), DateWindow.From(new(1950, 1, 2)));
        Assert.Equal((1, 0), (move.StartDays, move.EndDays));
    }

    [Fact]
    public void Days_OpenEndThatCloses_IsAMoveOfNoCount()
    {
        var move = new WindowMove(DateWindow.From(new(1950, 1, 1)), Fifties);
        Assert.True(move.IsMove);
        Assert.Equal((0, null), (move.StartDays, move.EndDays));
    }

    [Fact]
    public void IsMove_NoWindowOnEitherSide_IsNone()
    {
        Assert.False(new WindowMove(null, null).IsMove);
        Assert.True(new WindowMove(null, Fifties).IsMove);
        Assert.Null(new WindowMove(null, Fifties).StartDays);
    }
}
