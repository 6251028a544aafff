using System.Globalization;
using System.Text;

namespace Terminus;

/// <summary>
/// A small writer of elements for SVG and HTML that are also well-formed XML: it escapes what it is given, closes what it opened, and holds numbers
/// to the invariant culture.
/// </summary>
internal sealed class Markup
{
    private readonly StringBuilder text = new();
    private readonly Stack<string> open = new();
    private bool inTag;

    /// <summary>Opens an element, with attributes given as name, value, name, value; an attribute without a value is left out.</summary>
    internal Markup Open(string name, params string?[] attributes)
    {
        CloseTag();
        text.Append('<').Append(name);
        for (int i = 0; i + 1 < attributes.Length; i += 2)
        {
            if (attributes[i + 1] is { } value)
            {
                text.Append(' ').Append(attributes[i]).Append("=\"");
                Escape(value);
                text.Append('"');
            }
        }

        open.Push(name);
        inTag = true;
        return this;
    }

    /// <summary>Closes the innermost element, with an end tag.</summary>
    internal Markup Close()
    {
        CloseTag();
        text.Append("</").Append(open.Pop()).Append('>');
        return this;
    }

    /// <summary>An element without content, as SVG shapes and the void elements of HTML are.</summary>
    internal Markup Leaf(string name, params string?[] attributes)
    {
        Open(name, attributes);
        open.Pop();
        inTag = false;
        text.Append("/>");
        return this;
    }

    /// <summary>An element that holds a text.</summary>
    internal Markup Element(string name, string content, params string?[] attributes) => Open(name, attributes).Text(content).Close();

    /// <summary>A text.</summary>
    internal Markup Text(string content)
    {
        CloseTag();
        Escape(content);
        return this;
    }

    /// <summary>A line break, for people who read the source.</summary>
    internal Markup Line()
    {
        CloseTag();
        text.Append('\n');
        return this;
    }

    /// <summary>Markup of this library's own that is written as it is.</summary>
    internal Markup Raw(string markup)
    {
        CloseTag();
        text.Append(markup);
        return this;
    }

    /// <summary>A number with at most three decimals.</summary>
    internal static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>A share of 1 as a percentage of the width.</summary>
    internal static string Percent(double share) => Number(share * 100) + "%";

    public override string ToString() => text.ToString();

    private void CloseTag()
    {
        if (inTag)
        {
            text.Append('>');
            inTag = false;
        }
    }

    // What XML cannot hold (most control characters, lone surrogates, two non-characters) becomes the replacement character.
    private void Escape(string content)
    {
        for (int i = 0; i < content.Length; i++)
        {
            char c = content[i];
            if (char.IsHighSurrogate(c) && i + 1 < content.Length && char.IsLowSurrogate(content[i + 1]))
            {
                text.Append(c).Append(content[++i]);
                continue;
            }

            _ = c switch
            {
                '&' => text.Append("&amp;"),
                '<' => text.Append("&lt;"),
                '>' => text.Append("&gt;"),
                '"' => text.Append("&quot;"),
                '\'' => text.Append("&#39;"),
                '\t' or '\n' or '\r' => text.Append(' '),
                _ => text.Append(char.IsControl(c) || char.IsSurrogate(c) || c >= '\ufffe' ? '\ufffd' : c),
            };
        }
    }
}
