namespace Terminus.Demo;

/// <summary>What the console returns to its caller.</summary>
internal static class ExitCode
{
    internal const int Fine = 0;

    /// <summary>The data had problems; what could be done was done.</summary>
    internal const int DataProblems = 1;

    /// <summary>The command was used wrongly; nothing was done.</summary>
    internal const int Usage = 2;

    /// <summary>Somebody interrupted the run, as shells have it; the answers so far are whole.</summary>
    internal const int Interrupted = 130;
}
