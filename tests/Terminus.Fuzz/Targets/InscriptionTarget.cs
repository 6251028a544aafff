using NodaTime;

namespace Terminus.Fuzz.Targets;

/// <summary>Stamped texts: every character belongs to one mark or to the unread rest, and the reading is one pass.</summary>
internal sealed class InscriptionTarget() : FuzzTarget<Inscription>(new AllocationLimits(64 * 1024, 16 * 1024))
{
    private const int MostItems = 256;
    private const int MostLooks = 8;

    private static readonly LocalDate AsOf = new(2026, 11, 25);

    protected override Inscription Answer(byte[] input)
    {
        string text = FuzzText.Of(input);
        Inscription read = Inscription.Read(text, null, out int visits);
        Demand.That(visits <= MostLooks * text.Length, "Characters are looked at eight times at most, on average.");
        return read;
    }

    protected override void Judge(Inscription answer)
    {
        int position = 0;
        foreach ((int start, string text) in answer.Marks.Select(m => (m.Start, m.Text)).Concat(answer.Unread.Select(u => (u.Start, u.Text))).OrderBy(p => p.Start))
        {
            Demand.That(start == position && text.Length > 0, "Every character belongs to one mark or to the rest.");
            Demand.That(string.CompareOrdinal(answer.Text, start, text, 0, text.Length) == 0, "A mark has the characters it stands on.");
            position += text.Length;
        }

        Demand.That(position == answer.Text.Length, "Every character belongs to one mark or to the rest.");
        foreach (Mark mark in answer.Marks.SelectMany(m => m.Alternatives.Prepend(m)))
        {
            Demand.Nested(mark.Windows);
            Demand.Worded(mark.Reasons);
            Demand.That(mark.Date is null || EdtfDate.TryParse(mark.Date, out _), "The date of a mark is EDTF.");
        }

        Lawful.Dating(Dating.Of(answer.ToEvidence().Distinct().Take(MostItems), AsOf), 0.9);
    }
}
