using System.Text.Json.Serialization;

namespace Terminus.Benchmarks.Inventories;

/// <summary>A ready result, which the platform's serializer writes as the same bytes.</summary>
internal sealed record FloorResult
{
    public required int Format { get; init; }

    public required string Id { get; init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Title { get; init; }

    public required string AsOf { get; init; }

    public required FloorLayer[] Reference { get; init; }

    public required string Assumptions { get; init; }

    public required FloorEnds? Possible { get; init; }

    public required FloorInterval? Interval { get; init; }

    public required FloorInterval? Likely { get; init; }

    public required double Conflict { get; init; }

    public required bool Qualified { get; init; }

    public required FloorDisagreement[] Disagreements { get; init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public FloorReading[]? Readings { get; init; }

    public required FloorPart[] Parts { get; init; }

    public required FloorAge OverHundredYears { get; init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public FloorStated? Stated { get; init; }

    public required string Statement { get; init; }

    public required FloorEvidence[] Evidence { get; init; }

    public required FloorProblem[] Problems { get; init; }
}

internal sealed record FloorLayer(string Name, string Version);

internal sealed record FloorEnds(string? NotBefore, string? NotAfter);

internal sealed record FloorInterval(
    double Confidence, string? NotBefore, string? NotAfter, int? EarliestYear, int LatestYear, string? Edtf, double Belief, double Plausibility, bool InsidePossible);

internal sealed record FloorDisagreement(int First, int? Second, double Mass, string Level, string[] Parts, string Cause, string Why);

internal sealed record FloorReading(string? NotBefore, string? NotAfter, double? Weight, int[] Items, int[] SetAside);

internal sealed record FloorPart
{
    public required string Part { get; init; }

    public required bool Original { get; init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Why { get; init; }

    public required FloorEnds? Possible { get; init; }

    public required FloorInterval? Interval { get; init; }

    public required FloorInterval? Likely { get; init; }

    public required double Conflict { get; init; }
}

internal sealed record FloorAge(string Answer, double Belief, double Plausibility);

internal sealed record FloorStated
{
    public required string Edtf { get; init; }

    public required string Verdict { get; init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public int? By { get; init; }

    public required string Why { get; init; }
}

internal sealed record FloorEvidence(string Kind, string? Part, FloorStatedWindow[] Windows, string[] Entries, FloorReason[] Reasons, string? Source);

internal sealed record FloorStatedWindow(string? NotBefore, string? NotAfter, double Confidence);

internal sealed record FloorReason(string Rule, string Text);

internal sealed record FloorProblem(string Path, string Message);
