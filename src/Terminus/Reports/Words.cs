using System.Collections.Concurrent;
using System.Text;

namespace Terminus;

/// <summary>Names of values as documents write them.</summary>
internal static class Words
{
    /// <summary><c>CannotTell</c> as <c>cannot-tell</c>.</summary>
    internal static string Kebab(string name) => Separate(name, '-');

    /// <summary>A value's name as <c>cannot-tell</c>.</summary>
    internal static string Kebab<T>(T value)
        where T : struct, Enum
        => Cut<T>.Kebab.GetOrAdd(value, static v => Separate(v.ToString(), '-'));

    /// <summary>A value's name as <c>cannot tell</c>.</summary>
    internal static string Spaced<T>(T value)
        where T : struct, Enum
        => Cut<T>.Spaced.GetOrAdd(value, static v => Separate(v.ToString(), ' '));

    private static string Separate(string name, char separator)
    {
        var text = new StringBuilder(name.Length + 4);
        for (int i = 0; i < name.Length; i++)
        {
            if (char.IsUpper(name[i]) && i > 0)
            {
                text.Append(separator);
            }

            text.Append(char.ToLowerInvariant(name[i]));
        }

        return text.ToString();
    }

    // The few names of an enum, each cut once.
    private static class Cut<T>
        where T : struct, Enum
    {
        internal static readonly ConcurrentDictionary<T, string> Kebab = new();

        internal static readonly ConcurrentDictionary<T, string> Spaced = new();
    }
}
