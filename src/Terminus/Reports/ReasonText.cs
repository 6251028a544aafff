namespace Terminus;

/// <summary>Puts reasons into English: one template for each rule id.</summary>
/// <remarks>
/// The ids are stable and the parameters are data; the words are not, and may be improved in any version. A translation needs
/// nothing but its own table of templates.
/// </remarks>
public static partial class ReasonText
{
    // One table a folder, each in its own file beside this one (ReasonText.Registers.cs and so on).
    private static readonly Dictionary<string, ReasonTemplate> Templates
        = All().ToDictionary(t => t.Key, t => new ReasonTemplate(t.Value), StringComparer.Ordinal);

    /// <summary>The reason as an English sentence. A rule without a template is shown as its id and parameters.</summary>
    /// <param name="reason">The reason.</param>
    public static string Of(Reason reason)
    {
        Guard.NotNull(reason, nameof(reason));
        var text = new TextBuffer();
        new ReasonDraft(draft => AddTo(text, draft)).Give(reason);
        return text.ToString();
    }

    /// <summary>Adds a reason as an English sentence, after a space where there are words already.</summary>
    internal static void AddTo(TextBuffer text, ReasonDraft reason)
    {
        if (text.Length > 0)
        {
            text.Add(' ');
        }

        if (Templates.TryGetValue(reason.Rule, out ReasonTemplate? template))
        {
            template.Fill(reason, text);
        }
        else
        {
            text.Add(reason.ToString());
        }
    }

    /// <summary>The rule ids that have a template, in alphabetical order.</summary>
    internal static IEnumerable<string> Rules => Templates.Keys.OrderBy(k => k, StringComparer.Ordinal);

    /// <summary>The template of a rule, with its parameters in braces.</summary>
    internal static string TemplateOf(string rule) => Templates[rule].Text;

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
}
