using System.Text;

namespace Terminus;

/// <summary>The members that one kind of object may have, and which of them it must have. At most 64.</summary>
internal sealed class MemberNames
{
    private readonly string[] names;
    private readonly byte[][] utf8;

    /// <param name="what">What the object is, with its article: "a piece".</param>
    /// <param name="members">The allowed names in the order in which they are shown; a leading <c>!</c> marks a required one.</param>
    internal MemberNames(string what, params string[] members)
    {
        What = what;
        names = new string[members.Length];
        utf8 = new byte[members.Length][];
        for (int i = 0; i < members.Length; i++)
        {
            bool required = members[i][0] == '!';
            names[i] = required ? members[i].Substring(1) : members[i];
            utf8[i] = Encoding.UTF8.GetBytes(names[i]);
            Required |= required ? 1UL << i : 0;
        }
    }

    internal string What { get; }

    /// <summary>One bit for each required member.</summary>
    internal ulong Required { get; }

    internal IReadOnlyList<string> Names => names;

    internal int Count => names.Length;

    internal string this[int index] => names[index];

    internal ReadOnlySpan<byte> Utf8(int index) => utf8[index];
}
