namespace Terminus;

/// <summary>Reads a file of house defaults: an object whose members replace the numbers of the same name, and only those.</summary>
internal static class AssumptionsReader
{
    private static readonly MemberNames Names = new(
        "a set of house defaults", ["format", "!name", "!version", .. AssumedNumber.All.Select(n => n.Name)]);

    internal static DocumentResult<Assumptions> Read(ReadOnlySpan<byte> utf8, string? fileName)
    {
        var reader = new DocumentReader(utf8, fileName);
        Assumptions assumptions = Assumptions.House;
        bool isObject = reader.OpenObject(Names);
        while (isObject && reader.NextMember(out string member))
        {
            assumptions = ReadMember(ref reader, member, assumptions);
        }

        return new DocumentResult<Assumptions>(isObject ? assumptions : null, reader.Finish());
    }

    private static Assumptions ReadMember(ref DocumentReader reader, string member, Assumptions assumptions)
    {
        switch (member)
        {
            case "format":
                reader.ReadFormat();
                return assumptions;
            case "name":
                return assumptions with { Name = reader.ReadName("a name") ?? assumptions.Name };
            case "version":
                return assumptions with { Version = reader.ReadName("a version") ?? assumptions.Version };
            default:
                AssumedNumber number = AssumedNumber.Find(member)!;
                double? value = number.Kind switch
                {
                    AssumedNumber.NumberKind.Confidence => reader.ReadConfidence(),
                    AssumedNumber.NumberKind.Year => reader.ReadInteger(-9998, 9999, "a year from -9998 to 9999"),
                    _ => reader.ReadInteger(0, 1000, "a number of years from 0 to 1000"),
                };
                return value is { } replacing ? number.In(assumptions, replacing) : assumptions;
        }
    }
}
