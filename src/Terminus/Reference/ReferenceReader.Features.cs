namespace Terminus;

/// <content>Features, with their sightings, and the questions they answer.</content>
internal static partial class ReferenceReader
{
    internal static readonly MemberNames Feature = new(
        "a feature",
        "!id", "!name", "group", "description", "introduced", "common", "fading", "gone", "!basis", "grade", "endedBy",
        "patentOfWiderClass", "patents", "question", "sightings", "estimate", "!source", "origin", "note");

    internal static readonly MemberNames Sighting = new("a sighting", "!date", "!source");

    internal static readonly MemberNames Question = new("a question", "!id", "!text", "objects", "part", "source", "origin", "note");

    private static FeatureEntry? ReadFeature(ref DocumentReader reader)
    {
        var common = Common.At(ref reader);
        if (!reader.OpenObject(Feature))
        {
            return null;
        }

        var read = new FeatureEntry("", "") { Place = common.Place };
        string? name = null;
        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "name": name = reader.ReadName(); break;
                case "group": read = read with { Group = reader.ReadName("the name of a group") }; break;
                case "description": read = read with { Description = reader.ReadString() }; break;
                case "introduced": read = read with { Introduced = reader.ReadEdtf() }; break;
                case "common": read = read with { Common = reader.ReadEdtf() }; break;
                case "fading": read = read with { Fading = reader.ReadEdtf() }; break;
                case "gone": read = read with { Gone = reader.ReadEdtf() }; break;
                case "basis": read = read with { Basis = reader.ReadChoice(ReferenceWords.Basis, "a basis") ?? default }; break;
                case "grade": read = read with { Grade = reader.ReadChoice(ReferenceWords.Grade, "a grade") ?? EvidenceGrade.Medium }; break;
                case "endedBy": read = read with { EndedBy = reader.ReadChoice(ReferenceWords.EndedBy, "what ended it") ?? default }; break;
                case "patentOfWiderClass": read = read with { PatentOfWiderClass = reader.ReadBool() ?? false }; break;
                case "patents": read = read with { Patents = reader.ReadNames("ids of patents", "the id of a patent") }; break;
                case "question": read = read with { Question = reader.ReadName("the id of a question") }; break;
                case "sightings": read = read with { Sightings = ReadList(ref reader, member, ReadSighting) }; break;
                case "estimate": read = read with { Estimate = reader.ReadChoice(ReferenceWords.Estimate, "the ends to estimate") ?? default }; break;
                default: common.Read(ref reader, member); break;
            }
        }

        return common.Id is null || name is null
            ? null
            : FeatureEstimate.Apply(
                read with { Id = common.Id, Name = name, Source = common.Source, Origin = common.Origin, Note = common.Note });
    }

    private static Sighting? ReadSighting(ref DocumentReader reader)
    {
        if (!reader.OpenObject(Sighting))
        {
            return null;
        }

        EdtfDate? date = null;
        string? source = null;
        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "date": date = reader.ReadEdtf(); break;
                case "source": source = reader.ReadName("the source of the sighting"); break;
            }
        }

        return date?.Window is { } window && source is not null ? new Sighting(window, source) : null;
    }

    private static QuestionEntry? ReadQuestion(ref DocumentReader reader)
    {
        var common = Common.At(ref reader);
        if (!reader.OpenObject(Question))
        {
            return null;
        }

        string? text = null;
        List<string>? objects = null;
        string? part = null;
        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "text": text = reader.ReadName("the question, a text,"); break;
                case "objects": objects = reader.ReadNames("kinds of object", "a kind of object"); break;
                case "part": part = reader.ReadName("the name of a part"); break;
                default: common.Read(ref reader, member); break;
            }
        }

        return common.Id is null || text is null
            ? null
            : new QuestionEntry(common.Id, text, objects, part, common.Source, common.Origin, common.Note) { Place = common.Place };
    }
}
