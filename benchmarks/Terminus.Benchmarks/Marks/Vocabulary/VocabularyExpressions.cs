using System.Text.RegularExpressions;

namespace Terminus.Benchmarks.Marks;

/// <summary>
/// Expressions that know every word and wording of the reader's tables, one for each kind of statement as in <see cref="InscriptionPatterns"/>,
/// for text whose letters are folded. They are compiled when they are first used, which makes the same code as at build time.
/// </summary>
internal static class VocabularyExpressions
{
    private const string Gap = VocabularyWords.Gap;
    private const string Space = VocabularyWords.Space;
    private const string Year = @"'?(?<year>\d{4}|\d\d)\b(?![,/]\d)";
    private const string Ordinal = @"(?:\s?(?:ST|ND|RD|TH|D|ER|E)\b)?";
    private const string Between = @"[\s,./\-']{1,4}";
    private const string Digits = @"(?<number>[\dILOS?]{1,3}(?:[,.' ][\dILOS?*]{3}(?![\w?])|[,.' ]\*(?=[,.' ])){1,3}|\d[\d?]{2,9})(?![\d?])(?:/(?<year>\d\d)\b)?";

    private const string Measure = @"\b(?:1/\d{1,2}[\s\-]+)?\d{1,2}\s?(?:KT?|CT|KARAT)\b";

    private static readonly VocabularyWords Words = new();
    private static readonly string No = "(?:(?:" + Words.Any("NO") + @"|#|\bN\.)" + Gap + ")?";
    private static readonly string Number = No + Digits;
    private static readonly string Foreign = "(?:" + Words.Any("AND") + Space + ")?(?:" + Words.Any("FOREIGN", "OTHER") + Space + @"(?:COUNTRIES\b)?" + Space + ")?";
    private static readonly string Offices = "(?:" + Words.Any("{country}", "{demonym}") + Space + "(?:" + Words.Any("AND") + Space + ")?){0,3}";
    private static readonly string Patent = "(?:" + Words.Any("PATENT") + @"|\bP[A4?]T\b)";
    private static readonly string Claim = Patent + Gap + "(?:" + Words.Any("IN", "OF", "DATED") + Space + ")?" + Offices + Foreign;
    private static readonly string Month = @"(?<month>" + Words.Any("{month}") + ")";
    private static readonly string MonthFirst = Month + Gap + @"(?:Y\b[\s.]*)?(?:(?<year>\d{4})\b|(?<day>\d{1,2})" + Ordinal + Between + Year + ")";
    private static readonly string DayFirst = @"\b(?<day>\d{1,2})" + Ordinal + @"[\s.]*(?:(?:DAY\s+)?(?:OF|DEN?)\s+)?" + Month + @"[\s.,]*(?:DEL?\s+)?" + Year;
    private static readonly string Date = "(?:" + MonthFirst + "|" + DayFirst + ")";

    /// <summary>The number of a month by any of its forms.</summary>
    internal static int MonthOf(string form) => Words.Months[form.TrimEnd('.').Replace("'", "", StringComparison.Ordinal)];

    /// <summary>The kinds and expressions in the order in which they are tried.</summary>
    internal static (MarkKind Kind, Regex Expression)[] All { get; } = Make();

    private static (MarkKind Kind, Regex Expression)[] Make()
    {
        var phrases = new VocabularyPhrases(Words, Number);
        string design = Words.Any("DESIGN");
        string pending = "(?:" + Words.Any("PENDING", "ANGEMELDET") + "|" + Words.Any("APPLIED") + Gap + Words.Any("FOR", "PENDING") + @"|\bP[E3?]N[D?]\b)";
        string us = "(?:" + Space + Words.Any("US") + ")?";
        string notOfClaim = "(?!" + Space + Foreign + "(?:" + design + Space + ")?(?:" + Patent + @"|\d,?\d{3},?\d{3}\b))";
        var all = new List<(MarkKind, Regex)>();
        void Add(MarkKind kind, params IEnumerable<string> patterns) => all.AddRange(patterns.Select(p => (kind, Compiled(p))));

        Add(MarkKind.RegistryDiamond, @"\u25C7(?:\s*\([^)]*\))?|\bRD\b[^/]*\bLOZENGE\b.*");
        Add(MarkKind.RegistryDiamond, phrases.All("registry-diamond"));
        Add(MarkKind.TradeMark, phrases.All("trade-mark"));
        Add(MarkKind.Copyright, phrases.All("copyright"));
        Add(MarkKind.Other, Words.Any("GIVEN") + @"\b[^/]*?" + Date, Words.Any("SINCE", "ESTABLISHED") + Gap + @"(?<year>\d{4})\b");
        Add(MarkKind.DesignPending, design + Gap + "(?:" + Patent + Gap + ")?" + pending);
        Add(
            MarkKind.Pending,
            Claim + pending + "(?:" + Gap + No + @"(?<number>\d+)/(?<year>\d\d)\b)?" + us,
            "(?:" + Words.Any("OTHER") + Gap + @"|&\s*)" + pending + us,
            Words.Any("PROVISIONAL") + Gap + Patent + "(?:" + Gap + Number + ")?",
            @"\bPAT(?:ENT)?APPLIEDFOR\b");
        Add(MarkKind.Pending, phrases.All("pending"));
        Add(MarkKind.UtilityModel, phrases.All("utility-model"));
        Add(MarkKind.RegisteredDesign, phrases.All("registered-design"));
        Add(
            MarkKind.DesignNumber,
            "(?:" + design + Gap + "(?:" + Patent + Gap + ")?|" + Patent + @"[\s.]*DE?S?(?<!')[.\- ]*|\bD" + Gap + Patent + Gap + ")" + Number);
        Add(
            MarkKind.PatentDate,
            Date + us,
            Patent + Gap + @"(?<first>\d{1,2})[\-/. ](?<second>\d{1,2})[\-/. ]" + Year,
            Claim + @"(?:(?<=')(?<year>\d\d)|(?<year>1[789]\d\d))\b(?![,./\-]\d)");
        Add(
            MarkKind.PatentNumber,
            Claim + Number + @"(?:-(?<year>\d\d)\b)?",
            Words.Any("REISSUE") + Gap + Number,
            @"\bNO\.\s*(?<number>\d{5,8})\s+" + Patent,
            @"\b(?<number>\d{3,6})(?:[/\-](?<year>\d\d)\b|\s+OF\s+(?<year>1[89]\d\d)\b)");
        Add(MarkKind.PatentWord, phrases.All("patent-word"));
        Add(MarkKind.PatentNumber, @"(?<![\d,.])(?<number>\d{7}|\d,\d{3},\d{3})(?![\d,])");
        Add(MarkKind.Protected, phrases.All("protected"));
        Add(MarkKind.Other, phrases.All("other"));
        Add(MarkKind.Metal, phrases.All("metal").Select(metal => "(?:" + Measure + Gap + ")?" + metal).Append(Measure));
        Add(MarkKind.Other, @"\bNO\.\s*(?<number>\d{1,5})\b(?!/)|^\s*(?<year>1[789]\d\d)\s*$");
        Add(MarkKind.PatentWord, Claim);
        Add(MarkKind.Origin, phrases.All("origin").Select(origin => origin + notOfClaim));
        return [.. all];
    }

    private static Regex Compiled(string pattern)
        => new(pattern, RegexOptions.Compiled | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture);
}
