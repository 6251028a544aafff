using System.Text.Json;

namespace Terminus;

/// <summary>The JSON document of a dated piece: its answer, its evidence and its problems.</summary>
/// <remarks>
/// Within a format members are only added. In <c>possible</c>, <c>interval</c> and <c>likely</c> only a start can be null; where the end is only the day of
/// the opinion, <c>notAfter</c> is that day and <c>edtf</c> has an open end. In <c>evidence</c> windows are unclipped and both ends can be null.
/// Numbers have at most 12 decimals.
/// </remarks>
public static class ResultDocument
{
    /// <summary>The document, indented.</summary>
    /// <param name="dating">The dated piece.</param>
    /// <param name="steps">Whether to add the answers at all levels.</param>
    public static string ToJson(PieceDating dating, bool steps = false)
        => DocumentWriting.ToText(DocumentWriting.Indented, json => Write(json, dating, steps));

    /// <summary>Writes the document into a writer, as one object.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="dating">The dated piece.</param>
    /// <param name="steps">Whether to add the answers at all levels.</param>
    public static void Write(Utf8JsonWriter json, PieceDating dating, bool steps = false)
    {
        Guard.NotNull(json, nameof(json));
        Guard.NotNull(dating, nameof(dating));
        Dating whole = dating.Dating;
        json.WriteStartObject();
        json.WriteNumber("format", 1);
        json.WriteString("id", dating.Piece.Id);
        json.WriteOptional("title", dating.Piece.Title);
        json.WriteDay("asOf", whole.AsOfDay);
        WriteLayers(json, dating.Reference);
        json.WriteString("assumptions", whole.Assumptions.ToString());
        WritePossible(json, whole.Possible);
        WriteInterval(json, "interval", dating.Interval);
        WriteInterval(json, "likely", dating.Likely);
        json.WriteRounded("conflict", whole.Conflict);
        json.WriteBoolean("qualified", whole.Qualified);
        WriteDisagreements(json, dating);
        if (whole.Qualified)
        {
            WriteReadings(json, whole);
        }

        WriteParts(json, dating.Parts);
        WriteAge(json, dating.OverHundredYears);
        WriteStated(json, dating);
        json.WriteString("statement", Statement.Of(dating));
        if (steps)
        {
            json.WriteStartArray("steps");
            foreach (DatedInterval step in whole.Steps)
            {
                WriteInterval(json, null, step);
            }

            json.WriteEndArray();
        }

        WriteEvidence(json, dating);
        WriteProblems(json, dating.Problems);
        json.WriteEndObject();
    }

    private static void WriteLayers(Utf8JsonWriter json, ReferenceSet reference)
    {
        json.WriteStartArray("reference");
        foreach (ReferenceLayer layer in reference.Layers)
        {
            json.WriteStartObject();
            json.WriteString("name", layer.Name);
            json.WriteString("version", layer.Version);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WritePossible(Utf8JsonWriter json, DateWindow? possible)
    {
        if (possible is not { } window)
        {
            json.WriteNull("possible");
            return;
        }

        json.WriteStartObject("possible");
        json.WriteWindow(window);
        json.WriteEndObject();
    }

    private static void WriteInterval(Utf8JsonWriter json, string? name, DatedInterval? interval)
    {
        if (name is not null)
        {
            json.WritePropertyName(name);
        }

        if (interval is null)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartObject();
        json.WriteRounded("confidence", interval.Confidence);
        json.WriteWindow(interval.Window);
        if (interval.EarliestYear is { } year)
        {
            json.WriteNumber("earliestYear", year);
        }
        else
        {
            json.WriteNull("earliestYear");
        }

        json.WriteNumber("latestYear", interval.LatestYear);
        json.WriteNullable("edtf", interval.ToEdtf());
        json.WriteRounded("belief", interval.Belief);
        json.WriteRounded("plausibility", interval.Plausibility);
        json.WriteBoolean("insidePossible", interval.InsidePossible);
        json.WriteEndObject();
    }

    private static void WriteDisagreements(Utf8JsonWriter json, PieceDating dating)
    {
        json.WriteStartArray("disagreements");
        foreach (Disagreement disagreement in dating.Dating.Disagreements)
        {
            json.WriteStartObject();
            json.WriteNumber("first", disagreement.First);
            if (disagreement.Second is { } second)
            {
                json.WriteNumber("second", second);
            }
            else
            {
                json.WriteNull("second");
            }

            json.WriteRounded("mass", disagreement.Mass);
            json.WriteString("level", Words.Kebab(disagreement.Level.ToString()));
            json.WriteStartArray("parts");
            foreach (string part in disagreement.Parts)
            {
                json.WriteStringValue(part);
            }

            json.WriteEndArray();
            json.WriteString("cause", Words.Kebab(disagreement.Cause.ToString()));
            json.WriteString("why", ReasonText.Of(Statement.OfDisagreement(dating, disagreement)));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteReadings(Utf8JsonWriter json, Dating dating)
    {
        json.WriteStartArray("readings");
        foreach (Reading reading in dating.Readings.Take(2))
        {
            json.WriteStartObject();
            json.WriteWindow(reading.Window);
            if (reading.Weight is { } weight)
            {
                json.WriteRounded("weight", weight);
            }
            else
            {
                json.WriteNull("weight");
            }

            WriteIndices(json, "items", reading.Items);
            WriteIndices(json, "setAside", reading.SetAside);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteIndices(Utf8JsonWriter json, string name, IReadOnlyList<int> indices)
    {
        json.WriteStartArray(name);
        foreach (int index in indices)
        {
            json.WriteNumberValue(index);
        }

        json.WriteEndArray();
    }

    private static void WriteParts(Utf8JsonWriter json, IReadOnlyList<PartDating> parts)
    {
        json.WriteStartArray("parts");
        foreach (PartDating part in parts)
        {
            json.WriteStartObject();
            json.WriteString("part", part.Part);
            json.WriteBoolean("original", part.Original);
            json.WriteOptional("why", part.Why);
            WritePossible(json, part.Dating.Possible);
            WriteInterval(json, "interval", part.Interval);
            WriteInterval(json, "likely", part.Likely);
            json.WriteRounded("conflict", part.Dating.Conflict);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteAge(Utf8JsonWriter json, AgeAnswer age)
    {
        json.WriteStartObject("overHundredYears");
        json.WriteString("answer", Words.Spaced(age.Verdict.ToString()));
        json.WriteRounded("belief", age.Belief);
        json.WriteRounded("plausibility", age.Plausibility);
        json.WriteEndObject();
    }

    private static void WriteStated(Utf8JsonWriter json, PieceDating dating)
    {
        if (dating.Stated is not { } claim)
        {
            return;
        }

        json.WriteStartObject("stated");
        json.WriteString("edtf", claim.Stated.Text);
        json.WriteString("verdict", Words.Spaced(claim.Verdict.ToString()));
        if (claim.By is { } by)
        {
            json.WriteNumber("by", by);
        }

        json.WriteString("why", ReasonText.Of(ClaimReasons.Of(dating, claim)));
        json.WriteEndObject();
    }

    // The items of the whole come first, so that the indices of disagreements and readings hold; those of parts that are not original follow.
    private static void WriteEvidence(Utf8JsonWriter json, PieceDating dating)
    {
        json.WriteStartArray("evidence");
        foreach (Evidence evidence in dating.Dating.Evidence)
        {
            WriteItem(json, evidence, dating.Dating.Assumptions, EvidenceReasons.Of(evidence, dating.Reference));
        }

        foreach (Evidence evidence in dating.LeftOut)
        {
            var leftOut = new Reason("pieces.part-not-original", "part", evidence.Part ?? "");
            WriteItem(json, evidence, dating.Dating.Assumptions, EvidenceReasons.Of(evidence, dating.Reference).Append(leftOut));
        }

        json.WriteEndArray();
    }

    private static void WriteItem(Utf8JsonWriter json, Evidence evidence, Assumptions assumptions, IEnumerable<Reason> reasons)
    {
        json.WriteStartObject();
        json.WriteString("kind", evidence.Kind);
        json.WriteNullable("part", evidence.Part);
        WriteWindows(json, evidence.StatedWindows(assumptions));
        json.WriteStartArray("entries");
        foreach (string entry in evidence.Entries)
        {
            json.WriteStringValue(entry);
        }

        json.WriteEndArray();
        json.WriteStartArray("reasons");
        foreach (Reason reason in reasons)
        {
            json.WriteStartObject();
            json.WriteString("rule", reason.Rule);
            json.WriteString("text", ReasonText.Of(reason));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNullable("source", evidence.Source);
        json.WriteEndObject();
    }

    /// <summary>The member <c>windows</c>: each with its ends, null where open, and its confidence.</summary>
    internal static void WriteWindows(Utf8JsonWriter json, IReadOnlyList<StatedWindow> windows)
    {
        json.WriteStartArray("windows");
        foreach (StatedWindow window in windows)
        {
            json.WriteStartObject();
            json.WriteWindow(window.Window);
            json.WriteRounded("confidence", window.Confidence);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteProblems(Utf8JsonWriter json, IReadOnlyList<DocumentProblem> problems)
    {
        json.WriteStartArray("problems");
        foreach (DocumentProblem problem in problems)
        {
            json.WriteStartObject();
            json.WriteString("path", problem.Path);
            json.WriteString("message", problem.Message);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
