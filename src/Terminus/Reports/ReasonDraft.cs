namespace Terminus;

/// <summary>
/// A reason in the making, used again for the next: its rule, and its parameters as characters in one buffer. What becomes of it is up to whoever
/// made the draft: a <see cref="Reason"/> for a program, or English straight into a result. So each reason is composed in one place.
/// </summary>
/// <param name="taken">Is given each reason when it is complete, and keeps nothing of the draft itself.</param>
internal sealed class ReasonDraft(Action<ReasonDraft> taken)
{
    private readonly TextBuffer values = new();
    private readonly List<Parameter> parameters = [];

    /// <summary>The id of the rule.</summary>
    internal string Rule { get; private set; } = "";

    /// <summary>The value of a parameter; nothing where there is none of that name.</summary>
    internal ReadOnlySpan<char> this[string name]
    {
        get
        {
            for (int i = 0; i < parameters.Count; i++)
            {
                if (string.Equals(parameters[i].Name, name, StringComparison.Ordinal))
                {
                    return ValueAt(i);
                }
            }

            return default;
        }
    }

    /// <summary>The reasons that are drafted.</summary>
    internal static List<Reason> List(Action<ReasonDraft> draft)
    {
        var reasons = new List<Reason>();
        draft(new ReasonDraft(complete => reasons.Add(complete.ToReason())));
        return reasons;
    }

    /// <summary>Begins a reason.</summary>
    internal ReasonDraft Begin(string rule)
    {
        Rule = rule;
        values.Clear();
        parameters.Clear();
        return this;
    }

    /// <summary>Begins a parameter: what is added to the buffer from here is its value.</summary>
    internal TextBuffer Value(string name)
    {
        parameters.Add(new Parameter(name, values.Length));
        return values;
    }

    /// <summary>Adds a parameter with its value.</summary>
    internal ReasonDraft With(string name, string? value)
    {
        Value(name).Add(value);
        return this;
    }

    /// <summary>Gives the reason away.</summary>
    internal void End() => taken(this);

    /// <summary>Gives away a reason that was made before.</summary>
    internal void Give(Reason reason)
    {
        Begin(reason.Rule);
        for (int i = 0; i < reason.Parameters.Count; i++)
        {
            With(reason.Parameters[i].Key, reason.Parameters[i].Value);
        }

        End();
    }

    /// <summary>The rule and its parameters, as <see cref="Reason"/> shows them.</summary>
    public override string ToString() => ToReason().ToString();

    private Reason ToReason()
    {
        string[] pairs = new string[2 * parameters.Count];
        for (int i = 0; i < parameters.Count; i++)
        {
            (pairs[2 * i], pairs[(2 * i) + 1]) = (parameters[i].Name, ValueAt(i).ToString());
        }

        return new Reason(Rule, pairs);
    }

    private ReadOnlySpan<char> ValueAt(int index)
    {
        int end = index + 1 < parameters.Count ? parameters[index + 1].Start : values.Length;
        return values.Span.Slice(parameters[index].Start, end - parameters[index].Start);
    }

    private readonly struct Parameter(string name, int start)
    {
        internal string Name { get; } = name;

        internal int Start { get; } = start;
    }
}
