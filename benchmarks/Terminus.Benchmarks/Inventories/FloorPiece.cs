using System.Text.Json.Serialization;

namespace Terminus.Benchmarks.Inventories;

/// <summary>A piece as the platform's serializer reads it, strictly: the members of the document, with dates left as text.</summary>
internal sealed record FloorPiece
{
    public int? Format { get; init; }

    public required string Id { get; init; }

    public string? Title { get; init; }

    public string? Object { get; init; }

    public string? Stated { get; init; }

    public IReadOnlyList<FloorEntry>? Parts { get; init; }

    public IReadOnlyList<FloorEntry>? Marks { get; init; }

    public IReadOnlyList<FloorEntry>? Features { get; init; }

    public IReadOnlyList<FloorEntry>? Subjects { get; init; }

    public IReadOnlyList<FloorEntry>? Inscriptions { get; init; }

    public IReadOnlyList<FloorEntry>? Records { get; init; }

    public IReadOnlyList<FloorEntry>? Makers { get; init; }

    public IReadOnlyList<FloorEntry>? Adverts { get; init; }

    public IReadOnlyList<FloorOpinion>? Opinions { get; init; }
}

/// <summary>An entry of any of the lists, with the members of all of them.</summary>
internal sealed record FloorEntry
{
    public string? Part { get; init; }

    public bool? Original { get; init; }

    public string? Why { get; init; }

    public string? Text { get; init; }

    public string? Patent { get; init; }

    public string? Feature { get; init; }

    public bool? Absent { get; init; }

    public string? Subject { get; init; }

    public string? Date { get; init; }

    public string? Of { get; init; }

    public string? What { get; init; }

    public bool? New { get; init; }

    public string? Maker { get; init; }

    public string? Form { get; init; }

    public string? Address { get; init; }

    public string? Model { get; init; }
}

internal sealed record FloorOpinion
{
    public required IReadOnlyList<FloorWindow> Windows { get; init; }

    public string? By { get; init; }

    public IReadOnlyList<string>? RestsOn { get; init; }

    public string? Label { get; init; }

    public string? Part { get; init; }
}

internal sealed record FloorWindow
{
    public string? NotBefore { get; init; }

    public string? NotAfter { get; init; }

    public required double Confidence { get; init; }
}

/// <summary>The strict settings, with generated code.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    AllowDuplicateProperties = false,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(FloorPiece))]
[JsonSerializable(typeof(FloorResult))]
internal sealed partial class FloorContext : JsonSerializerContext;
