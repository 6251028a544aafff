namespace Terminus.Demo.Commands;

/// <summary>With no command: dates the bundled inventory of invented pieces, prints it as a table and explains one piece.</summary>
internal static class DemoCommand
{
    private const string Explained = "QH-014";

    internal static int Run(DemoConsole console)
    {
        var settings = new DatingSettings
        {
            AsOf = DatingOptions.Today(),
            IsToday = true,
            Confidence = PieceDating.UsualConfidence,
            Reference = ReferenceSet.BuiltIn.With(ReferenceFile.Read(Resource("reference.json"), "reference.json").OrThrow()),
        };
        List<PieceDating> dated =
        [
            .. Piece.ReadAll(Resource("inventory.json"), "inventory.json").Select(read => settings.DateAndReport(read, console)).OfType<PieceDating>(),
        ];
        console.WriteLine("The Quarry House collection: invented pieces with invented makers, marks and patents.");
        console.WriteLine("");
        console.WriteLine(InventoryTable.Of(dated));
        console.WriteLine("Not before rests on firm evidence. Very likely and likely are the shortest times with that confidence, a");
        console.WriteLine("lower bound: most of such pieces were made then, not all. YES marks evidence that contradicts itself.");
        console.WriteLine("");
        console.WriteLine(Explanation.Of(dated.First(d => d.Piece.Id == Explained), steps: true));
        console.WriteLine("A piece of your own: terminus-demo date FILE. The rest: terminus-demo --help.");
        return ExitCode.Fine;
    }

    private static byte[] Resource(string name)
    {
        using Stream stream = typeof(DemoCommand).Assembly.GetManifestResourceStream("demo/" + name)!;
        using var memory = new MemoryStream();
        stream.CopyTo(memory);
        return memory.ToArray();
    }
}
