namespace Terminus;

/// <content>Patents, makers, adverts and marks.</content>
internal static partial class ReferenceReader
{
    internal static readonly MemberNames Patent = new("a patent", "!id", "filed", "issued", "title", "assignee", "!source", "origin", "note");

    internal static readonly MemberNames Maker = new(
        "a maker", "!id", "!name", "from", "until", "forms", "addresses", "!source", "origin", "note");

    internal static readonly MemberNames Form = new("a form of a name", "!name", "from", "until");

    internal static readonly MemberNames Address = new("an address", "!address", "from", "until");

    internal static readonly MemberNames Advert = new(
        "an advert", "!id", "!date", "what", "model", "feature", "maker", "!source", "origin", "note");

    internal static readonly MemberNames Mark = new(
        "a mark", "!id", "!text", "office", "maker", "from", "until", "basis", "ended", "!source", "origin", "note");

    private static PatentEntry? ReadPatent(ref DocumentReader reader)
    {
        var common = Common.At(ref reader);
        if (!reader.OpenObject(Patent))
        {
            return null;
        }

        EdtfDate? filed = null;
        EdtfDate? issued = null;
        string? title = null;
        string? assignee = null;
        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "id": common.Id = reader.ReadPatentId(); break;
                case "filed": filed = reader.ReadEdtf(); break;
                case "issued": issued = reader.ReadEdtf(); break;
                case "title": title = reader.ReadString(); break;
                case "assignee": assignee = reader.ReadName(); break;
                default: common.Read(ref reader, member); break;
            }
        }

        return common.Id is null
            ? null
            : new PatentEntry(common.Id, filed, issued, title, assignee, common.Source, common.Origin, common.Note) { Place = common.Place };
    }

    private static MakerEntry? ReadMaker(ref DocumentReader reader)
    {
        var common = Common.At(ref reader);
        if (!reader.OpenObject(Maker))
        {
            return null;
        }

        string? name = null;
        EdtfDate? from = null;
        EdtfDate? until = null;
        List<MakerDetail>? forms = null;
        List<MakerDetail>? addresses = null;
        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "name": name = reader.ReadName(); break;
                case "from": from = reader.ReadEdtf(); break;
                case "until": until = reader.ReadEdtf(); break;
                case "forms": forms = ReadList(ref reader, member, static (ref r) => ReadDetail(ref r, Form)); break;
                case "addresses": addresses = ReadList(ref reader, member, static (ref r) => ReadDetail(ref r, Address)); break;
                default: common.Read(ref reader, member); break;
            }
        }

        return common.Id is null || name is null
            ? null
            : new MakerEntry(common.Id, name, from, until, forms, addresses, common.Source, common.Origin, common.Note) { Place = common.Place };
    }

    private static MakerDetail? ReadDetail(ref DocumentReader reader, MemberNames names)
    {
        if (!reader.OpenObject(names))
        {
            return null;
        }

        string? text = null;
        EdtfDate? from = null;
        EdtfDate? until = null;
        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "from": from = reader.ReadEdtf(); break;
                case "until": until = reader.ReadEdtf(); break;
                default: text = reader.ReadName(names.What); break;
            }
        }

        return text is null ? null : new MakerDetail(text, from, until);
    }

    private static AdvertEntry? ReadAdvert(ref DocumentReader reader)
    {
        var common = Common.At(ref reader);
        if (!reader.OpenObject(Advert))
        {
            return null;
        }

        EdtfDate? date = null;
        string? what = null;
        string? model = null;
        string? feature = null;
        string? maker = null;
        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "date": date = reader.ReadEdtf(); break;
                case "what": what = reader.ReadString(); break;
                case "model": model = reader.ReadName("the name of a model"); break;
                case "feature": feature = reader.ReadName("the id of a feature"); break;
                case "maker": maker = reader.ReadName("the id of a maker"); break;
                default: common.Read(ref reader, member); break;
            }
        }

        return common.Id is null
            ? null
            : new AdvertEntry(common.Id, date, what, model, feature, maker, common.Source, common.Origin, common.Note) { Place = common.Place };
    }

    private static MarkEntry? ReadMark(ref DocumentReader reader)
    {
        var common = Common.At(ref reader);
        if (!reader.OpenObject(Mark))
        {
            return null;
        }

        string? text = null;
        string? office = null;
        string? maker = null;
        EdtfDate? from = null;
        EdtfDate? until = null;
        MarkBasis basis = MarkBasis.Custom;
        MarkEnd ended = MarkEnd.Custom;
        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "text": text = reader.ReadName("the text of the mark"); break;
                case "office": office = reader.ReadName("the code of an office"); break;
                case "maker": maker = reader.ReadName("the id of a maker"); break;
                case "from": from = reader.ReadEdtf(); break;
                case "until": until = reader.ReadEdtf(); break;
                case "basis": basis = reader.ReadChoice(ReferenceWords.MarkBasis, "a basis") ?? MarkBasis.Custom; break;
                case "ended": ended = reader.ReadChoice(ReferenceWords.Ended, "what ended it") ?? MarkEnd.Custom; break;
                default: common.Read(ref reader, member); break;
            }
        }

        return common.Id is null || text is null
            ? null
            : new MarkEntry(
                common.Id, text, office, maker, from, until, basis == MarkBasis.Law, ended, common.Source, common.Origin, common.Note)
            { Place = common.Place };
    }

    private static string? ReadPatentId(this ref DocumentReader reader)
    {
        string? id = reader.ReadName("the id of a patent");
        if (id is not null && !PatentId.TryParse(id, out _))
        {
            reader.Report(PatentId.Wanted + " Found \"" + id + "\".");
            return null;
        }

        return id;
    }
}
