namespace Terminus.Demo.Csv;

/// <summary>
/// Keeps a spreadsheet from running words as a formula: an apostrophe goes before text that starts with one of <c>= + - @</c>, a tab or a
/// carriage return, and is taken off again where a table is read. Common practice, no source.
/// </summary>
/// <remarks>Text that has such apostrophes already gets one more, so that what is read is what was written.</remarks>
internal static class FormulaGuard
{
    private const char Mark = '\'';

    internal static string On(string text) => IsFormula(text) ? Mark + text : text;

    internal static string Off(string cell) => cell.StartsWith(Mark) && IsFormula(cell) ? cell[1..] : cell;

    private static bool IsFormula(string text) => text.AsSpan().TrimStart(Mark) is ['=' or '+' or '-' or '@' or '\t' or '\r', ..];
}
