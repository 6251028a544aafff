namespace Terminus;

/// <summary>What the pages share: head, style, heading and foot.</summary>
internal static class PageFrame
{
    private const string Style =
        "*{box-sizing:border-box}"
        + "body{margin:0;background:var(--ground);color:var(--ink);font:16px/1.5 Charter,'Bitstream Charter',Cambria,Georgia,serif}"
        + "main{max-width:62rem;margin:0 auto;padding:1.25rem 1rem 3rem}"
        + "h1{font-size:1.5rem;line-height:1.25;margin:.25rem 0 .5rem;font-weight:600}"
        + "h2{font-size:1.1rem;margin:2rem 0 .5rem;padding-top:.5rem;border-top:1px solid var(--line);font-weight:600}"
        + "h3{font-size:1rem;margin:1.25rem 0 .25rem;font-weight:600}"
        + "p{margin:.5rem 0;max-width:44rem}"
        + ".id,.quiet,footer{color:var(--quiet);font-size:.875rem}"
        + ".say{font-size:1.1rem}"
        + "dl{display:grid;grid-template-columns:max-content 1fr;gap:.25rem 1rem;margin:.5rem 0}"
        + "dt{color:var(--quiet)}dd{margin:0;overflow-wrap:anywhere}"
        + "ol,ul{padding-left:1.4rem;max-width:46rem}li{margin:.35rem 0;overflow-wrap:anywhere}"
        + ".plain{list-style:none;padding:0;margin:.1rem 0}.plain li{margin:0;font-size:.875rem;color:var(--quiet)}"
        + "table{border-collapse:collapse;width:100%;font:14px/1.4 ui-sans-serif,system-ui,'Segoe UI',Roboto,sans-serif}"
        + "caption{text-align:left;color:var(--quiet);padding:.25rem 0}"
        + "th,td{text-align:left;vertical-align:top;padding:.45rem .6rem .45rem 0;border-bottom:1px solid var(--line);overflow-wrap:break-word}"
        + "th button{font:inherit;font-weight:600;color:inherit;background:none;border:0;padding:.25rem 0;min-height:24px}"
        + "th button{cursor:pointer;text-align:left}"
        + "button:focus-visible,summary:focus-visible{outline:2px solid var(--firm);outline-offset:2px}"
        + "th button::after{content:' \\2195';color:var(--quiet)}"
        + "th[aria-sort=ascending] button::after{content:' \\2191';color:inherit}"
        + "th[aria-sort=descending] button::after{content:' \\2193';color:inherit}"
        + "summary{cursor:pointer;color:var(--quiet)}"
        + ".no{color:var(--against);font-weight:600}"
        + "@media (max-width:34rem){th,td{padding-right:.4rem}table{font-size:13px}.wide{display:none}"
        + "dl{grid-template-columns:1fr;gap:0}dd{margin-bottom:.4rem}}"
        + "@media print{th button::after{content:''}}";

    // Nothing may be fetched; what is inside may run.
    private const string Policy = "default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline'; img-src data:";

    /// <summary>A page with a title, what fills it, and perhaps a script.</summary>
    internal static string Of(string title, Action<Markup> fill, string? script = null)
    {
        var page = new Markup();
        page.Raw("<!DOCTYPE html>\n").Open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en").Line()
            .Open("head").Leaf("meta", "charset", "utf-8")
            .Leaf("meta", "http-equiv", "Content-Security-Policy", "content", Policy)
            .Leaf("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
            .Leaf("meta", "name", "color-scheme", "content", "light dark")
            .Leaf("link", "rel", "icon", "href", "data:,")
            .Element("title", title)
            .Open("style").Raw(PictureStyle.Colours + Style).Close().Close().Line()
            .Open("body").Open("main").Line();
        fill(page);
        page.Close().Line();
        if (script is not null)
        {
            page.Open("script").Raw(script).Close().Line();
        }

        return page.Close().Close().Line().ToString();
    }

    /// <summary>The day, the reference and the house defaults behind the answers.</summary>
    internal static void AddFoot(Markup page, PieceDating dating)
        => page.Element("footer", Statement.Behind(dating)).Line();

    /// <summary>A heading with a list of sentences; nothing where there are none.</summary>
    internal static void AddList(Markup page, string heading, IEnumerable<string> sentences)
    {
        List<string> all = [.. sentences];
        if (all.Count == 0)
        {
            return;
        }

        page.Element("h2", heading).Open("ul");
        foreach (string sentence in all)
        {
            page.Element("li", sentence).Line();
        }

        page.Close().Line();
    }
}
