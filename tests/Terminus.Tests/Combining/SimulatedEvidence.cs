namespace Terminus.Tests.Combining;

/// <summary>
/// Evidence of all eleven kinds for simulated pieces: what an item is like is drawn once, and the day it is anchored to may then be moved. The
/// shares are a guess at what dealers note, no source; all of it is invented.
/// </summary>
/// <remarks>Terms are given, since a law that changed would let no piece lie just past the end of a term that the older law ended sooner.</remarks>
internal static class SimulatedEvidence
{
    private delegate Func<int, Evidence> Kind(SplitMix64 random);

    private static readonly (int Share, Kind Draw)[] Mix =
    [
        (4, Issued), (2, Pending), (2, Registered), (6, Feature), (3, Mark), (1, Subject), (2, Inscribed), (2, Known), (3, Maker), (1, Advertised), (1, Opinion),
    ];

    /// <summary>An item of a kind drawn by the shares of the mix, still to be anchored to a day.</summary>
    internal static Func<int, Evidence> Draw(SplitMix64 random)
    {
        int share = random.NextInt(Mix.Sum(m => m.Share));
        int kind = 0;
        for (; share >= Mix[kind].Share; kind++)
        {
            share -= Mix[kind].Share;
        }

        return Mix[kind].Draw(random);
    }

    private static Func<int, Evidence> Issued(SplitMix64 random)
    {
        Func<int, EvidenceDate> at = Precision(random);
        int term = random.NextDouble() < 0.8 ? 17 : 20;
        return day => new PatentIssued(at(day), termYears: term);
    }

    // The words alone are left out: they start in 1850, and every simulated piece is younger.
    internal static Func<int, Evidence> Pending(SplitMix64 random)
    {
        Func<int, EvidenceDate> at = Precision(random);
        int pendency = Years(random, 1, 6);
        double known = random.NextDouble();
        return day => new PatentPending(known < 0.8 ? at(day) : null, known < 0.6 || known >= 0.8 ? at(day + pendency) : null);
    }

    private static Func<int, Evidence> Registered(SplitMix64 random)
    {
        Func<int, EvidenceDate> at = Precision(random);
        (string right, int? term) = random.NextInt(3) switch
        {
            0 => ("registered-design", 15),
            1 => ("utility-model", 6),
            _ => ("trade-mark", (int?)null),
        };
        return day => new RightRegistered(at(day), right: right, termYears: term);
    }

    private static Func<int, Evidence> Feature(SplitMix64 random)
    {
        Func<int, EvidenceDate> at = Precision(random);
        int common = Years(random, 0, 10);
        int fading = common + Years(random, 5, 30);
        int gone = fading + Years(random, 0, 15);
        var basis = (EvidenceBasis)random.NextInt(4);
        var grade = (EvidenceGrade)random.NextInt(3);
        bool byLaw = random.NextDouble() < 0.2;
        bool introduced = random.NextDouble() < 0.85;
        bool ended = random.NextDouble() < 0.6;
        return day => new FeatureSeen(
            "invented", introduced ? at(day) : null, at(day + common), at(day + fading), ended ? at(day + gone) : null, basis, grade, byLaw);
    }

    private static Func<int, Evidence> Mark(SplitMix64 random)
    {
        Func<int, EvidenceDate> at = Precision(random);
        int use = Years(random, 5, 40);
        bool ended = random.NextDouble() < 0.7;
        bool byLaw = random.NextDouble() < 0.4;
        var end = (MarkEnd)random.NextInt(3);
        return day => new MarkInUse("invented", at(day), ended ? at(day + use) : null, byLaw, end);
    }

    private static Func<int, Evidence> Subject(SplitMix64 random)
    {
        Func<int, EvidenceDate> at = Precision(random);
        EvidenceGrade? grade = random.NextInt(3) switch { 0 => null, 1 => EvidenceGrade.Medium, _ => EvidenceGrade.High };
        return day => new SubjectShown("invented", at(day), grade);
    }

    private static Func<int, Evidence> Inscribed(SplitMix64 random)
    {
        Func<int, EvidenceDate> at = Precision(random);
        double purpose = random.NextDouble();
        return day => new DateInscribed(
            at(day), purpose < 0.6 ? InscriptionPurpose.Presentation : purpose < 0.9 ? InscriptionPurpose.Commemorative : InscriptionPurpose.Since);
    }

    private static Func<int, Evidence> Known(SplitMix64 random)
    {
        Func<int, EvidenceDate> at = Precision(random);
        bool boughtNew = random.NextDouble() < 0.5;
        return day => new KnownBy(at(day), boughtNew: boughtNew);
    }

    private static Func<int, Evidence> Maker(SplitMix64 random)
    {
        Func<int, EvidenceDate> at = Precision(random);
        int active = Years(random, 5, 45);
        bool ended = random.NextDouble() < 0.85;
        return day => new MakerActive("invented", at(day), ended ? at(day + active) : null);
    }

    private static Func<int, Evidence> Advertised(SplitMix64 random)
    {
        Func<int, EvidenceDate> at = Precision(random);
        int run = Years(random, 0, 10);
        return day => new ModelAdvertised(at(day), at(day + run));
    }

    private static Func<int, Evidence> Opinion(SplitMix64 random)
    {
        int half = Years(random, 4, 20);
        double wide = 0.75 + (0.2 * random.NextDouble());
        double narrow = wide - 0.25;
        return day => new Opinion([
            new StatedWindow(DateWindow.OfDays(day - half, day + half), wide),
            new StatedWindow(DateWindow.OfDays(day - (half / 2), day + (half / 2)), narrow)]);
    }

    // How well a date is known: mostly to the day or the year, now and then "about" or with a question mark.
    private static Func<int, EvidenceDate> Precision(SplitMix64 random)
    {
        double precision = random.NextDouble();
        return precision < 0.5
            ? day => EvidenceDate.In(DateWindow.OfDays(day, day))
            : day => new EvidenceDate(
                [new StatedWindow(DateWindow.InYear(DayNumber.Year(day)), 1)], isApproximate: precision is >= 0.85 and < 0.95, isUncertain: precision >= 0.95);
    }

    internal static int Years(SplitMix64 random, int least, int most) => (int)((least + ((most - least) * random.NextDouble())) * Simulation.DaysInYear);
}
