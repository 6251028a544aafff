namespace Terminus;

/// <summary>Reads reference documents: the document itself here, each kind of entry in its own part.</summary>
internal static partial class ReferenceReader
{
    internal static readonly MemberNames File = new(
        "a reference file", "format", "!name", "!version", "features", "questions", "patents", "makers", "adverts", "marks");

    private delegate T? EntryReader<T>(ref DocumentReader reader);

    internal static DocumentResult<ReferenceFile> Read(ReadOnlySpan<byte> utf8, string? fileName)
    {
        var reader = new DocumentReader(utf8, fileName);
        ReferenceFile? file = ReadFile(ref reader);
        return new DocumentResult<ReferenceFile>(file, reader.Finish());
    }

    private static ReferenceFile? ReadFile(ref DocumentReader reader)
    {
        if (!reader.OpenObject(File))
        {
            return null;
        }

        string? name = null;
        string? version = null;
        List<FeatureEntry>? features = null;
        List<QuestionEntry>? questions = null;
        List<PatentEntry>? patents = null;
        List<MakerEntry>? makers = null;
        List<AdvertEntry>? adverts = null;
        List<MarkEntry>? marks = null;
        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "format": reader.ReadFormat(); break;
                case "name": name = reader.ReadName("the name of the file"); break;
                case "version": version = reader.ReadName("the version of the file"); break;
                case "features": features = ReadList(ref reader, member, ReadFeature); break;
                case "questions": questions = ReadList(ref reader, member, ReadQuestion); break;
                case "patents": patents = ReadList(ref reader, member, ReadPatent); break;
                case "makers": makers = ReadList(ref reader, member, ReadMaker); break;
                case "adverts": adverts = ReadList(ref reader, member, ReadAdvert); break;
                case "marks": marks = ReadList(ref reader, member, ReadMark); break;
            }
        }

        return name is null || version is null
            ? null
            : new ReferenceFile(name, version, features, questions, patents, makers, adverts, marks);
    }

    /// <summary>The entries of a list, without those that could not be read.</summary>
    private static List<T> ReadList<T>(ref DocumentReader reader, string what, EntryReader<T> read)
        where T : class
    {
        var entries = new List<T>();
        if (reader.OpenArray(what))
        {
            while (reader.NextItem())
            {
                if (read(ref reader) is { } entry)
                {
                    entries.Add(entry);
                }
            }
        }

        return entries;
    }

    /// <summary>The members that every entry has.</summary>
    private struct Common
    {
        internal string? Id;
        internal string? Source;
        internal string? Note;
        internal ReferenceOrigin Origin;
        internal DocumentPlace Place;

        internal static Common At(ref DocumentReader reader) => new() { Place = reader.Place() };

        internal void Read(ref DocumentReader reader, string member)
        {
            switch (member)
            {
                case "id": Id = reader.ReadName("an id"); break;
                case "source": Source = reader.ReadString("the source, a string,"); break;
                case "origin": Origin = reader.ReadChoice(ReferenceWords.Origin, "an origin") ?? default; break;
                case "note": Note = reader.ReadString("a note, a string,"); break;
                default: reader.Skip(); break;
            }
        }
    }
}
