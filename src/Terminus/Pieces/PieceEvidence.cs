namespace Terminus;

/// <summary>
/// Turns what is described of a piece into items of evidence, one an observation, before those that share a cause are merged. What the
/// reference file does not know is a problem with its path, and the rest goes on.
/// </summary>
internal sealed partial class PieceEvidence
{
    private const int MostSuggestions = 20;

    private readonly ReferenceSet reference;
    private readonly RegisterSet registers = RegisterSet.BuiltIn;
    private readonly Assumptions house;
    private readonly List<Evidence> items = [];
    private readonly List<DocumentProblem> problems = [];

    private PieceEvidence(ReferenceSet reference, Assumptions house)
    {
        this.reference = reference;
        this.house = house;
    }

    /// <summary>The items of a piece in the order of its document, and what is wrong with them.</summary>
    internal static (List<Evidence> Items, List<DocumentProblem> Problems) Of(Piece piece, ReferenceSet reference, Assumptions house)
    {
        var all = new PieceEvidence(reference, house);
        Each(piece.Marks, ".marks", all.AddMark);
        Each(piece.Features, ".features", all.AddFeature);
        Each(piece.Subjects, ".subjects", all.AddSubject);
        Each(piece.Inscriptions, ".inscriptions", all.AddInscription);
        Each(piece.Records, ".records", all.AddRecord);
        Each(piece.Makers, ".makers", all.AddMaker);
        all.AddAdverts(piece);
        Each(piece.Opinions, ".opinions", all.AddOpinion);
        return (all.items, all.problems);
    }

    private static void Each<T>(IReadOnlyList<T> list, string member, Action<T, EntryPath> add)
    {
        for (int i = 0; i < list.Count; i++)
        {
            add(list[i], new EntryPath(member, i));
        }
    }

    private void AddFeature(PieceFeature feature, EntryPath path)
    {
        if (reference.Feature(feature.Feature) is not { } entry)
        {
            if (Lexicon.BuiltIn.Find(feature.Feature) is { } wording)
            {
                items.Add(feature.Absent ? Absent(feature, wording.Id, wording.Source) : wording.ToEvidence(feature.Part, wording.Source));
                return;
            }

            Unknown("feature", feature.Feature, path + ".feature", reference.Features.Select(f => f.Id));
            return;
        }

        if (feature.Absent)
        {
            items.Add(Absent(feature, entry.Name, entry.Source));
            return;
        }

        (EvidenceDate? introduced, Reason? why) = Introduced(entry);
        items.Add(new FeatureSeen(
            entry.Id,
            introduced,
            ToDate(entry.Common),
            ToDate(entry.Fading),
            ToDate(entry.Gone),
            entry.CountsAs,
            entry.GradeCounted,
            entry.IsEndedByFact,
            feature.Part,
            entry.Source,
            [entry.Id],
            why is null ? null : [why]));
    }

    private static FeatureSeen Absent(PieceFeature feature, string name, string? source)
        => new(
            feature.Feature,
            part: feature.Part,
            source: source,
            entries: [feature.Feature],
            reasons: [new Reason("pieces.feature-absent", "feature", name)]);

    // A feature that a patent introduced counts from the year of its filing where that is known: pending examples exist.
    private (EvidenceDate? Introduced, Reason? Why) Introduced(FeatureEntry entry)
    {
        EvidenceDate? introduced = ToDate(entry.Introduced);
        if (entry.CountsAs != EvidenceBasis.Patent)
        {
            return (introduced, null);
        }

        PatentEntry? first = entry.Patents
            .Select(id => reference.Patent(id))
            .Where(p => p?.Filed?.Window is { FirstDay: not DayNumber.Open })
            .OrderBy(p => p!.Filed!.Window!.Value.FirstDay)
            .FirstOrDefault();
        if (first?.Filed?.Window is not { } filed || (introduced is not null && introduced.FirstDay(house) <= filed.FirstDay))
        {
            return (introduced, null);
        }

        int year = DayNumber.Year(filed.FirstDay);
        return (EvidenceDate.InYear(year), new Reason("pieces.from-filing-year", "patent", first.Id, "year", DateText.Digits(year)));
    }

    private void AddSubject(PieceSubject subject, EntryPath path)
    {
        if (reference.Feature(subject.Subject) is not { } entry)
        {
            Unknown("subject", subject.Subject, path + ".subject", reference.Features.Where(f => f.Id.StartsWith("sub.", StringComparison.Ordinal)).Select(f => f.Id));
            return;
        }

        if (ToDate(entry.Introduced) is not { } firstExisted)
        {
            problems.Add(new DocumentProblem($"The subject \"{entry.Id}\" has no date in the reference file, so it says nothing.", path + ".subject"));
            return;
        }

        items.Add(new SubjectShown(entry.Id, firstExisted, entry.GradeCounted, subject.Part, entry.Source, [entry.Id]));
    }

    private void AddInscription(PieceInscription inscription, EntryPath path)
        => items.Add(new DateInscribed(EvidenceDate.From(inscription.Date), inscription.Purpose, inscription.Text, inscription.Part));

    private void AddRecord(PieceRecord record, EntryPath path)
        => items.Add(new KnownBy(EvidenceDate.From(record.Date), record.What, record.BoughtNew, record.Part, record.What));

    private void AddMaker(PieceMaker maker, EntryPath path)
    {
        if (reference.Maker(maker.Maker) is not { } entry)
        {
            Unknown("maker", maker.Maker, path + ".maker", reference.Makers.Select(m => m.Id));
            return;
        }

        (EdtfDate? from, EdtfDate? until) = (entry.From, entry.Until);
        foreach ((string? written, IReadOnlyList<MakerDetail> known, string member) in new[]
        {
            (maker.Form, entry.Forms, "form"), (maker.Address, entry.Addresses, "address"),
        })
        {
            if (written is null)
            {
                continue;
            }

            if (known.FirstOrDefault(d => string.Equals(d.Text, written, StringComparison.OrdinalIgnoreCase)) is { } detail)
            {
                (from, until) = (Later(from, detail.From), Earlier(until, detail.Until));
            }
            else
            {
                Unknown(member + " of \"" + entry.Id + "\"", written, path + "." + member, known.Select(d => d.Text));
            }
        }

        items.Add(new MakerActive(entry.Id, ToDate(from), ToDate(until), maker.Part, entry.Source, [entry.Id]));
    }

    // Advertisements of one model are one item, first to last.
    private void AddAdverts(Piece piece)
    {
        foreach (IGrouping<(string? Model, string? Part), PieceAdvert> model in piece.Adverts.GroupBy(a => (a.Model, a.Part)))
        {
            List<AdvertEntry> known = model.Key.Model is null ? [] : [.. reference.Adverts.Where(a => a.Date is not null && string.Equals(a.Model, model.Key.Model, StringComparison.Ordinal))];
            List<EvidenceDate> dates = [.. model.Select(a => EvidenceDate.From(a.Date)).Concat(known.Select(a => EvidenceDate.From(a.Date!)))];
            EvidenceDate first = dates.OrderBy(d => d.Outer.Low).First();
            EvidenceDate last = dates.OrderByDescending(d => d.Outer.High).First();
            string what = string.Join("; ", model.Select(a => a.What).Concat(known.Select(a => a.What)).OfType<string>().Distinct(StringComparer.Ordinal));
            items.Add(new ModelAdvertised(
                first,
                last == first ? null : last,
                what.Length == 0 ? null : what,
                model.Key.Part,
                what.Length == 0 ? null : what,
                known.Select(a => a.Id),
                dates.Count > 1 ? [new Reason("pieces.adverts-merged", "count", DateText.Digits(dates.Count))] : null));
        }
    }

    private void AddOpinion(PieceOpinion opinion, EntryPath path)
    {
        var windows = new List<StatedWindow>();
        for (int i = 0; i < opinion.Windows.Count; i++)
        {
            PieceWindow written = opinion.Windows[i];
            EvidenceDate? notBefore = ToDate(written.NotBefore);
            EvidenceDate? notAfter = ToDate(written.NotAfter);
            int first = notBefore?.FirstDay(house) ?? DayNumber.Open;
            int last = notAfter?.LastDay(house) ?? DayNumber.Open;
            bool uncertain = notBefore is { IsUncertain: true } || notAfter is { IsUncertain: true };
            double confidence = Math.Min(written.Confidence, uncertain ? house.UncertainCap : 1);
            if (DateWindow.TryBetweenDays(first, last) is { } window)
            {
                windows.Add(new StatedWindow(window, confidence));
            }
            else
            {
                problems.Add(new DocumentProblem(
                    $"The window starts {DateText.Iso(first)}, after its end {DateText.Iso(last)}; it is left out.", path + ".windows[" + DateText.Digits(i) + "]"));
            }
        }

        if (!NestedWindows.AreNested(windows))
        {
            problems.Add(new DocumentProblem(
                "The windows are not nested: each must lie in the one before it, with no higher confidence. Each was cut to the one before it.",
                path + ".windows"));
        }

        items.Add(new Opinion(windows, opinion.By, opinion.RestsOn, opinion.Label, opinion.Part, opinion.By));
    }

    // Only the first few get a suggestion: looking for one takes time, and a list of strangers needs none.
    private void Unknown(string what, string id, string path, IEnumerable<string> known)
        => problems.Add(new DocumentProblem(
            $"The {what} \"{id}\" is not in the reference file.{(problems.Count < MostSuggestions ? Spelling.Suggest(id, known) : "")}", path));

    private static EvidenceDate? ToDate(EdtfDate? date) => date is null ? null : EvidenceDate.From(date);

    private static EdtfDate? Later(EdtfDate? one, EdtfDate? other)
        => other?.Window is { } b && (one?.Window is not { } a || b.Low > a.Low) ? other : one;

    private static EdtfDate? Earlier(EdtfDate? one, EdtfDate? other)
        => other?.Window is { } b && (one?.Window is not { } a || b.High < a.High) ? other : one;
}
