using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Terminus;

/// <summary>Checks of what a caller passed in. A failure is the caller's mistake, so it throws and carries the value.</summary>
internal static class Guard
{
    /// <summary>Returns <paramref name="value"/>, which must not be null.</summary>
    internal static T NotNull<T>([NotNull] T? value, string name)
        where T : class
        => value ?? throw new ArgumentNullException(name);

    /// <summary>Returns a list, in which nothing may be null.</summary>
    internal static ValueList<T> NoNulls<T>(ValueList<T> values, string name)
        where T : class
    {
        for (int i = 0; i < values.Count; i++)
        {
            if (values[i] is null)
            {
                throw new ArgumentException("The item at index " + i.ToString(CultureInfo.InvariantCulture) + " is null.", name);
            }
        }

        return values;
    }

    /// <summary>Returns a confidence, which must lie in [0, 1].</summary>
    internal static double Confidence(double value, string name)
        => value is >= 0 and <= 1
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "A confidence lies from 0 (says nothing) to 1 (certain).");

    /// <summary>Returns a level that an interval must reach, which must lie in (0, 1].</summary>
    internal static double Level(double value, string name)
        => value is > 0 and <= 1
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "A level lies above 0 and at most at 1.");

    /// <summary>Returns a number of years, which must lie in [0, 1000]; null stays null.</summary>
    internal static int? Years(int? value, string name)
        => value is null or (>= 0 and <= 1000)
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "A number of years lies from 0 to 1000.");

    /// <summary>Returns a number of years, which must lie in [0, 1000].</summary>
    internal static int Span(int value, string name) => Years(value, name)!.Value;

    /// <summary>Returns a year of the ISO calendar, which must lie in [-9998, 9999].</summary>
    internal static int Year(int value, string name)
        => value is >= -9998 and <= 9999
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "A year lies from -9998 to 9999.");

    /// <summary>Refuses an enum value that is none of its names.</summary>
    internal static void Named<T>(bool isNamed, T value, string name)
        where T : struct, Enum
    {
        if (!isNamed)
        {
            throw new ArgumentOutOfRangeException(name, value, "The value is none of the names of its enum.");
        }
    }
}
