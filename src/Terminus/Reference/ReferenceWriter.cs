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
                json.WriteOptional("source"u8, source);
                json.WriteString("origin", ReferenceWords.Origin.WordOf(origin));
                json.WriteOptional("note"u8, note);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteFeature(Utf8JsonWriter json, FeatureEntry feature)
    {
        json.WriteString("name", feature.Name);
        json.WriteOptional("group"u8, feature.Group);
        json.WriteOptional("description"u8, feature.Description);
        json.WriteOptional("introduced"u8, feature.Introduced?.Text);
        json.WriteOptional("common"u8, feature.Common?.Text);
        json.WriteOptional("fading"u8, feature.Fading?.Text);
        json.WriteOptional("gone"u8, feature.Gone?.Text);
        json.WriteString("basis", ReferenceWords.Basis.WordOf(feature.Basis));
        json.WriteString("grade", ReferenceWords.Grade.WordOf(feature.Grade));
        json.WriteOptional("endedBy"u8, feature.EndedBy == EvidenceBasis.Trade ? null : ReferenceWords.EndedBy.WordOf(feature.EndedBy));
        json.WriteFlag("patentOfWiderClass"u8, feature.PatentOfWiderClass);
        json.WriteNames("patents"u8, feature.Patents);
        json.WriteOptional("question"u8, feature.Question);
        WriteList(json, "sightings", feature.Sightings, WriteSighting);
        json.WriteOptional("estimate"u8, feature.Estimate == EstimatedEnds.None ? null : ReferenceWords.Estimate.WordOf(feature.Estimate));
    }

    private static void WriteSighting(Utf8JsonWriter json, Sighting sighting)
    {
        json.WriteString("date", sighting.Date.ToEdtf());
        json.WriteString("source", sighting.Source);
    }

    private static void WriteQuestion(Utf8JsonWriter json, QuestionEntry question)
    {
        json.WriteString("text", question.Text);
        json.WriteNames("objects"u8, question.Objects);
        json.WriteOptional("part"u8, question.Part);
    }

    private static void WritePatent(Utf8JsonWriter json, PatentEntry patent)
    {
        json.WriteOptional("filed"u8, patent.Filed?.Text);
        json.WriteOptional("issued"u8, patent.Issued?.Text);
        json.WriteOptional("title"u8, patent.Title);
        json.WriteOptional("assignee"u8, patent.Assignee);
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
        json.WriteOptional("date"u8, advert.Date?.Text);
        json.WriteOptional("what"u8, advert.What);
        json.WriteOptional("model"u8, advert.Model);
        json.WriteOptional("feature"u8, advert.Feature);
        json.WriteOptional("maker"u8, advert.Maker);
    }

    private static void WriteMark(Utf8JsonWriter json, MarkEntry mark)
    {
        json.WriteString("text", mark.Text);
        json.WriteOptional("office"u8, mark.Office);
        json.WriteOptional("maker"u8, mark.Maker);
        WriteTime(json, mark.From, mark.Until);
        json.WriteString("basis", ReferenceWords.MarkBasis.WordOf(mark.ByLaw ? MarkBasis.Law : MarkBasis.Custom));
        json.WriteString("ended", ReferenceWords.Ended.WordOf(mark.Ended));
    }

    private static void WriteTime(Utf8JsonWriter json, EdtfDate? from, EdtfDate? until)
    {
        json.WriteOptional("from"u8, from?.Text);
        json.WriteOptional("until"u8, until?.Text);
    }
}
