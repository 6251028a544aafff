namespace Terminus.Demo.Commands;

/// <summary>The answers to a collection as one web page, which is kept in memory and so has a limit.</summary>
internal static class HtmlAnswers
{
    /// <summary>The most lines of a page.</summary>
    internal const int MostPieces = 10_000;

    /// <summary>The page of all answers, and their summary.</summary>
    /// <exception cref="UsageException">There are more answers than a page holds.</exception>
    internal static async Task<(string Page, InventorySummary Summary)> OfAsync(
        IAsyncEnumerable<InventoryResult> results, IProgress<InventorySummary> progress)
    {
        var datings = new List<PieceDating>();
        var notDated = new List<string>();
        var summary = InventorySummary.None;
        await foreach (InventoryResult result in results)
        {
            if (summary.Lines == MostPieces)
            {
                throw new UsageException(FormattableString.Invariant(
                    $"A page holds at most {MostPieces:N0} lines, and this collection has more: split it, or leave out --html."));
            }

            if (result.Dating is { } dating)
            {
                datings.Add(dating);
            }
            else
            {
                notDated.Add(result.Error!.Message + " " + result.Error.Text);
            }

            summary = summary.Plus(InventorySummary.Of(result));
            progress.Report(summary);
        }

        return (HtmlPage.Of(datings, notDated), summary);
    }
}
