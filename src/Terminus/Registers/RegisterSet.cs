namespace Terminus;

/// <summary>The registers of all offices and rights. Immutable; each register is read when it is first asked for.</summary>
public sealed class RegisterSet
{
    private readonly Dictionary<(string Office, string Right), Lazy<Register>> registers;

    private RegisterSet(Dictionary<(string Office, string Right), Lazy<Register>> registers) => this.registers = registers;

    /// <summary>The registers that come with the library.</summary>
    public static RegisterSet BuiltIn { get; } = new(RegisterFiles.Names().ToDictionary(
        n => n,
        n => new Lazy<Register>(() => RegisterFiles.Read(n.Office, n.Right))));

    /// <summary>The codes of the offices that have a register, in alphabetical order.</summary>
    public IReadOnlyList<string> Offices
        => ValueList.Of(registers.Keys.Select(k => k.Office).Distinct().OrderBy(o => o, StringComparer.Ordinal));

    /// <summary>The rights of an office that have a register, in alphabetical order; empty for an office that has none.</summary>
    /// <param name="office">The office as a code of WIPO standard ST.3.</param>
    public IReadOnlyList<string> Rights(string office)
    {
        string code = OfficeCode(Guard.NotNull(office, nameof(office)));
        return ValueList.Of(registers.Keys.Where(k => k.Office == code).Select(k => k.Right).OrderBy(r => r, StringComparer.Ordinal));
    }

    /// <summary>A set that has <paramref name="register"/> too, in place of one of the same office and right.</summary>
    /// <param name="register">The register to add.</param>
    public RegisterSet With(Register register)
    {
        Guard.NotNull(register, nameof(register));
        return new RegisterSet(new Dictionary<(string Office, string Right), Lazy<Register>>(registers)
        {
            [(register.Office, register.Right)] = new Lazy<Register>(() => register),
        });
    }

    /// <summary>The register of an office and right, or null where there is none.</summary>
    /// <param name="office">The office as a code of WIPO standard ST.3, in any case; <c>UK</c> is taken for <c>GB</c>.</param>
    /// <param name="right">The right, in any case.</param>
    public Register? Find(string office, string right)
        => registers.TryGetValue(
            (OfficeCode(Guard.NotNull(office, nameof(office))), RightName(Guard.NotNull(right, nameof(right)))), out Lazy<Register>? found)
            ? found.Value
            : null;

    /// <summary>Reads a number as people type it. What cannot be read or does not exist is an outcome with a reason.</summary>
    /// <param name="office">The office as a code of WIPO standard ST.3, such as <c>US</c>, <c>GB</c> or <c>DE</c>.</param>
    /// <param name="right">The right, such as <c>utility</c>, <c>design</c>, <c>patent</c> or <c>registered-design</c>.</param>
    /// <param name="number">
    /// The number: <c>2,474,442</c>; <c>2,4?4,1?2</c> with lost digits; <c>*898</c> or <c>…898</c> with lost leading digits;
    /// <c>10811/97</c> or <c>10811 of 1897</c> where an office counted anew each year.
    /// </param>
    public NumberReading Read(string office, string right, string number)
    {
        Guard.NotNull(number, nameof(number));
        return Find(office, right)?.Read(number) ?? Unknown(OfficeCode(office), RightName(right), number);
    }

    /// <summary>
    /// The numbers that can belong to a window of dates, one range for each series of the office that has any; empty where there are
    /// none or there is no such register.
    /// </summary>
    /// <param name="office">The office as a code of WIPO standard ST.3.</param>
    /// <param name="right">The right.</param>
    /// <param name="dates">The window of dates.</param>
    public IReadOnlyList<NumberRange> Numbers(string office, string right, DateWindow dates)
        => Find(office, right)?.Numbers(dates) ?? ValueList<NumberRange>.Empty;

    internal static string OfficeCode(string office)
    {
        string code = office.Trim().ToUpperInvariant();
        return code == "UK" ? "GB" : code;
    }

    internal static string RightName(string right) => right.Trim().ToLowerInvariant();

    private NumberReading Unknown(string office, string right, string number)
        => new(office, right, number, NumberOutcome.UnknownRegister)
        {
            Reasons =
            [
                Rights(office).Count == 0
                    ? new Reason("registers.unknown-office", "office", office, "known", string.Join(", ", Offices))
                    : new Reason("registers.unknown-right", "office", office, "right", right, "known", string.Join(", ", Rights(office))),
            ],
        };
}
