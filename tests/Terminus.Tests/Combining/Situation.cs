namespace Terminus.Tests.Combining;

/// <summary>A situation that is simulated, always from one seed, which was fixed before the first run.</summary>
internal sealed class Situation
{
    internal const ulong Seed = 20_261_125;

    private const int MostItems = 8;
    private const int NearYears = 3;

    private readonly Lazy<Coverage> coverage;

    private Situation(string name, string items, bool isPromised, Func<SplitMix64, Func<SimulatedPiece>> start)
    {
        Name = name;
        Items = items;
        IsPromised = isPromised;
        coverage = new Lazy<Coverage>(() => Coverage.Of(start(new SplitMix64(Seed))));
    }

    /// <summary>All situations, in the order of the page.</summary>
    internal static IReadOnlyList<Situation> All { get; } =
    [
        .. Independent("right as often as stated", Erring.AsStated, isPromised: true, 1, 2, 3, 5, 8),
        .. Independent("the same, wrong by three years at most", new Erring(stated => stated, NearYears), isPromised: false, 3, 5, 8),
        .. Independent("right less often by 0.1", new Erring(stated => stated - 0.1), isPromised: false, 1, 3, 8),
        .. Independent("right less often by 0.2", new Erring(stated => stated - 0.2), isPromised: false, 1, 3, 8),
        new("a pending mark alone, words left on the die by one maker in five", "1", false, random =>
        {
            var simulation = new Simulation(random, new Erring(stated => stated < 0.96 ? Math.Min(stated, 0.8) : stated));
            return () => simulation.Next(1, SimulatedEvidence.Pending);
        }),
        .. Shared("three patents on one die", "3", causes => causes.PatentsOnOneDie),
        .. Shared("eight advertisements of one model", "8", causes => causes.AdvertsOfOneModel),
        .. Shared("three features of one fashion", "3", causes => causes.FeaturesOfOneFashion),
    ];

    internal string Name { get; }

    /// <summary>How many items of evidence a piece has.</summary>
    internal string Items { get; }

    /// <summary>Whether the items are independent, right as often as stated and wrong in no particular way, which is what law 10 speaks of.</summary>
    internal bool IsPromised { get; }

    internal Coverage Coverage => coverage.Value;

    /// <summary>A piece with one to eight items that err in some way, drawn by the mix of kinds.</summary>
    internal static Func<SimulatedPiece> Mixed(SplitMix64 random, Erring erring)
    {
        var simulation = new Simulation(random, erring);
        return () => simulation.Next(1 + random.NextInt(MostItems), SimulatedEvidence.Draw);
    }

    public override string ToString() => Name + ", " + Items;

    private static IEnumerable<Situation> Independent(string name, Erring erring, bool isPromised, params int[] counts)
        => counts.Select(count => new Situation(name, DateText.Digits(count), isPromised, random =>
        {
            var simulation = new Simulation(random, erring);
            return () => simulation.Next(count, SimulatedEvidence.Draw);
        })).Append(new Situation(name, "1 to 8", isPromised, random => Mixed(random, erring)));

    private static IEnumerable<Situation> Shared(string name, string items, Func<SharedCauses, Func<bool, SimulatedPiece>> draw)
        => new[] { true, false }.Select(merged => new Situation(
            name + (merged ? ", as one item" : ", as so many"), merged ? "1" : items, merged, random =>
            {
                Func<bool, SimulatedPiece> piece = draw(new SharedCauses(random));
                return () => piece(merged);
            }));
}
