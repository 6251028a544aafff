namespace Terminus;

/// <summary>
/// Turns what is described of a piece into items of evidence, one an observation, before those that share a cause are merged. What the
/// reference file does not know is a problem with its path, and the rest goes on.
/// </summary>
internal sealed partial class PieceEvidence
{
    private const int MostSuggestions = 20;

    private readonly ReferenceSet reference;
    private readonly Assumptions house;
    private readonly KeptEvidence kept;
    private readonly List<Evidence> items;
    private List<DocumentProblem>? problems;

    private PieceEvidence(Piece piece, ReferenceSet reference, Assumptions house)
    {
        this.reference = reference;
        this.house = house;
        kept = KeptEvidence.Of(reference, house);
        items = new List<Evidence>(
            piece.Marks.Count + piece.Features.Count + piece.Subjects.Count + piece.Inscriptions.Count + piece.Records.Count + piece.Makers.Count
                + piece.Adverts.Count + piece.Opinions.Count);
    }

    /// <summary>The items of a piece in the order of its document, and what is wrong with them, null for nothing.</summary>
    internal static (List<Evidence> Items, List<DocumentProblem>? Problems) Of(Piece piece, ReferenceSet reference, Assumptions house)
    {
        var all = new PieceEvidence(piece, reference, house);
        all.Each(piece.Marks, ".marks", static (all, mark, path) => all.AddMark(mark, path));
        all.Each(piece.Features, ".features", static (all, feature, path) => all.AddFeature(feature, path));
        all.Each(piece.Subjects, ".subjects", static (all, subject, path) => all.AddSubject(subject, path));
        all.Each(piece.Inscriptions, ".inscriptions", static (all, inscription, _) => all.AddInscription(inscription));
        all.Each(piece.Records, ".records", static (all, record, _) => all.AddRecord(record));
        all.Each(piece.Makers, ".makers", static (all, maker, path) => all.AddMaker(maker, path));
        all.AddAdverts(piece.Adverts);
        all.Each(piece.Opinions, ".opinions", static (all, opinion, path) => all.AddOpinion(opinion, path));
        return (all.items, all.problems);
    }

    private void Each<T>(IReadOnlyList<T> list, string member, Action<PieceEvidence, T, EntryPath> add)
    {
        for (int i = 0; i < list.Count; i++)
        {
            add(this, list[i], new EntryPath(member, i));
        }
    }

    private void AddFeature(PieceFeature feature, EntryPath path)
    {
        if (reference.Feature(feature.Feature) is { } entry)
        {
            items.Add(feature.Absent ? kept.Absent(entry, feature.Part) : kept.Feature(entry, feature.Part, reference));
        }
        else if (Lexicon.BuiltIn.Find(feature.Feature) is { } wording)
        {
            items.Add(feature.Absent
                ? EntryEvidence.OfAbsent(feature.Feature, "the wording " + wording.Name, feature.Part, wording.Source)
                : wording.ToEvidence(feature.Part, wording.Source));
        }
        else
        {
            Unknown("feature", feature.Feature, path + ".feature", reference.Features.Select(f => f.Id));
        }
    }

    private void AddSubject(PieceSubject subject, EntryPath path)
    {
        if (reference.Feature(subject.Subject) is not { } entry)
        {
            Unknown("subject", subject.Subject, path + ".subject", reference.Features.Where(f => f.Id.StartsWith("sub.", StringComparison.Ordinal)).Select(f => f.Id));
        }
        else if (entry.Introduced is null)
        {
            Report($"The subject \"{entry.Id}\" has no date in the reference file, so it says nothing.", path + ".subject");
        }
        else
        {
            items.Add(kept.Subject(entry, subject.Part));
        }
    }

    private void AddInscription(PieceInscription inscription)
        => items.Add(new DateInscribed(EvidenceDate.From(inscription.Date), inscription.Purpose, inscription.Text, inscription.Part));

    private void AddRecord(PieceRecord record)
        => items.Add(new KnownBy(EvidenceDate.From(record.Date), record.What, record.BoughtNew, record.Part, record.What));

    private void AddMaker(PieceMaker maker, EntryPath path)
    {
        if (reference.Maker(maker.Maker) is not { } entry)
        {
            Unknown("maker", maker.Maker, path + ".maker", reference.Makers.Select(m => m.Id));
            return;
        }

        if (maker.Form is null && maker.Address is null)
        {
            items.Add(kept.Maker(entry, maker.Part));
            return;
        }

        (EdtfDate? from, EdtfDate? until) = (entry.From, entry.Until);
        Narrow(maker.Form, entry.Forms, "form");
        Narrow(maker.Address, entry.Addresses, "address");
        items.Add(EntryEvidence.OfMaker(entry, from, until, maker.Part));

        void Narrow(string? written, IReadOnlyList<MakerDetail> known, string member)
        {
            if (written is null)
            {
                return;
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
    }

    // Advertisements of one model are one item, first to last.
    private void AddAdverts(IReadOnlyList<PieceAdvert> adverts)
    {
        if (adverts.Count == 1)
        {
            AddModel(adverts[0].Model, adverts[0].Part, adverts);
        }
        else if (adverts.Count > 1)
        {
            foreach (IGrouping<(string? Model, string? Part), PieceAdvert> model in adverts.GroupBy(a => (a.Model, a.Part)))
            {
                AddModel(model.Key.Model, model.Key.Part, model);
            }
        }
    }

    private void AddModel(string? name, string? part, IEnumerable<PieceAdvert> shown)
    {
        var model = new AdvertisedModel(part);
        foreach (PieceAdvert advert in shown)
        {
            model.Add(advert.Date, advert.What);
        }

        if (name is not null)
        {
            foreach (AdvertEntry known in reference.AdvertsOfModel(name))
            {
                model.Add(known.Date!, known.What, known.Id);
            }
        }

        items.Add(model.ToEvidence());
    }

    private void AddOpinion(PieceOpinion opinion, EntryPath path)
    {
        var windows = new List<StatedWindow>();
        for (int i = 0; i < opinion.Windows.Count; i++)
        {
            PieceWindow written = opinion.Windows[i];
            EvidenceDate? notBefore = EvidenceDate.FromOrNull(written.NotBefore);
            EvidenceDate? notAfter = EvidenceDate.FromOrNull(written.NotAfter);
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
                Report(
                    $"The window starts {DateText.Iso(first)}, after its end {DateText.Iso(last)}; it is left out.", path + ".windows[" + DateText.Digits(i) + "]");
            }
        }

        if (!NestedWindows.AreNested(windows))
        {
            Report(
                "The windows are not nested: each must lie in the one before it, with no higher confidence. Each was cut to the one before it.",
                path + ".windows");
        }

        items.Add(new Opinion(windows, opinion.By, opinion.RestsOn, opinion.Label, opinion.Part, opinion.By));
    }

    // Only the first few get a suggestion: looking for one takes time, and a list of strangers needs none.
    private void Unknown(string what, string id, string path, IEnumerable<string> known)
        => Report(
            $"The {what} \"{id}\" is not in the reference file.{((problems?.Count ?? 0) < MostSuggestions ? Spelling.Suggest(id, known) : "")}", path);

    private void Report(string message, string path) => (problems ??= []).Add(new DocumentProblem(message, path));

    private static EdtfDate? Later(EdtfDate? one, EdtfDate? other)
        => other?.Window is { } b && (one?.Window is not { } a || b.Low > a.Low) ? other : one;

    private static EdtfDate? Earlier(EdtfDate? one, EdtfDate? other)
        => other?.Window is { } b && (one?.Window is not { } a || b.High < a.High) ? other : one;
}
