namespace Terminus;

/// <summary>The advertisements of one model, which are one item of evidence: from the first to the last.</summary>
internal sealed class AdvertisedModel(string? part)
{
    private readonly List<string> what = [];
    private readonly List<string> entries = [];
    private EvidenceDate? first;
    private EvidenceDate? last;
    private int count;

    /// <summary>Adds an advertisement: its date, where it stood, and its entry in the reference file.</summary>
    internal void Add(EdtfDate date, string? where, string? entry = null)
    {
        EvidenceDate shown = EvidenceDate.From(date);
        first = first is null || shown.Outer.Low < first.Outer.Low ? shown : first;
        last = last is null || shown.Outer.High > last.Outer.High ? shown : last;
        count++;
        if (where is not null)
        {
            what.Add(where);
        }

        if (entry is not null)
        {
            entries.Add(entry);
        }
    }

    /// <summary>What they say; there must be one.</summary>
    internal ModelAdvertised ToEvidence()
    {
        string all = string.Join("; ", what.Distinct(StringComparer.Ordinal));
        string? shown = all.Length == 0 ? null : all;
        return new ModelAdvertised(
            first!,
            last == first ? null : last,
            shown,
            part,
            shown,
            entries,
            count > 1 ? [new Reason("pieces.adverts-merged", "count", DateText.Digits(count))] : null);
    }
}
