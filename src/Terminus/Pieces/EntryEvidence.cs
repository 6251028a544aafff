namespace Terminus;

/// <summary>What an entry of the reference file says of a piece that shows it, as an item of evidence.</summary>
internal static class EntryEvidence
{
    internal static FeatureSeen OfFeature(FeatureEntry entry, string? part, ReferenceSet reference, Assumptions house)
    {
        (EvidenceDate? introduced, Reason? why) = Introduced(entry, reference, house);
        return new FeatureSeen(
            entry.Id,
            introduced,
            EvidenceDate.FromOrNull(entry.Common),
            EvidenceDate.FromOrNull(entry.Fading),
            EvidenceDate.FromOrNull(entry.Gone),
            entry.CountsAs,
            entry.GradeCounted,
            entry.IsEndedByFact,
            part,
            entry.Source,
            [entry.Id],
            why is null ? null : [why]);
    }

    /// <summary>A feature that was looked for and is not there: shown, and silent.</summary>
    internal static FeatureSeen OfAbsent(string feature, string name, string? part, string? source)
        => new(feature, part: part, source: source, entries: [feature], reasons: [new Reason("pieces.feature-absent", "feature", name)]);

    /// <summary>What a subject says, or null where the entry has no date.</summary>
    internal static SubjectShown? OfSubject(FeatureEntry entry, string? part)
        => EvidenceDate.FromOrNull(entry.Introduced) is { } firstExisted
            ? new SubjectShown(entry.Id, firstExisted, entry.GradeCounted, part, entry.Source, [entry.Id])
            : null;

    internal static MakerActive OfMaker(MakerEntry entry, EdtfDate? from, EdtfDate? until, string? part)
        => new(entry.Id, EvidenceDate.FromOrNull(from), EvidenceDate.FromOrNull(until), part, entry.Source, [entry.Id]);

    /// <summary>
    /// What a mark says that names its patent: of filing and issue where it says "pending", of the issue where it does not; null where that is not known.
    /// </summary>
    internal static RightEvidence? OfPatent(PatentEntry patent, string? part, bool pending)
    {
        EvidenceDate? issued = EvidenceDate.FromOrNull(patent.Issued);
        return pending
            ? new PatentPending(EvidenceDate.FromOrNull(patent.Filed), issued, patent.Office, patent.Right, patent.Number, part, patent.Source, [patent.Id])
            : issued is null ? null
            : new PatentIssued(issued, patent.Office, patent.Right, patent.Number, part: part, source: patent.Source, entries: [patent.Id]);
    }

    internal static MarkInUse OfMark(MarkEntry mark, string? part)
        => new(mark.Id, EvidenceDate.FromOrNull(mark.From), EvidenceDate.FromOrNull(mark.Until), mark.ByLaw, mark.Ended, part, mark.Source, [mark.Id]);

    // A feature that a patent introduced counts from the year of its filing where that is known: pending examples exist.
    private static (EvidenceDate? Introduced, Reason? Why) Introduced(FeatureEntry entry, ReferenceSet reference, Assumptions house)
    {
        EvidenceDate? introduced = EvidenceDate.FromOrNull(entry.Introduced);
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
}
