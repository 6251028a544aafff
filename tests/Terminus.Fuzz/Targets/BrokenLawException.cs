namespace Terminus.Fuzz.Targets;

/// <summary>Something that must hold of every input does not hold of this one.</summary>
internal sealed class BrokenLawException(string law) : Exception(law);
