using Terminus.Fuzz;
using Terminus.Fuzz.Targets;

namespace Terminus.Tests.Fuzzing;

/// <summary>Every input that fuzzing kept, through the same checks: the least set that reaches all the code that any input reached.</summary>
public sealed class CorpusReplayTest
{
    public static TheoryData<string> Targets => [.. FuzzTarget.All.Keys];

    [Theory]
    [MemberData(nameof(Targets))]
    public void EveryKeptInputKeepsTheLawsAndTheLimits(string name)
    {
        FuzzTarget target = FuzzTarget.All[name]();
        string[] broken = [.. Corpus(name).Select((input, i) => (Line: i + 1, Wrong: Record.Exception(() => target.Check(input))))
            .Where(checkedInput => checkedInput.Wrong is not null)
            .Select(checkedInput => $"{name}.txt:{checkedInput.Line}: {checkedInput.Wrong}")];

        Assert.Empty(broken);
    }

    [Theory]
    [MemberData(nameof(Targets))]
    public void EveryTargetHasACorpus(string name) => Assert.InRange(Corpus(name).Count(), 10, 3000);

    private static IEnumerable<byte[]> Corpus(string name) => CorpusFile.Read(Path.Combine(AppContext.BaseDirectory, "corpus", name + ".txt"));
}
