namespace Terminus.Demo;

/// <summary>The command was used wrongly in a way that only its own code sees.</summary>
internal sealed class UsageException(string message) : Exception(message);
