namespace Terminus.Fuzz.Targets;

/// <summary>What becomes of two files of results: what each says, and what changed between them.</summary>
internal sealed record ChangesAnswer(string Document, string Text);

/// <summary>Results read back and compared: the input is the earlier file up to a line that is <c>---</c>, and the later one from there.</summary>
internal sealed class ChangesTarget() : FuzzTarget<ChangesAnswer>(new AllocationLimits(256 * 1024, 32 * 1024))
{
    private const string Between = "\n---\n";

    protected override ChangesAnswer Answer(byte[] input)
    {
        string text = FuzzText.Of(input);
        int middle = text.IndexOf(Between, StringComparison.Ordinal);
        List<ChangesRecord> before = Read(middle < 0 ? text : text[..middle]);
        List<ChangesRecord> after = Read(middle < 0 ? text : text[(middle + Between.Length)..]);
        List<ChangesPiece> changes = [.. Changes.Between(before, after)];
        Demand.That(middle >= 0 || !changes.Exists(c => c.HasMoved || !c.IsInBoth), "Nothing changes between a file and itself.");
        Demand.That(changes.Count >= Math.Max(before.Count, after.Count), "Every result is compared.");
        return new ChangesAnswer(ChangesDocument.ToJson(changes), string.Concat(ChangesText.Of(changes)));
    }

    protected override void Judge(ChangesAnswer answer)
    {
        Demand.Json(answer.Document);
        Demand.That(answer.Text.Length > 0, "A comparison says something.");
    }

    private static List<ChangesRecord> Read(string text)
    {
        var records = new List<ChangesRecord>();
        foreach (DocumentResult<ChangesRecord> read in ChangesRecord.ReadAll(new StringReader(text), "results.jsonl"))
        {
            Demand.That((read.Value is null) == (read.Problems.Count > 0), "A result is read, or says why not.");
            if (read.Value is { } record)
            {
                records.Add(record);
            }
        }

        return records;
    }
}
