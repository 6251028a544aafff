using System.Text;

namespace Terminus;

/// <summary>Names of values as documents write them.</summary>
internal static class Words
{
    /// <summary><c>CannotTell</c> as <c>cannot-tell</c>.</summary>
    internal static string Kebab(string name) => Separate(name, '-');

    /// <summary><c>CannotTell</c> as <c>cannot tell</c>.</summary>
    internal static string Spaced(string name) => Separate(name, ' ');

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
}
