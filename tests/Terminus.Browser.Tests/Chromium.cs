using Microsoft.Playwright;

namespace Terminus.Browser.Tests;

/// <summary>One headless Chromium for all tests: that of the system, or the one that CHROMIUM names.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private IPlaywright? playwright;
    private IBrowser? browser;

    public async Task InitializeAsync()
    {
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = Environment.GetEnvironmentVariable("CHROMIUM") ?? "/usr/bin/chromium",
            Args = ["--no-sandbox"],
        });
    }

    public async Task DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.CloseAsync();
        }

        playwright?.Dispose();
    }

    /// <summary>Opens a document in a window of its own, in light or in dark.</summary>
    internal async Task<OpenPage> OpenAsync(string name, string document, int width, ColorScheme scheme = ColorScheme.Light)
    {
        IPage page = await browser!.NewPageAsync(new BrowserNewPageOptions { ViewportSize = new ViewportSize { Width = width, Height = 900 }, ColorScheme = scheme });
        return await OpenPage.LoadAsync(page, name, document);
    }
}
