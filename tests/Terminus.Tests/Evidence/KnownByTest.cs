namespace Terminus.Tests.EvidenceKinds;

public class KnownByTest
{
    [Fact]
    public void StatedWindows_Record_EndOnItsDay()
        => Assert.Equal(["../1963-04-02 (0.99)"], Stated.By(new KnownBy(Stated.Date("1963-04-02"), "probate list")));

    [Fact]
    public void StatedWindows_BoughtNew_LookBackTenYears()
        => Assert.Equal(
            ["../1963-12-31 (0.99)", "1953-01-01/1963-12-31 (0.8)"],
            Stated.By(new KnownBy(Stated.Date("1963"), "sales receipt", boughtNew: true)));

    [Fact]
    public void StatedWindows_RecordWithoutAnEnd_SayNothing() => Assert.Empty(Stated.By(new KnownBy(Stated.Date("1963/.."))));

    [Fact]
    public void StatedWindows_UncertainRecord_AreCapped()
        => Assert.Equal(["../1963-12-31 (0.7)"], Stated.By(new KnownBy(Stated.Date("1963?"))));
}
