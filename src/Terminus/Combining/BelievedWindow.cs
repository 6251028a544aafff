namespace Terminus;

/// <summary>A window of comparing numbers that was found, with its lower probability.</summary>
/// <param name="Low">The first day, the least integer where it is open.</param>
/// <param name="High">The last day.</param>
/// <param name="Belief">The lower probability, from 0 to 1.</param>
internal readonly record struct BelievedWindow(int Low, int High, double Belief);
