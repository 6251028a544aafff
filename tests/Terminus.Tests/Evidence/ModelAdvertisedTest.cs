namespace Terminus.Tests.EvidenceKinds;

public class ModelAdvertisedTest
{
    [Fact]
    public void StatedWindows_FirstAndLast_AreWideAndNear()
        => Assert.Equal(
            ["1945-11-01/1968-12-31 (0.93)", "1952-11-01/1963-12-31 (0.7)"],
            Stated.By(new ModelAdvertised(Stated.Date("1955-11"), Stated.Date("1958"))));

    [Fact]
    public void StatedWindows_OneSource_IsFirstAndLast()
        => Assert.Equal(
            ["1945-11-01/1965-11-30 (0.93)", "1952-11-01/1960-11-30 (0.7)"], Stated.By(new ModelAdvertised(Stated.Date("1955-11"))));

    [Fact]
    public void StatedWindows_UncertainLast_CapsTheWholeItem()
        => Assert.Equal(
            ["1945-01-01/1968-12-31 (0.7)", "1952-01-01/1963-12-31 (0.7)"],
            Stated.By(new ModelAdvertised(Stated.Date("1955"), Stated.Date("1958?"))));
}
