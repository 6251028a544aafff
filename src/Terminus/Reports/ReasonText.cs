using System.Text;

namespace Terminus;

/// <summary>Puts reasons into English: one template for each rule id.</summary>
/// <remarks>
/// The ids are stable and the parameters are data; the words are not, and may be improved in any version. A translation needs
/// nothing but its own table of templates.
/// </remarks>
public static partial class ReasonText
{
    // One table a folder, each in its own file beside this one (ReasonText.Registers.cs and so on).
    private static readonly Dictionary<string, string> Templates = All();

    /// <summary>The reason as an English sentence. A rule without a template is shown as its id and parameters.</summary>
    /// <param name="reason">The reason.</param>
    public static string Of(Reason reason)
    {
        Guard.NotNull(reason, nameof(reason));
        return Templates.TryGetValue(reason.Rule, out string? template) ? Fill(template, reason) : reason.ToString();
    }

    /// <summary>The rule ids that have a template, in alphabetical order.</summary>
    internal static IEnumerable<string> Rules => Templates.Keys.OrderBy(k => k, StringComparer.Ordinal);

    /// <summary>The template of a rule, with its parameters in braces.</summary>
    internal static string TemplateOf(string rule) => Templates[rule];

    private static Dictionary<string, string> All()
    {
        var all = new Dictionary<string, string>(StringComparer.Ordinal);
        AddEvidence(all);
        AddPieces(all);
        AddStatement(all);
        AddWording(all);
        AddSightings(all);
        AddRegisters(all);
        AddMarks(all);
        AddAdvice(all);
        AddReference(all);
        return all;
    }

    /// <summary>
    /// Replaces each <c>{name}</c> of the template by the parameter of that name; a sentence that starts with one gets a capital.
    /// </summary>
    private static string Fill(string template, Reason reason)
    {
        var text = new StringBuilder(template.Length + 32);
        int position = 0;
        while (position < template.Length)
        {
            int open = template.IndexOf('{', position);
            int close = open < 0 ? -1 : template.IndexOf('}', open);
            if (close < 0)
            {
                break;
            }

            text.Append(template, position, open - position);
            text.Append(InWords(reason[template.Substring(open + 1, close - open - 1)]));
            position = close + 1;
        }

        text.Append(template, position, template.Length - position);
        if (template.Length > 0 && template[template.Length - 1] == '.')
        {
            text[0] = char.ToUpperInvariant(text[0]);
        }

        return text.ToString();
    }

    /// <summary>A parameter that is a day in ISO form as words, such as <c>17 April 1894</c>; any other as it is.</summary>
    private static string? InWords(string? value)
        => value is { Length: 10 } && value[4] == '-' && value[7] == '-'
            && EdtfDate.TryParse(value, out EdtfDate? date) && date?.Window is { Days: 1 } day
            ? DateText.Words(day.FirstDay)
            : value;
}
