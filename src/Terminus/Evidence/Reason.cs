namespace Terminus;

/// <summary>
/// One statement of why, as data: the id of a rule and its parameters. The id is stable, so that a program can translate it;
/// the reports of this library put it into English.
/// </summary>
/// <remarks>Two reasons are equal when their rule and their parameters are.</remarks>
public sealed record Reason
{
    /// <summary>States a rule with its parameters, given as name, value, name, value.</summary>
    /// <param name="rule">The id of the rule, such as <c>registers.year-span</c>: folder, point, lower-case words with hyphens.</param>
    /// <param name="parameters">Names and values in turn. A value is plain text: dates in ISO form, numbers in plain digits.</param>
    /// <exception cref="ArgumentException">The names and values do not come in pairs.</exception>
    public Reason(string rule, params string[] parameters)
    {
        Rule = Guard.NotNull(rule, nameof(rule));
        Guard.NotNull(parameters, nameof(parameters));
        if (parameters.Length % 2 != 0)
        {
            throw new ArgumentException("The parameters of a reason are names and values in turn.", nameof(parameters));
        }

        var pairs = new KeyValuePair<string, string>[parameters.Length / 2];
        for (int i = 0; i < pairs.Length; i++)
        {
            pairs[i] = new KeyValuePair<string, string>(parameters[2 * i], parameters[(2 * i) + 1]);
        }

        Parameters = ValueList<KeyValuePair<string, string>>.Owning(pairs);
    }

    /// <summary>The stable id of the rule.</summary>
    public string Rule { get; }

    /// <summary>The parameters in the order of the rule, which may be none.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> Parameters { get; }

    /// <summary>The value of a parameter, or null where the reason has none of that name.</summary>
    /// <param name="name">The name of the parameter.</param>
    public string? this[string name]
    {
        get
        {
            foreach (KeyValuePair<string, string> pair in Parameters)
            {
                if (string.Equals(pair.Key, name, StringComparison.Ordinal))
                {
                    return pair.Value;
                }
            }

            return null;
        }
    }

    /// <inheritdoc/>
    public bool Equals(Reason? other)
    {
        if (ReferenceEquals(this, other))
        {
            return true;
        }

        if (other is null || !string.Equals(Rule, other.Rule, StringComparison.Ordinal) || Parameters.Count != other.Parameters.Count)
        {
            return false;
        }

        for (int i = 0; i < Parameters.Count; i++)
        {
            (KeyValuePair<string, string> one, KeyValuePair<string, string> two) = (Parameters[i], other.Parameters[i]);
            if (!string.Equals(one.Key, two.Key, StringComparison.Ordinal) || !string.Equals(one.Value, two.Value, StringComparison.Ordinal))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>A hash of the rule and the values. That of a pair as such is of its name alone, so all reasons of a rule would share it.</summary>
    public override int GetHashCode()
    {
        int hash = StringComparer.Ordinal.GetHashCode(Rule);
        for (int i = 0; i < Parameters.Count; i++)
        {
            hash = unchecked((hash * 31) + StringComparer.Ordinal.GetHashCode(Parameters[i].Value ?? ""));
        }

        return hash;
    }

    /// <summary>The rule and its parameters, such as <c>registers.year-span(year=1880)</c>; for words see <see cref="ReasonText"/>.</summary>
    public override string ToString()
        => Rule + "(" + string.Join(", ", Parameters.Select(p => p.Key + "=" + p.Value)) + ")";
}
