namespace Terminus;

/// <summary>The sense checks of single entries, each against the set that says what their ids mean.</summary>
internal sealed class EntryCheck(ReferenceSet set, RegisterSet registers)
{
    /// <summary>Years between filing and issue that are taken for offices whose numbers go by the filing.</summary>
    private const int YearsFromFiling = 3;

    internal List<ReferenceFinding> Findings { get; } = [];

    internal void Add(ReferenceEntry entry, string below, string rule, params string[] parameters)
        => Findings.Add(new ReferenceFinding(entry, new Reason(rule, parameters), below));

    internal void Run(ReferenceEntry entry)
    {
        switch (entry)
        {
            case FeatureEntry feature: Check(feature); break;
            case PatentEntry patent: Check(patent); break;
            case MakerEntry maker: Check(maker); break;
            case AdvertEntry advert: Check(advert); break;
            case MarkEntry mark: Check(mark); break;
        }
    }

    private void Check(FeatureEntry feature)
    {
        (string Name, EdtfDate Date)? before = null;
        foreach ((string name, EdtfDate? date) in new[]
        {
            ("introduced", feature.Introduced), ("common", feature.Common), ("fading", feature.Fading), ("gone", feature.Gone),
        })
        {
            if (date is null)
            {
                continue;
            }

            if (before is { } earlier)
            {
                CheckOrder(feature, "", earlier.Name, earlier.Date, name, date);
            }

            before = (name, date);
        }

        CheckUsage(feature);
        CheckId(feature, ".question", ReferenceKind.Question, feature.Question, set.Question(feature.Question));
        for (int i = 0; i < feature.Patents.Count; i++)
        {
            string below = ".patents[" + DateText.Digits(i) + "]";
            PatentEntry? patent = set.Patent(feature.Patents[i]);
            CheckId(feature, below, ReferenceKind.Patent, feature.Patents[i], patent);
            if (patent?.Issued is { } issued && !feature.PatentOfWiderClass && feature.Common is { } common && IsAfter(issued, common))
            {
                Add(feature, below, "reference.patent-after-common", "patent", patent.Id, "issued", issued.Text, "common", common.Text);
            }
        }
    }

    // Usage that outlasts the day by which the thing was gone is cut there: what is said of it is not what counts. As evidence takes the
    // dates, "about" is some years wide.
    private void CheckUsage(FeatureEntry feature)
    {
        if (feature.Fading is { } fading && feature.Gone is { } gone && !IsAfter(fading, gone)
            && LastDay(gone) is var last and not DayNumber.Open && LastDay(fading) > last)
        {
            Add(feature, ".fading", "reference.fades-after-gone", "fading", fading.Text, "gone", gone.Text, "last", DateText.Words(last));
        }
    }

    private void Check(PatentEntry patent)
    {
        if (patent.Filed is { } filed && patent.Issued is { } granted && IsAfter(filed, granted))
        {
            Add(patent, ".filed", "reference.filed-after-issued", "filed", filed.Text, "issued", granted.Text);
        }

        if (patent.Issued?.Window is not { } issued)
        {
            return;
        }

        bool isUnitedStates = patent.Office == "US";
        if (isUnitedStates && patent.Right != "trade-mark" && issued.Days == 1 && !IssueDay.IsPossible(issued.FirstDay))
        {
            Add(patent, ".issued", "reference.issue-day", "date", patent.Issued.Text);
        }

        NumberReading number = registers.Read(patent.Office, patent.Right, patent.Number);
        DateWindow outer = number.Outer;
        DateWindow span = isUnitedStates ? issued : patent.Filed?.Window is { } f ? f.Hull(issued) : issued.Widen(YearsFromFiling, 0);
        if (number.Outcome is NumberOutcome.Found or NumberOutcome.Several && !outer.Meets(span))
        {
            Add(patent, ".issued", "reference.number-year", "number", patent.Number, "issued", patent.Issued.Text, "register", outer.ToString());
        }
    }

    private void Check(MakerEntry maker)
    {
        CheckOrder(maker, "", "from", maker.From, "until", maker.Until);
        CheckDetails(maker, ".forms", maker.Forms);
        CheckDetails(maker, ".addresses", maker.Addresses);
    }

    private void CheckDetails(MakerEntry maker, string member, IReadOnlyList<MakerDetail> details)
    {
        for (int i = 0; i < details.Count; i++)
        {
            CheckOrder(maker, member + "[" + DateText.Digits(i) + "]", "from", details[i].From, "until", details[i].Until);
        }
    }

    private void Check(AdvertEntry advert)
    {
        CheckId(advert, ".feature", ReferenceKind.Feature, advert.Feature, set.Feature(advert.Feature));
        CheckId(advert, ".maker", ReferenceKind.Maker, advert.Maker, set.Maker(advert.Maker));
    }

    private void Check(MarkEntry mark)
    {
        CheckOrder(mark, "", "from", mark.From, "until", mark.Until);
        MakerEntry? maker = set.Maker(mark.Maker);
        CheckId(mark, ".maker", ReferenceKind.Maker, mark.Maker, maker);
        if (mark.From is { } from && maker?.From is { } began && IsAfter(began, from))
        {
            Add(mark, ".from", "reference.mark-before-maker", "mark", from.Text, "maker", maker.Id, "began", began.Text);
        }
    }

    private void CheckOrder(ReferenceEntry entry, string below, string first, EdtfDate? earlier, string second, EdtfDate? later)
    {
        if (earlier is not null && later is not null && IsAfter(earlier, later))
        {
            Add(entry, below + "." + second, "reference.order", "first", first, "earlier", earlier.Text, "second", second, "later", later.Text);
        }
    }

    private void CheckId(ReferenceEntry entry, string below, ReferenceKind kind, string? id, ReferenceEntry? found)
    {
        if (id is not null && found is null)
        {
            Add(entry, below, "reference.unknown-id", "kind", ReferenceWords.One(kind), "id", id);
        }
    }

    /// <summary>Whether every day of one date lies after every day of the other.</summary>
    private static bool IsAfter(EdtfDate one, EdtfDate other) => Window(one).Low > Window(other).High;

    private static int LastDay(EdtfDate date) => EvidenceDate.From(date).LastDay(Assumptions.House);

    private static DateWindow Window(EdtfDate date) => date.Window ?? DateWindow.Any;
}
