namespace Terminus;

/// <summary>
/// The frame that the timelines share: a picture as wide as its place, with time as shares of the width and text in fixed sizes, so that it reads on a
/// phone as on a desk.
/// </summary>
internal sealed class Picture
{
    private const int LongestLabel = 46;
    private const int AxisHeight = 26;
    private const int BarGap = 2;

    private readonly Markup rows = new();
    private readonly TimeScale scale;

    internal Picture(TimeScale scale) => this.scale = scale;

    /// <summary>How far down the next row starts, in pixels.</summary>
    internal double Top { get; private set; } = AxisHeight + 6;

    internal void Space(double height) => Top += height;

    /// <summary>A line of text; one too long for a narrow place is cut, and stands whole in the tooltip.</summary>
    internal void Label(string label, string? style = null, string? tooltip = null)
    {
        Top += 17;
        rows.Open("text", "x", "0", "y", Markup.Number(Top), "class", style);
        if (tooltip is not null || label.Length > LongestLabel)
        {
            rows.Element("title", tooltip ?? label);
        }

        rows.Text(Cut(label)).Close().Line();
        Top += 6;
    }

    /// <summary>A bar over a window; an end that goes on has an arrow.</summary>
    internal void Bar(DateWindow window, string style, double height, string tooltip)
    {
        double start = scale.Start(window);
        double width = Math.Max(0.004, scale.End(window) - start);
        rows.Open("g").Element("title", tooltip);
        Rectangle(style, start, width, Top, height);
        rows.Close();
        Arrow(window, Top + (height / 2));
        rows.Line();
        Top += height + BarGap;
    }

    /// <summary>A line over a window with an upright at each end that is known: what is possible.</summary>
    internal void Bracket(DateWindow window, string tooltip)
    {
        const double half = 5;
        double y = Top + half;
        rows.Open("g").Element("title", tooltip);
        Line("possible", scale.Start(window), scale.End(window), y, y);
        foreach ((int day, double at) in new[] { (window.FirstDay, scale.Start(window)), (window.LastDay, scale.End(window)) })
        {
            if (day != DayNumber.Open)
            {
                Line("possible", at, at, y - half, y + half);
            }
        }

        rows.Close();
        Arrow(window, y);
        rows.Line();
        Top += (2 * half) + BarGap;
    }

    /// <summary>The spread as steps whose areas are the masses.</summary>
    internal void Spread(Spread spread, double height)
    {
        List<(double Start, double Width, double Density)> steps = [];
        foreach (SpreadCell cell in spread.Cells.Where(c => c.Mass > 0))
        {
            double start = scale.Start(cell.Window);
            double width = scale.End(cell.Window) - start;
            if (width > 0)
            {
                steps.Add((start, width, cell.Mass / cell.Window.Days!.Value));
            }
        }

        double most = steps.Count == 0 ? 0 : steps.Max(s => s.Density);
        foreach ((double start, double width, double density) in steps)
        {
            double tall = Math.Max(0.5, height * density / most);
            Rectangle("spread", start, width, Top + height - tall, tall);
        }

        Line("axis", 0, 1, Top + height, Top + height);
        rows.Line();
        Top += height + 4;
    }

    /// <summary>A cross and a word where something disagrees.</summary>
    internal void Warning(string words)
    {
        Top += 15;
        string y = Markup.Number(Top - 9);
        string bottom = Markup.Number(Top - 1);
        rows.Leaf("line", "class", "against", "x1", "1", "x2", "9", "y1", y, "y2", bottom)
            .Leaf("line", "class", "against", "x1", "9", "x2", "1", "y1", y, "y2", bottom)
            .Open("text", "x", "15", "y", Markup.Number(Top), "class", "warn").Element("title", words).Text(Cut(words)).Close().Line();
        Top += 5;
    }

    /// <summary>The whole picture.</summary>
    /// <param name="title">Its short name.</param>
    /// <param name="description">What it shows, in words.</param>
    /// <param name="legend">The styles of the bars and what they stand for.</param>
    internal string ToSvg(string title, string description, params (string Style, string Words)[] legend)
    {
        AddLegend(legend);
        string height = Markup.Number(Math.Ceiling(Top));
        var svg = new Markup();
        svg.Open(
                "svg", "xmlns", "http://www.w3.org/2000/svg", "class", "terminus", "role", "img", "aria-label", title, "width", "100%", "height", height)
            .Element("title", title).Element("desc", description)
            .Element("style", PictureStyle.Colours + PictureStyle.Shapes).Line();
        svg.Open("defs")
            .Open(
                "pattern", "id", "terminus-hatch",
                "width", "6", "height", "6", "patternUnits", "userSpaceOnUse", "patternTransform", "rotate(45)")
            .Leaf("line", "class", "hatch", "x1", "1", "x2", "1", "y1", "0", "y2", "6").Close().Close().Line();
        svg.Leaf("rect", "class", "paper", "width", "100%", "height", height).Line();
        foreach ((int year, double at) in scale.Ticks())
        {
            string x = Markup.Percent(at);
            string anchor = at < 0.06 ? "start" : at > 0.94 ? "end" : "middle";
            svg.Leaf("line", "class", "grid", "x1", x, "x2", x, "y1", Markup.Number(AxisHeight - 4), "y2", height)
                .Element("text", DateText.Digits(year), "class", "quiet", "x", x, "y", "14", "text-anchor", anchor);
        }

        svg.Leaf("line", "class", "axis", "x1", "0", "x2", "100%", "y1", Markup.Number(AxisHeight - 4), "y2", Markup.Number(AxisHeight - 4)).Line();
        return svg.Raw(rows.ToString()).Close().Line().ToString();
    }

    private void Rectangle(string style, double start, double width, double top, double height)
        => rows.Leaf(
            "rect", "class", style,
            "x", Markup.Percent(start), "y", Markup.Number(top), "width", Markup.Percent(width), "height", Markup.Number(height));

    private void Line(string style, double from, double to, double top, double bottom)
        => rows.Leaf(
            "line", "class", style,
            "x1", Markup.Percent(from), "x2", Markup.Percent(to), "y1", Markup.Number(top), "y2", Markup.Number(bottom));

    private void AddLegend((string Style, string Words)[] legend)
    {
        const int letter = 7;
        int x = 1;
        Top += 10;
        foreach ((string style, string words) in legend)
        {
            rows.Leaf("rect", "class", style, "x", DateText.Digits(x), "y", Markup.Number(Top), "width", "22", "height", "9")
                .Element("text", words, "class", "quiet", "x", DateText.Digits(x + 28), "y", Markup.Number(Top + 9));
            x += 44 + (letter * words.Length);
        }

        rows.Line();
        Top += 18;
    }

    // An arrowhead in a nested frame, so that it keeps its shape while its place is a share of the width.
    private void Arrow(DateWindow window, double y)
    {
        if (window.FirstDay == DayNumber.Open)
        {
            Arrowhead("0", "M8 1 L2 6 L8 11", y);
        }

        if (window.LastDay == DayNumber.Open)
        {
            Arrowhead("100%", "M-8 1 L-2 6 L-8 11", y);
        }
    }

    private void Arrowhead(string x, string path, double y)
        => rows.Open("svg", "x", x, "y", Markup.Number(y - 6), "width", "10", "height", "12", "overflow", "visible", "aria-hidden", "true")
            .Leaf("path", "class", "halo", "d", path).Leaf("path", "class", "arrow", "d", path).Close();

    private static string Cut(string label)
    {
        if (label.Length <= LongestLabel)
        {
            return label;
        }

        int end = LongestLabel - 1;
        return label.Substring(0, char.IsHighSurrogate(label[end - 1]) ? end - 1 : end).TrimEnd() + "…";
    }
}
