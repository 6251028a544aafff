namespace Terminus;

/// <summary>A number and the week in which it issued, counted from 4 January 1848.</summary>
internal readonly struct Knot(int number, int week)
{
    internal int Number { get; } = number;

    internal int Week { get; } = week;
}
