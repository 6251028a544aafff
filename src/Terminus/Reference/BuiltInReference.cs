namespace Terminus;

/// <summary>The reference that comes with the library: documents embedded under <c>reference/</c>, read as one layer.</summary>
internal static class BuiltInReference
{
    internal const string Name = "built-in";

    internal const string Version = "1.1.0";

    private const string Folder = "reference/";

    private static readonly Lazy<ReferenceSet> LazySet = new(() => ReferenceSet.Empty.With(Load()));

    /// <summary>The built-in reference as the lowest layer.</summary>
    internal static ReferenceSet Set => LazySet.Value;

    /// <summary>All documents as one file.</summary>
    internal static ReferenceFile Load() => Join([.. Documents().Select(d => ReferenceFile.Read(d.Utf8, d.Name).OrThrow())]);

    /// <summary>The documents, in the order of their names.</summary>
    internal static IEnumerable<(string Name, byte[] Utf8)> Documents()
    {
        System.Reflection.Assembly assembly = typeof(BuiltInReference).Assembly;
        foreach (string name in assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith(Folder, StringComparison.Ordinal))
            .OrderBy(n => n, StringComparer.Ordinal))
        {
            using Stream stream = assembly.GetManifestResourceStream(name)!;
            using var copy = new MemoryStream();
            stream.CopyTo(copy);
            yield return (name, copy.ToArray());
        }
    }

    private static ReferenceFile Join(IReadOnlyList<ReferenceFile> files) => new(
        Name,
        Version,
        files.SelectMany(f => f.Features),
        files.SelectMany(f => f.Questions),
        files.SelectMany(f => f.Patents),
        files.SelectMany(f => f.Makers),
        files.SelectMany(f => f.Adverts),
        files.SelectMany(f => f.Marks));
}
