using Microsoft.Playwright;

namespace Terminus.Browser.Tests;

/// <summary>A document open in the browser, with what the browser complained of and what it fetched.</summary>
internal sealed class OpenPage : IAsyncDisposable
{
    private readonly string file;

    private OpenPage(IPage page, string file)
    {
        Page = page;
        this.file = file;
    }

    internal IPage Page { get; }

    /// <summary>Messages of the console and errors of the script.</summary>
    internal List<string> Complaints { get; } = [];

    /// <summary>Everything fetched but the document itself.</summary>
    internal List<string> Fetched { get; } = [];

    internal static async Task<OpenPage> LoadAsync(IPage page, string name, string document)
    {
        string file = Path.Combine(Path.GetTempPath(), Guid.NewGuid().ToString("N") + Path.GetExtension(name));
        await File.WriteAllTextAsync(file, document);
        var open = new OpenPage(page, file);
        page.Console += (_, message) => open.Complaints.Add(message.Type + ": " + message.Text);
        page.PageError += (_, error) => open.Complaints.Add(error);
        page.Request += (_, request) =>
        {
            if (request.Url != new Uri(file).AbsoluteUri && !request.Url.StartsWith("data:", StringComparison.Ordinal))
            {
                open.Fetched.Add(request.Url);
            }
        };
        await page.GotoAsync(new Uri(file).AbsoluteUri);
        return open;
    }

    /// <summary>A picture of a whole HTML page, kept where SCREENSHOTS names a folder, for people to look at.</summary>
    internal async Task KeepAsync(string name)
    {
        if (Environment.GetEnvironmentVariable("SCREENSHOTS") is { Length: > 0 } folder && file.EndsWith(".html", StringComparison.Ordinal))
        {
            await Page.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(folder, name + ".png"), FullPage = true });
        }
    }

    public async ValueTask DisposeAsync()
    {
        await Page.CloseAsync();
        File.Delete(file);
    }
}
