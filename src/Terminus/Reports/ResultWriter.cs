using System.Text.Json;

namespace Terminus;

/// <summary>
/// Writes the documents of dated pieces one after another into one writer. Words are put together in buffers that are used again, so that
/// nothing is made between an answer and its bytes.
/// </summary>
internal sealed class ResultWriter
{
    private readonly Utf8JsonWriter json;
    private readonly EvidenceWriter evidence;
    private readonly TextBuffer words = new();
    private readonly ReasonDraft sentence;

    /// <param name="json">The writer.</param>
    /// <param name="ready">Items of evidence that are copied, or null for none.</param>
    internal ResultWriter(Utf8JsonWriter json, ReadyEvidence? ready = null)
    {
        this.json = json;
        evidence = new EvidenceWriter(json, ready);
        sentence = new ReasonDraft(reason => ReasonText.AddTo(words, reason));
    }

    /// <summary>Writes a document as one object.</summary>
    internal void Write(PieceDating dating, bool steps)
    {
        Dating whole = dating.Dating;
        json.WriteStartObject();
        json.WriteNumber("format"u8, 1);
        json.WriteString("id"u8, dating.Piece.Id);
        json.WriteOptional("title"u8, dating.Piece.Title);
        json.WriteDay("asOf"u8, whole.AsOfDay);
        WriteLayers(dating.Reference.Layers);
        json.WriteString("assumptions"u8, whole.Assumptions.ToString());
        WritePossible(whole.Possible);
        WriteInterval("interval"u8, dating.Interval);
        WriteInterval("likely"u8, dating.Likely);
        json.WriteRounded("conflict"u8, whole.Conflict);
        json.WriteBoolean("qualified"u8, whole.Qualified);
        WriteDisagreements(dating);
        if (whole.Qualified)
        {
            WriteReadings(whole.Readings);
        }

        WriteParts(dating.Parts);
        WriteAge(dating.OverHundredYears);
        WriteStated(dating);
        WriteStatement(dating);
        if (steps)
        {
            WriteSteps(whole.Steps);
        }

        evidence.Write(dating);
        WriteProblems(dating.Problems);
        json.WriteEndObject();
    }

    private void WriteLayers(IReadOnlyList<ReferenceLayer> layers)
    {
        json.WriteStartArray("reference"u8);
        for (int i = 0; i < layers.Count; i++)
        {
            json.WriteStartObject();
            json.WriteString("name"u8, layers[i].Name);
            json.WriteString("version"u8, layers[i].Version);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private void WritePossible(DateWindow? possible)
    {
        if (possible is not { } window)
        {
            json.WriteNull("possible"u8);
            return;
        }

        json.WriteStartObject("possible"u8);
        json.WriteWindow(window);
        json.WriteEndObject();
    }

    private void WriteInterval(ReadOnlySpan<byte> name, DatedInterval? interval)
    {
        json.WritePropertyName(name);
        if (interval is null)
        {
            json.WriteNullValue();
        }
        else
        {
            WriteInterval(interval);
        }
    }

    private void WriteInterval(DatedInterval interval)
    {
        json.WriteStartObject();
        json.WriteRounded("confidence"u8, interval.Confidence);
        json.WriteWindow(interval.Window);
        json.WriteNullable("earliestYear"u8, interval.EarliestYear);
        json.WriteNumber("latestYear"u8, interval.LatestYear);
        json.WriteEdtf("edtf"u8, interval.Said);
        json.WriteRounded("belief"u8, interval.Belief);
        json.WriteRounded("plausibility"u8, interval.Plausibility);
        json.WriteBoolean("insidePossible"u8, interval.InsidePossible);
        json.WriteEndObject();
    }

    private void WriteSteps(IReadOnlyList<DatedInterval> steps)
    {
        json.WriteStartArray("steps"u8);
        foreach (DatedInterval step in steps)
        {
            WriteInterval(step);
        }

        json.WriteEndArray();
    }

    private void WriteDisagreements(PieceDating dating)
    {
        json.WriteStartArray("disagreements"u8);
        IReadOnlyList<Disagreement> disagreements = dating.Dating.Disagreements;
        for (int i = 0; i < disagreements.Count; i++)
        {
            Disagreement disagreement = disagreements[i];
            json.WriteStartObject();
            json.WriteNumber("first"u8, disagreement.First);
            json.WriteNullable("second"u8, disagreement.Second);
            json.WriteRounded("mass"u8, disagreement.Mass);
            json.WriteString("level"u8, Words.Kebab(disagreement.Level));
            json.WriteTexts("parts"u8, disagreement.Parts);
            json.WriteString("cause"u8, Words.Kebab(disagreement.Cause));
            words.Clear();
            Statement.Draft(sentence, dating, disagreement);
            json.WriteString("why"u8, words.Span);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private void WriteReadings(IReadOnlyList<Reading> readings)
    {
        json.WriteStartArray("readings"u8);
        foreach (Reading reading in readings.Take(2))
        {
            json.WriteStartObject();
            json.WriteWindow(reading.Window);
            if (reading.Weight is { } weight)
            {
                json.WriteRounded("weight"u8, weight);
            }
            else
            {
                json.WriteNull("weight"u8);
            }

            WriteIndices("items"u8, reading.Items);
            WriteIndices("setAside"u8, reading.SetAside);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private void WriteIndices(ReadOnlySpan<byte> name, IReadOnlyList<int> indices)
    {
        json.WriteStartArray(name);
        foreach (int index in indices)
        {
            json.WriteNumberValue(index);
        }

        json.WriteEndArray();
    }

    private void WriteParts(IReadOnlyList<PartDating> parts)
    {
        json.WriteStartArray("parts"u8);
        for (int i = 0; i < parts.Count; i++)
        {
            PartDating part = parts[i];
            json.WriteStartObject();
            json.WriteString("part"u8, part.Part);
            json.WriteBoolean("original"u8, part.Original);
            json.WriteOptional("why"u8, part.Why);
            WritePossible(part.Dating.Possible);
            WriteInterval("interval"u8, part.Interval);
            WriteInterval("likely"u8, part.Likely);
            json.WriteRounded("conflict"u8, part.Dating.Conflict);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private void WriteAge(AgeAnswer age)
    {
        json.WriteStartObject("overHundredYears"u8);
        json.WriteString("answer"u8, Words.Spaced(age.Verdict));
        json.WriteRounded("belief"u8, age.Belief);
        json.WriteRounded("plausibility"u8, age.Plausibility);
        json.WriteEndObject();
    }

    private void WriteStated(PieceDating dating)
    {
        if (dating.Stated is not { } claim)
        {
            return;
        }

        json.WriteStartObject("stated"u8);
        json.WriteString("edtf"u8, claim.Stated.Text);
        json.WriteString("verdict"u8, Words.Spaced(claim.Verdict));
        if (claim.By is { } by)
        {
            json.WriteNumber("by"u8, by);
        }

        words.Clear();
        ClaimReasons.Draft(sentence, dating, claim);
        json.WriteString("why"u8, words.Span);
        json.WriteEndObject();
    }

    private void WriteStatement(PieceDating dating)
    {
        words.Clear();
        Statement.Draft(sentence, dating);
        json.WriteString("statement"u8, words.Span);
    }

    private void WriteProblems(IReadOnlyList<DocumentProblem> problems)
    {
        json.WriteStartArray("problems"u8);
        for (int i = 0; i < problems.Count; i++)
        {
            json.WriteStartObject();
            json.WriteString("path"u8, problems[i].Path);
            json.WriteString("message"u8, problems[i].Message);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
