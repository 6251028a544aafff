namespace Terminus.Tests;

public class KeptTest
{
    private int made;

    [Fact]
    public void Get_AskedAgain_IsTheSameAnswerMadeOnce()
    {
        var kept = new Kept<int, string>(4);
        string first = Get(kept, 1);
        Assert.Same(first, Get(kept, 1));
        Assert.Equal(1, made);
    }

    [Fact]
    public void Get_MoreThanAreKept_KeepsNoMoreThanTheMost()
    {
        var kept = new Kept<int, string>(8);
        for (int i = 0; i < 1000; i++)
        {
            Assert.Equal("answer " + i, Get(kept, i));
            Assert.InRange(kept.Count, 1, 8);
        }
    }

    [Fact]
    public void Get_AskedForBetweenManyOthers_Stays()
    {
        var kept = new Kept<int, string>(8);
        for (int i = 1; i <= 100; i++)
        {
            Get(kept, 0);
            Get(kept, i);
        }

        Assert.Equal(101, made);
    }

    [Fact]
    public void Get_NewAfterManyOthers_IsKeptToo()
    {
        var kept = new Kept<int, string>(8);
        for (int i = 0; i < 100; i++)
        {
            Get(kept, i);
            Get(kept, i);
            Assert.Same(Get(kept, i), Get(kept, i));
        }
    }

    [Fact]
    public void Get_ManyThreads_GiveEachItsAnswer()
    {
        var kept = new Kept<int, string>(16);
        Parallel.For(0, 20_000, i => Assert.Equal("answer " + (i % 50), kept.Get(i % 50, 0, static (key, _) => "answer " + key)));
        Assert.InRange(kept.Count, 1, 16 + (2 * Environment.ProcessorCount));
    }

    private string Get(Kept<int, string> kept, int key)
        => kept.Get(key, this, static (key, test) =>
        {
            test.made++;
            return "answer " + key;
        });
}
