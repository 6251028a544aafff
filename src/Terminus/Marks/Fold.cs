namespace Terminus;

/// <summary>
/// What a character of an inscription is once case, accents, curly quotes, long dashes, superscripts and full-width forms are put
/// aside. One character gives one character, so that positions stay those of the text.
/// </summary>
internal static class Fold
{
    /// <summary>Stands for a character that has no weight in a word, such as a combining accent.</summary>
    internal const char Nothing = '\0';

    // U+00C0 to U+017F without their accents.
    private const string Latin =
        "AAAAAAACEEEEIIIIDNOOOOO*OUUUUYTSAAAAAAACEEEEIIIIDNOOOOO/OUUUUYTY"
        + "AAAAAACCCCCCCCDDDDEEEEEEEEEEGGGGGGGGHHHHIIIIIIIIIIIIJJKKKLLLLLLLLLLNNNNNNNNNOOOOOOOORRRRRRSSSSSSSSTTTTTTUUUUUUUUUUUUWWYYYZZZZZZS";

    internal static char Of(char c)
    {
        if (c < 0x80)
        {
            return c is >= 'a' and <= 'z' ? (char)(c - 32) : c == '`' ? '\'' : c;
        }

        if (c is >= '\u00C0' and <= '\u017F')
        {
            return Latin[c - '\u00C0'];
        }

        return c switch
        {
            '\u2018' or '\u2019' or '\u02BC' or '\u00B4' or '\u2032' or '\u201B' or '\uFF07' or '\u02B9' => '\'',
            '\u2010' or '\u2011' or '\u2012' or '\u2013' or '\u2014' or '\u2015' or '\u2212' or '\uFE63' or '\uFF0D' => '-',
            '\u00B2' => '2',
            '\u00B3' => '3',
            '\u00B9' => '1',
            '\u2070' => '0',
            >= '\u2074' and <= '\u2079' => (char)('4' + (c - '\u2074')),
            >= '\uFF10' and <= '\uFF19' => (char)('0' + (c - '\uFF10')),
            >= '\uFF21' and <= '\uFF3A' => (char)('A' + (c - '\uFF21')),
            >= '\uFF41' and <= '\uFF5A' => (char)('A' + (c - '\uFF41')),
            >= '\u0300' and <= '\u036F' or '\u00AD' or '\u200B' or '\u200C' or '\u200D' or '\uFEFF' or '\uFE0F' => Nothing,
            '\u00B7' or '\u2022' or '\u2027' or '\u2219' or '\uFF0E' or '\u22C5' or '\u02D9' or '\u30FB' => '.',
            '\uFF0C' or '\u3001' or '\u201A' => ',',
            '\u2026' => '\u2026',
            '\u25CA' or '\u25C7' or '\u25C6' or '\u2662' or '\u2666' or '\u2B26' or '\u2B25' or '\u2B28' => '\u25C7',
            '\u271A' or '\u271B' or '\u271C' or '\u271D' or '\u2719' or '\u2716' or '\u2720' or '\u2629' or '\u2795' => '\u271A',
            '\uFF0B' => '+',
            '\uFF0F' or '\u2044' or '\u2215' => '/',
            '\u24B8' or '\u24D2' => '\u00A9',
            '\u24C7' or '\u24E1' => '\u00AE',
            '\uFF06' or '\u204A' => '&',
            '\uFFFD' or '\u25A1' or '\u25A0' or '\u2588' => '?',
            _ => SuperscriptLetter(c),
        };
    }

    private static char SuperscriptLetter(char c) => c switch
    {
        '\u1D48' => 'D',
        '\u1D49' => 'E',
        '\u02B0' => 'H',
        '\u1D52' or '\u00BA' or '\u00B0' or '\u02DA' => 'O',
        '\u02B3' => 'R',
        '\u02E2' => 'S',
        '\u1D57' => 'T',
        '\u02B8' => 'Y',
        '\u207F' => 'N',
        '\u1D43' or '\u00AA' => 'A',
        '\u1D9C' => 'C',
        '\u02E1' => 'L',
        '\u1D56' => 'P',
        _ => c,
    };

    /// <summary>A letter that stands in place of a digit when a stamp is worn or a finder misreads it, or the character itself.</summary>
    internal static char AsDigit(char folded) => folded switch
    {
        'I' or 'L' or '|' => '1',
        'O' or 'Q' => '0',
        'S' => '5',
        'B' => '8',
        'Z' => '2',
        'G' => '6',
        _ => folded,
    };

    /// <summary>A digit that stands in place of a letter when a stamp is worn or a finder misreads it, or the character itself.</summary>
    internal static char AsLetter(char folded) => folded switch
    {
        '0' => 'O',
        '1' => 'I',
        '3' => 'E',
        '4' => 'A',
        '5' => 'S',
        '6' => 'G',
        '8' => 'B',
        _ => folded,
    };
}
