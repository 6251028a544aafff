namespace Terminus.Tests.Reports;

public class ReasonDraftTest
{
    [Fact]
    public void List_TwoReasons_HoldTheirOwnParameters()
    {
        List<Reason> reasons = ReasonDraft.List(draft =>
        {
            draft.Begin("a.one").With("first", "1").With("second", "").End();
            draft.Begin("a.two").With("first", "2").End();
        });
        Assert.Equal([new Reason("a.one", "first", "1", "second", ""), new Reason("a.two", "first", "2")], reasons);
    }

    [Fact]
    public void Give_AReason_IsThatReason()
    {
        var reason = new Reason("a.rule", "day", "1961-07-11", "what", "déposé");
        Assert.Equal(reason, Assert.Single(ReasonDraft.List(draft => draft.Give(reason))));
    }

    [Fact]
    public void Indexer_AnUnknownName_IsNothing()
        => Assert.True(new ReasonDraft(_ => { }).Begin("a.rule").With("known", "x")["other"].IsEmpty);
}
