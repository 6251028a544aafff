using System.Globalization;
using DuckDB.NET.Data;
using NodaTime;

namespace Terminus.Benchmarks.Database;

/// <summary>The rows in a table of an embedded column store, and the query that a data person would write.</summary>
internal sealed class WindowTable : IDisposable
{
    private const string Query =
        """
        CREATE OR REPLACE TABLE common AS
        SELECT piece, max(not_before) AS not_before, min(not_after) AS not_after FROM windows GROUP BY piece
        """;

    private readonly DuckDBConnection connection = new("DataSource=:memory:");

    internal WindowTable(FirmWindows windows)
    {
        connection.Open();
        Execute("CREATE TABLE windows (piece INTEGER, not_before DATE, not_after DATE)");
        using DuckDBAppender appender = connection.CreateAppender("windows");
        foreach ((int piece, DateWindow window) in windows.Rows)
        {
            appender.CreateRow().AppendValue(piece).AppendValue(window.NotBefore?.ToDateOnly()).AppendValue(window.NotAfter?.ToDateOnly()).EndRow();
        }
    }

    /// <summary>The version of the database.</summary>
    internal string Version => connection.ServerVersion;

    /// <summary>Asks for the common window of every piece, kept in a table.</summary>
    internal void Intersect(int threads)
    {
        Execute("SET threads = " + threads.ToString(CultureInfo.InvariantCulture));
        Execute(Query);
    }

    /// <summary>The answers of the last query by piece; null where a window ends before it starts.</summary>
    internal DateWindow?[] Answers(int pieces)
    {
        var answers = new DateWindow?[pieces];
        using DuckDBCommand command = connection.CreateCommand();
        command.CommandText = "SELECT piece, not_before, not_after FROM common";
        using DuckDBDataReader reader = command.ExecuteReader();
        while (reader.Read())
        {
            LocalDate? notBefore = reader.IsDBNull(1) ? null : LocalDate.FromDateOnly(reader.GetFieldValue<DateOnly>(1));
            LocalDate? notAfter = reader.IsDBNull(2) ? null : LocalDate.FromDateOnly(reader.GetFieldValue<DateOnly>(2));
            answers[reader.GetInt32(0)] = notBefore > notAfter ? null : DateWindow.Between(notBefore, notAfter);
        }

        return answers;
    }

    public void Dispose() => connection.Dispose();

    private void Execute(string sql)
    {
        using DuckDBCommand command = connection.CreateCommand();
#pragma warning disable CA2100 // The text is this file's own.
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }
}
