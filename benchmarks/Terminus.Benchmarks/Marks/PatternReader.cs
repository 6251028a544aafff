using System.Globalization;
using System.Text.RegularExpressions;

namespace Terminus.Benchmarks.Marks;

/// <summary>One statement that the expressions found: its kind, and its number and date where it has them.</summary>
internal readonly record struct PatternMark(MarkKind Kind, string? Number, string? Date);

/// <summary>
/// Reads an inscription by regular expressions, kind by kind; what an earlier one has claimed, a later one leaves. It gives kinds, numbers and dates,
/// and no windows, reasons, offices or other readings.
/// </summary>
internal sealed class PatternReader((MarkKind Kind, Regex Expression)[] order, Func<string, int>? monthOf = null)
{
    private readonly List<(int Start, int End)> claimed = [];
    private readonly List<PatternMark> marks = [];
    private string text = "";

    /// <summary>The marks of a text, in no order of the text. The list is used again by the next reading.</summary>
    internal IReadOnlyList<PatternMark> Read(string inscription)
    {
        text = inscription;
        marks.Clear();
        claimed.Clear();
        foreach ((MarkKind kind, Regex expression) in order)
        {
            Add(kind, expression);
        }

        return marks;
    }

    private void Add(MarkKind kind, Regex expression)
    {
        // Searching for the place alone makes nothing; the groups are looked at only where there is a match.
        foreach (ValueMatch place in expression.EnumerateMatches(text))
        {
            (int start, int end) = (place.Index, place.Index + place.Length);
            if (claimed.Exists(c => c.Start < end && c.End > start))
            {
                continue;
            }

            claimed.Add((start, end));
            if (kind is MarkKind.PatentWord or MarkKind.TradeMark && IsSaid(kind))
            {
                continue;
            }

            Match match = expression.Match(text, start);
            string? number = PatternValues.Number(match);
            string? date = PatternValues.Date(match, monthOf);
            marks.Add(new PatternMark(kind != MarkKind.PatentWord ? kind : number is not null ? MarkKind.PatentNumber : date is not null ? MarkKind.PatentDate : kind, number, date));
        }
    }

    // The word before a number, a date or a second wording of the same mark says nothing more.
    private bool IsSaid(MarkKind kind) => kind == MarkKind.TradeMark
        ? marks.Exists(m => m.Kind == MarkKind.TradeMark)
        : marks.Exists(m => m.Kind is MarkKind.PatentWord or MarkKind.PatentDate or MarkKind.PatentNumber or MarkKind.DesignNumber or MarkKind.Pending or MarkKind.Other);
}
