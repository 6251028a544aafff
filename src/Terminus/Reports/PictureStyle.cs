namespace Terminus;

/// <summary>The colours and line styles of the pictures and pages, for light and for dark.</summary>
/// <remarks>
/// No meaning hangs on colour alone: firm windows are filled, usual ones are hatched, what is left out is dashed, and a disagreement has a cross and a
/// word. Text stands out from its ground by at least 4.5:1 and shapes by at least 3:1 (WCAG 2.2, 1.4.3 and 1.4.11); a test computes both.
/// </remarks>
internal static class PictureStyle
{
    /// <summary>The colours as custom properties, in light and in dark.</summary>
    internal const string Colours =
        ":root,svg.terminus{--ground:#fbfaf7;--ink:#22252b;--quiet:#565c66;--line:#7c828c;--firm:#23527c;--usual:#7a5a12;--against:#a3262a}"
        + "@media (prefers-color-scheme:dark){"
        + ":root,svg.terminus{--ground:#17191d;--ink:#eceae4;--quiet:#b3b7bf;--line:#8a909a;--firm:#8fbbe4;--usual:#d9b45b;--against:#ff9a94}}";

    /// <summary>The classes of the shapes.</summary>
    internal const string Shapes =
        "svg.terminus{background:var(--ground);font-family:ui-sans-serif,system-ui,'Segoe UI',Roboto,sans-serif;font-size:13px}"
        + "svg.terminus .paper{fill:var(--ground)}"
        + "svg.terminus text{fill:var(--ink)}"
        + "svg.terminus .head{font-weight:600}"
        + "svg.terminus .quiet{fill:var(--quiet);font-size:12px}"
        + "svg.terminus .axis{stroke:var(--line);stroke-width:1}"
        + "svg.terminus .grid{stroke:var(--line);stroke-width:1;stroke-dasharray:1 5}"
        + "svg.terminus .firm{fill:var(--firm);stroke:var(--firm);stroke-width:1}"
        + "svg.terminus .usual{fill:url(#terminus-hatch);stroke:var(--usual);stroke-width:1}"
        + "svg.terminus .hatch{stroke:var(--usual);stroke-width:2}"
        + "svg.terminus .out{fill:none;stroke:var(--line);stroke-width:1;stroke-dasharray:4 3}"
        + "svg.terminus .possible{stroke:var(--ink);stroke-width:2}"
        + "svg.terminus .arrow{stroke:var(--ink);stroke-width:2;fill:none}"
        + "svg.terminus .halo{stroke:var(--ground);stroke-width:5;fill:none}"
        + "svg.terminus .spread{fill:var(--line)}"
        + "svg.terminus .against{stroke:var(--against);stroke-width:2.5;fill:none}"
        + "svg.terminus .warn{fill:var(--against);font-weight:600;font-size:12px}";
}
