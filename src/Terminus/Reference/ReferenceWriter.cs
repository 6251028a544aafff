using System.Text.Json;

namespace Terminus;

/// <summary>Writes reference documents, with members in the order in which they are documented and none that say nothing.</summary>
internal static class ReferenceWriter
{
    internal static string Write(ReferenceFile file) => DocumentWriting.ToText(DocumentWriting.Indented, json =>
    {
        json.WriteStartObject();
        json.WriteNumber("format", 1);
        json.WriteString("name", file.Name);
        json.WriteString("version", file.Version);
        WriteList(json, "features", file.Features, WriteFeature);
        WriteList(json, "questions", file.Questions, WriteQuestion);
        WriteList(json, "patents", file.Patents, WritePatent);
        WriteList(json, "makers", file.Makers, WriteMaker);
        WriteList(json, "adverts", file.Adverts, WriteAdvert);
        WriteList(json, "marks", file.Marks, WriteMark);
        json.WriteEndObject();
    });

    private static void WriteList<T>(Utf8JsonWriter json, string name, IReadOnlyList<T> items, Action<Utf8JsonWriter, T> write)
    {
        if (items.Count == 0)
        {
            return;
        }

        json.WriteStartArray(name);
        foreach (T item in items)
        {
            json.WriteStartObject();
            if (item is ReferenceEntry entry)
            {
                json.WriteString("id", entry.Id);
            }

            write(json, item);
            if (item is ReferenceEntry { Source: var source, Origin: var origin, Note: var note })
            {
                json.WriteOptional("source", source);
                json.WriteString("origin", ReferenceWords.Origin.WordOf(origin));
                json.WriteOptional("note", note);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteFeature(Utf8JsonWriter json, FeatureEntry feature)
    {
        json.WriteString("name", feature.Name);
        json.WriteOptional("group", feature.Group);
        json.WriteOptional("description", feature.Description);
        json.WriteOptional("introduced", feature.Introduced?.Text);
        json.WriteOptional("common", feature.Common?.Text);
        json.WriteOptional("fading", feature.Fading?.Text);
        json.WriteOptional("gone", feature.Gone?.Text);
        json.WriteString("basis", ReferenceWords.Basis.WordOf(feature.Basis));
        json.WriteString("grade", ReferenceWords.Grade.WordOf(feature.Grade));
        json.WriteOptional("endedBy", feature.EndedBy == EvidenceBasis.Trade ? null : ReferenceWords.EndedBy.WordOf(feature.EndedBy));
        json.WriteFlag("patentOfWiderClass", feature.PatentOfWiderClass);
        json.WriteNames("patents", feature.Patents);
        json.WriteOptional("question", feature.Question);
        WriteList(json, "sightings", feature.Sightings, WriteSighting);
        json.WriteOptional("estimate", feature.Estimate == EstimatedEnds.None ? null : ReferenceWords.Estimate.WordOf(feature.Estimate));
    }

    private static void WriteSighting(Utf8JsonWriter json, Sighting sighting)
    {
        json.WriteString("date", sighting.Date.ToEdtf());
        json.WriteString("source", sighting.Source);
    }

    private static void WriteQuestion(Utf8JsonWriter json, QuestionEntry question)
    {
        json.WriteString("text", question.Text);
        json.WriteNames("objects", question.Objects);
        json.WriteOptional("part", question.Part);
    }

    private static void WritePatent(Utf8JsonWriter json, PatentEntry patent)
    {
        json.WriteOptional("filed", patent.Filed?.Text);
        json.WriteOptional("issued", patent.Issued?.Text);
        json.WriteOptional("title", patent.Title);
        json.WriteOptional("assignee", patent.Assignee);
    }

    private static void WriteMaker(Utf8JsonWriter json, MakerEntry maker)
    {
        json.WriteString("name", maker.Name);
        WriteTime(json, maker.From, maker.Until);
        WriteList(json, "forms", maker.Forms, (j, form) => WriteDetail(j, "name", form));
        WriteList(json, "addresses", maker.Addresses, (j, address) => WriteDetail(j, "address", address));
    }

    private static void WriteDetail(Utf8JsonWriter json, string member, MakerDetail detail)
    {
        json.WriteString(member, detail.Text);
        WriteTime(json, detail.From, detail.Until);
    }

    private static void WriteAdvert(Utf8JsonWriter json, AdvertEntry advert)
    {
        json.WriteOptional("date", advert.Date?.Text);
        json.WriteOptional("what", advert.What);
        json.WriteOptional("model", advert.Model);
        json.WriteOptional("feature", advert.Feature);
        json.WriteOptional("maker", advert.Maker);
    }

    private static void WriteMark(Utf8JsonWriter json, MarkEntry mark)
    {
        json.WriteString("text", mark.Text);
        json.WriteOptional("office", mark.Office);
        json.WriteOptional("maker", mark.Maker);
        WriteTime(json, mark.From, mark.Until);
        json.WriteString("basis", ReferenceWords.MarkBasis.WordOf(mark.ByLaw ? MarkBasis.Law : MarkBasis.Custom));
        json.WriteString("ended", ReferenceWords.Ended.WordOf(mark.Ended));
    }

    private static void WriteTime(Utf8JsonWriter json, EdtfDate? from, EdtfDate? until)
    {
        json.WriteOptional("from", from?.Text);
        json.WriteOptional("until", until?.Text);
    }
}
