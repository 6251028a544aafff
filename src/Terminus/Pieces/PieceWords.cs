namespace Terminus;

/// <summary>The members and words of the piece document, in one place for reading and writing.</summary>
internal static class PieceWords
{
    internal static readonly MemberNames Piece = new(
        "a piece", "format", "!id", "title", "object", "stated", "parts", "marks", "features", "subjects", "inscriptions", "records", "makers",
        "adverts", "opinions");

    internal static readonly MemberNames Part = new("a part", "!part", "original", "why");
    internal static readonly MemberNames Mark = new("a mark", "text", "part", "patent");
    internal static readonly MemberNames Feature = new("a feature", "!feature", "part", "absent");
    internal static readonly MemberNames Subject = new("a subject", "!subject", "part");
    internal static readonly MemberNames Inscription = new("an inscription", "!date", "text", "of", "part");
    internal static readonly MemberNames Record = new("a record", "!date", "what", "new", "part");
    internal static readonly MemberNames Maker = new("a maker", "!maker", "form", "address", "part");
    internal static readonly MemberNames Advert = new("an advert", "!date", "what", "model", "part");
    internal static readonly MemberNames Opinion = new("an opinion", "!windows", "by", "restsOn", "label", "part");
    internal static readonly MemberNames Window = new("a window", "notBefore", "notAfter", "!confidence");

    internal static readonly Choices<InscriptionPurpose> Purposes = new(
        ("presentation", InscriptionPurpose.Presentation),
        ("commemorative", InscriptionPurpose.Commemorative),
        ("since", InscriptionPurpose.Since));
}
