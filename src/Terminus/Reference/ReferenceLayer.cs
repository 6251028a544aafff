namespace Terminus;

/// <summary>One layer of a reference set, as every result names it.</summary>
public sealed record ReferenceLayer
{
    /// <summary>Names a layer.</summary>
    /// <param name="name">The name of the file.</param>
    /// <param name="version">The version of its content.</param>
    public ReferenceLayer(string name, string version)
    {
        Name = Guard.NotNull(name, nameof(name));
        Version = Guard.NotNull(version, nameof(version));
    }

    /// <summary>The name of the file.</summary>
    public string Name { get; }

    /// <summary>The version of its content.</summary>
    public string Version { get; }

    /// <summary>Such as <c>built-in 1.0.0</c>.</summary>
    public override string ToString() => Name + " " + Version;
}
