using System.Text.RegularExpressions;

namespace Terminus.Benchmarks.Marks;

/// <summary>
/// The marks of inscriptions as a careful person would write them in regular expressions: one for each kind of statement, with code generated
/// at build time. Each begins with letters or signs where it can, so that the generated code can search for them quickly.
/// </summary>
internal static partial class InscriptionPatterns
{
    /// <summary>The kinds and expressions in the order in which they are tried.</summary>
    internal static (MarkKind Kind, Regex Expression)[] All { get; } =
    [
        (MarkKind.RegistryDiamond, RegistryDiamond),
        (MarkKind.TradeMark, RegisteredTradeMark),
        (MarkKind.TradeMark, TradeMarkWord),
        (MarkKind.Copyright, Copyright),
        (MarkKind.DesignPending, DesignPending),
        (MarkKind.Pending, Pending),
        (MarkKind.UtilityModel, UtilityModel),
        (MarkKind.RegisteredDesign, RegisteredDesign),
        (MarkKind.Protected, Protected),
        (MarkKind.DesignNumber, DesignNumber),
        (MarkKind.PatentDate, DateInWords),
        (MarkKind.PatentDate, DateInFigures),
        (MarkKind.PatentDate, PatentYear),
        (MarkKind.PatentNumber, NumberOfYear),
        (MarkKind.PatentNumber, PatentNumber),
        (MarkKind.PatentNumber, LoneNumber),
        (MarkKind.Other, Other),
        (MarkKind.PatentWord, PatentWord),
        (MarkKind.Metal, Metal),
        (MarkKind.Origin, Origin),
    ];

    private const RegexOptions Options = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture;

    private const string Patent = @"\bP[A4]T(ENTED|ENTS?|\.?['’]?D|S)?\b\.?";
    private const string UnitedStates = @"\bU\.?\s?S\b\.?(\s?A\b\.?)?";
    private const string Month = @"\b(?<month>JANY?|FEB(\.?Y)?|MAR(CH)?|MCH|AP[RL](IL)?|MAY|JUNE?|JULY?|AUG(UST)?|SEPT?(EMBER)?|OCT(OBER)?|NOV(EMBER)?|DEC(EMBER)?)\b\.?";
    private const string Year = @"['’]?(?<year>\d{4}|\d\d)\b";
    private const string No = @"(N(OS?|R|UMBER)\b\.?\s*)?";
    private const string Digits = @"(?<number>[\dISO?]{1,3}([,. ][\dISO?]{3}){1,2}|\d{4,8})\b";

    [GeneratedRegex(@"◇(\s*\([^)]*\))?|\bRD\b[^/]*\bLOZENGE\b.*", Options)]
    internal static partial Regex RegistryDiamond { get; }

    [GeneratedRegex(@"\bREG\.?\s*U\.\s?S\.\s?PAT\.?\s?OFF(ICE)?\b\.?|\bREG\.\s*NO\.\s*" + Digits + "|®", Options)]
    internal static partial Regex RegisteredTradeMark { get; }

    [GeneratedRegex(@"\bTRADE\s?MARK\b", Options)]
    internal static partial Regex TradeMarkWord { get; }

    [GeneratedRegex(@"(©|\(C\)|\bCOPYRIGHT\b|\bCOPR\b\.?)(\s*(?<year>\d{4})\b)?", Options)]
    internal static partial Regex Copyright { get; }

    [GeneratedRegex(@"\bDES(IGN)?\b\.?\s*PAT\b\.?\s*(PEND(ING)?\b|APP['’]?D\.?\s*FOR\b)", Options)]
    internal static partial Regex DesignPending { get; }

    [GeneratedRegex(
        @"\bP[A4]T(ENTS?|['’]?D|S)?\b\.?\s*(P[E3]N(D(ING)?)?\b|APP?L?I?(['’]?E?D)?\b\.?\s*FOR\b(\s*NO\.?\s*(?<number>\d+)/(?<year>\d\d))?|ANG(EMELDET)?\b)"
        + @"|\bPATAPPLIEDFOR\b|(&|OTHERS?)\s*PEND(ING)?\b|\bPROV\.?\s*PAT\b|\bD\.?\s?R\.?\s?P\.?\s*ANG\b|\bBREVET\s+DEM\b", Options)]
    internal static partial Regex Pending { get; }

    [GeneratedRegex(@"\bD\.?\s?R\.?\s?G\.?\s?M\b\.?(\s*(NR\.\s*)?(?<number>\d{3,8})\b)?|実用新案\s*(登録)?第?(?<number>\d+)号?", Options)]
    internal static partial Regex UtilityModel { get; }

    [GeneratedRegex(@"\b(RD|REGD)\b\.?\s*(DESIGN\s*)?" + No + Digits + @"|\bDES(IGN)?\b\.?\s*REGD\b\.?\s*" + No + Digits + @"|\bMOD([EÈ]LE)?\b\.?\s*D[EÉ]P(OS[EÉ])?\b", Options)]
    internal static partial Regex RegisteredDesign { get; }

    [GeneratedRegex(@"\bD[EÉ]P(OS[EÉ])?\b|\bGES\b\.?\s*GESCH\b", Options)]
    internal static partial Regex Protected { get; }

    [GeneratedRegex(@"\bDES\b\.?\s*PAT\b\.?\s*" + Digits + @"|\bPAT\b\.?\s*D(ES)?[.\-]\s*" + Digits, Options)]
    internal static partial Regex DesignNumber { get; }

    [GeneratedRegex(Month + @"\s*((?<day>\d{1,2})(ST|ND|RD|TH|D)?[\s,./\-]+" + Year + @"|(?<year>\d{4})\b)", Options)]
    internal static partial Regex DateInWords { get; }

    [GeneratedRegex(Patent + @"\s*(?<first>\d{1,2})[\-/. ](?<second>\d{1,2})[\-/. ]" + Year, Options)]
    internal static partial Regex DateInFigures { get; }

    [GeneratedRegex(@"\bP[A4]T(ENTED|ENT|['’]?D)?\b\.?\s*(IN\s+)?(" + UnitedStates + @"\s*&?\s*)?(CANADA\s+)?(?<year>1[789]\d\d)\b(?![,.]\d)", Options)]
    internal static partial Regex PatentYear { get; }

    [GeneratedRegex(@"\b(?<number>\d{3,5})[/\-](?<year>\d\d)\b", Options)]
    internal static partial Regex NumberOfYear { get; }

    [GeneratedRegex(
        @"\b(P[A4]T(ENTED|ENTS?|['’]?D|S)?|P\.\s?N|RE|D\.?\s?R\.?\s?P|BREV(ET)?(\s+D['’]INVENTION|\.?\s*S\.?G\.?D\.?G)?)\b\.?\s*" + No + Digits
        + @"|[+✚]\s*(PATENT\s*)?(?<number>\d{5,6})\b|\bNO\.\s*(?<number>\d{5,8})\s+PATENTED\b", Options)]
    internal static partial Regex PatentNumber { get; }

    [GeneratedRegex(@"(?<![\d,.])(?<number>\d{7}|\d,\d{3},\d{3})(?![\d,])", Options)]
    internal static partial Regex LoneNumber { get; }

    [GeneratedRegex(
        Patent + @"(\s+IN\s+[^/]+|\s+ENGLISH\b)?|\bBREVET[EÉ]\b|\b(BT[EÉ]|BREV)\b\.?\s*S\.?G\.?D\.?G\b|\bD\.?[RB]\.?P\b|\bPATENTADO\b|\bOCTROOI\b", Options)]
    internal static partial Regex PatentWord { get; }

    [GeneratedRegex(
        @"\bSTER(LING)?\b\.?|\b925\b|\b(GERMAN|NICKEL)\s+SILVER\b|\bE\.?\s?P\.?\s?N\.?\s?S\b|\bG\.E\.|\b(QUADRUPLE|TRIPLE|CHROME|GOLD|SILVER)\s+PLATED?\b|\bVERMEIL\b|\bGOLD\s+SHELL\b|\bWARRANTED\s+\d+\s+YEARS\b"
        + @"|\b(1/\d\d\s+)?\d\d\s?K(T\b\.?)?(\s*(SOLID\s+GOLD|GOLD\s+FILLED|ROLLED\s+GOLD\s+PLATE|G\.?\s?F\b\.?|R\.?\s?G\.?\s?P\b\.?))?", Options)]
    internal static partial Regex Metal { get; }

    [GeneratedRegex(
        @"\b(MADE\s+IN\s+)?((OCCUPIED|WEST)\s+)?(GERMANY(\s+US-ZONE)?|ENGLAND|FRANCE|JAPAN|NIPPON|SPAIN|AUSTRIA|CZECHOSLOVAKIA|ITALY)\b(?!\s+PAT)|\bMADE\s+IN\s+" + UnitedStates + @"|\bENGLISH\s+MAKE\b|\bFOREIGN\b(?!\s+PAT)", Options)]
    internal static partial Regex Origin { get; }

    [GeneratedRegex(@"\b" + UnitedStates + @"\s*PATENT\s+OFFICE\b|\bNO\.\s*(?<number>\d{1,5})\b(?!/)|^\s*(?<year>1[789]\d\d)\s*$", Options)]
    internal static partial Regex Other { get; }
}
