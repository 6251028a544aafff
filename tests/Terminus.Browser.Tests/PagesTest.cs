using Microsoft.Playwright;

namespace Terminus.Browser.Tests;

/// <summary>The pages and pictures as a browser shows them, on a phone and on a desk, in light and in dark.</summary>
public sealed class PagesTest(Chromium chromium) : IClassFixture<Chromium>
{
    private const int Phone = 390;
    private const int Desk = 1280;

    public static TheoryData<string, int, ColorScheme> Views
    {
        get
        {
            var views = new TheoryData<string, int, ColorScheme>();
            foreach (string name in new[] { "piece.html", "disputed.html", "inventory.html", "piece.svg", "inventory.svg" })
            {
                foreach (int width in new[] { Phone, Desk })
                {
                    views.Add(name, width, ColorScheme.Light);
                    views.Add(name, width, ColorScheme.Dark);
                }
            }

            return views;
        }
    }

    [Theory]
    [MemberData(nameof(Views))]
    public async Task Open_AnyView_RendersWithoutComplaintOrRequestAndFitsItsWidth(string name, int width, ColorScheme scheme)
    {
        await using OpenPage open = await chromium.OpenAsync(name, Document(name), width, scheme);
        await open.KeepAsync($"{name.Replace('.', '-')}-{width}-{scheme}");
        Assert.Empty(open.Complaints);
        Assert.Empty(open.Fetched);
        Assert.InRange(await open.Page.EvaluateAsync<int>("document.documentElement.scrollWidth"), 1, width);
    }

    [Theory]
    [InlineData("piece.html")]
    [InlineData("inventory.html")]
    public async Task Open_AnyPage_HasAHeadingAndNamesForItsPictureAndButtons(string name)
    {
        await using OpenPage open = await chromium.OpenAsync(name, Document(name), Desk);
        Assert.Equal(1, await open.Page.GetByRole(AriaRole.Heading, new() { Level = 1 }).CountAsync());
        ILocator picture = open.Page.GetByRole(AriaRole.Img);
        Assert.Equal(1, await picture.CountAsync());
        Assert.StartsWith("Timeline of", await picture.GetAttributeAsync("aria-label"), StringComparison.Ordinal);
        foreach (ILocator button in await open.Page.GetByRole(AriaRole.Button).AllAsync())
        {
            Assert.NotEmpty((await button.InnerTextAsync()).Trim());
        }
    }

    [Theory]
    [InlineData(Phone)]
    [InlineData(Desk)]
    public async Task Table_AHeadingPressed_SortsUpThenDown(int width)
    {
        await using OpenPage open = await chromium.OpenAsync("inventory.html", Document("inventory.html"), width);
        ILocator head = open.Page.GetByRole(AriaRole.Columnheader, new() { Name = "Very likely" });
        ILocator button = head.GetByRole(AriaRole.Button);
        await button.ClickAsync();
        Assert.Equal("ascending", await head.GetAttributeAsync("aria-sort"));
        double[] up = await KeysAsync(open.Page);
        Assert.Equal(up.Order(), up);
        await button.PressAsync("Enter");
        Assert.Equal("descending", await head.GetAttributeAsync("aria-sort"));
        Assert.Equal(up.Reverse(), await KeysAsync(open.Page));
        Assert.Equal(1, await open.Page.Locator("th[aria-sort]").CountAsync());
        Assert.Contains("descending", await open.Page.GetByRole(AriaRole.Status).InnerTextAsync(), StringComparison.Ordinal);
        Assert.Empty(open.Complaints);
    }

    [Fact]
    public async Task Table_EveryRow_OpensItsStatement()
    {
        await using OpenPage open = await chromium.OpenAsync("inventory.html", Document("inventory.html"), Phone);
        ILocator row = open.Page.Locator("tbody tr").First;
        await row.Locator("summary").ClickAsync();
        Assert.True(await row.GetByText(Statement.Of(DemoPieces.All[0])).IsVisibleAsync());
    }

    [Fact]
    public async Task Page_WhatWasNotDated_StandsUnderItsHeading()
    {
        await using OpenPage open = await chromium.OpenAsync("inventory.html", Document("inventory.html"), Phone);
        Assert.Equal(1, await open.Page.GetByRole(AriaRole.Heading, new() { Name = "Not dated" }).CountAsync());
        Assert.True(await open.Page.GetByRole(AriaRole.Listitem).GetByText("bad <line>").IsVisibleAsync());
    }

    private static async Task<double[]> KeysAsync(IPage page)
        => await page.EvaluateAsync<double[]>(
            "Array.from(document.querySelectorAll('tbody tr')).map(r => r.cells[1].dataset.key).filter(k => k !== '').map(Number)");

    private static string Document(string name) => name switch
    {
        "piece.html" => HtmlPage.Of(DemoPieces.One),
        "disputed.html" => HtmlPage.Of(DemoPieces.Disputed),
        "inventory.html" => HtmlPage.Of(DemoPieces.All, ["This is not JSON from here on: found \"b\". bad <line>"]),
        "piece.svg" => Timeline.ToSvg(DemoPieces.One),
        _ => Timeline.ToSvg(DemoPieces.All),
    };
}
