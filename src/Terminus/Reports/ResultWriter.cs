using System.Text.Json;

namespace Terminus;

/// <summary>
/// Writes the documents of dated pieces one after another into one writer. Words are put together in buffers that are used again, so that
/// nothing is made between an answer and its bytes.
/// </summary>
internal sealed class ResultWriter
{
    // The names of the members, and the most bytes of each value: two ends; seven values more.
    private const int LongestWindow = 96;
    private const int LongestInterval = 384;

    private readonly Utf8JsonWriter json;
    private readonly EvidenceWriter evidence;
    private readonly TextBuffer words = new();
    private readonly ReasonDraft sentence;
    private IReadOnlyList<ReferenceLayer>? layersWritten;
    private byte[] layersJson = [];

    /// <param name="json">The writer, which does not indent: parts of a document are copied into it as bytes.</param>
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
        WriteAnswer(whole, dating.Interval, dating.Likely);
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

    // Every piece of a collection is dated with the same layers.
    private void WriteLayers(IReadOnlyList<ReferenceLayer> layers)
    {
        if (!ReferenceEquals(layers, layersWritten))
        {
            (layersWritten, layersJson) = (layers, LayersJson(layers));
        }

        json.WritePropertyName("reference"u8);
        json.WriteRawValue(layersJson, skipInputValidation: true);
    }

    private static byte[] LayersJson(IReadOnlyList<ReferenceLayer> layers) => DocumentWriting.ToBytes(DocumentWriting.Compact, json =>
    {
        json.WriteStartArray();
        foreach (ReferenceLayer layer in layers)
        {
            json.WriteStartObject();
            json.WriteString("name"u8, layer.Name);
            json.WriteString("version"u8, layer.Version);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });

    // The members that the whole and each part have.
    private void WriteAnswer(Dating dating, DatedInterval? interval, DatedInterval? likely)
    {
        json.WritePropertyName("possible"u8);
        Write(dating.Possible);
        json.WritePropertyName("interval"u8);
        Write(interval);
        json.WritePropertyName("likely"u8);
        Write(likely);
        json.WriteRounded("conflict"u8, dating.Conflict);
    }

    private void Write(DateWindow? possible)
    {
        if (possible is not { } window)
        {
            json.WriteNullValue();
            return;
        }

        var answer = new PlainJson(stackalloc byte[LongestWindow]);
        answer.Add("{"u8);
        answer.AddEnds(window);
        answer.Add("}"u8);
        json.WriteRawValue(answer.Bytes, skipInputValidation: true);
    }

    private void Write(DatedInterval? interval)
    {
        if (interval is null)
        {
            json.WriteNullValue();
            return;
        }

        var answer = new PlainJson(stackalloc byte[LongestInterval]);
        answer.Add("{\"confidence\":"u8);
        answer.AddRounded(interval.Confidence);
        answer.Add(","u8);
        answer.AddEnds(interval.Window);
        answer.Add(",\"earliestYear\":"u8);
        answer.Add(interval.EarliestYear);
        answer.Add(",\"latestYear\":"u8);
        answer.Add(interval.LatestYear);
        answer.Add(",\"edtf\":"u8);
        answer.AddEdtf(interval.Said);
        answer.Add(",\"belief\":"u8);
        answer.AddRounded(interval.Belief);
        answer.Add(",\"plausibility\":"u8);
        answer.AddRounded(interval.Plausibility);
        answer.Add(",\"insidePossible\":"u8);
        answer.Add(interval.InsidePossible);
        answer.Add("}"u8);
        json.WriteRawValue(answer.Bytes, skipInputValidation: true);
    }

    private void WriteSteps(IReadOnlyList<DatedInterval> steps)
    {
        json.WriteStartArray("steps"u8);
        foreach (DatedInterval step in steps)
        {
            Write(step);
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
            WriteAnswer(part.Dating, part.Interval, part.Likely);
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
