using System.Numerics;

namespace Terminus.Tests;

/// <summary>An exact fraction, for oracles.</summary>
internal readonly struct Rational : IEquatable<Rational>, IComparable<Rational>
{
    private readonly BigInteger denominator;

    internal Rational(BigInteger numerator, BigInteger denominator)
    {
        BigInteger divisor = BigInteger.GreatestCommonDivisor(numerator, denominator) * (denominator.Sign < 0 ? -1 : 1);
        Numerator = numerator / divisor;
        this.denominator = denominator / divisor;
    }

    internal BigInteger Numerator { get; }

    internal BigInteger Denominator => denominator.IsZero ? BigInteger.One : denominator;

    internal static Rational Zero => new(0, 1);

    internal static Rational One => new(1, 1);

    /// <summary>Reads <c>3/4</c>, <c>12</c> or a decimal as written.</summary>
    internal static Rational Parse(string text)
    {
        string[] parts = text.Split('/');
        return parts.Length == 2
            ? new Rational(BigInteger.Parse(parts[0], null), BigInteger.Parse(parts[1], null))
            : new Rational(BigInteger.Parse(parts[0], null), 1);
    }

    internal double ToDouble() => Math.Exp(BigInteger.Log(BigInteger.Abs(Numerator)) - BigInteger.Log(Denominator)) is var magnitude
        && Numerator.IsZero ? 0 : Numerator.Sign * (Small() ? (double)Numerator / (double)Denominator : magnitude);

    private bool Small() => Numerator.GetBitLength() < 1000 && Denominator.GetBitLength() < 1000;

    public static Rational operator +(Rational a, Rational b)
        => new((a.Numerator * b.Denominator) + (b.Numerator * a.Denominator), a.Denominator * b.Denominator);

    public static Rational operator -(Rational a, Rational b)
        => new((a.Numerator * b.Denominator) - (b.Numerator * a.Denominator), a.Denominator * b.Denominator);

    public static Rational operator *(Rational a, Rational b) => new(a.Numerator * b.Numerator, a.Denominator * b.Denominator);

    public static Rational operator /(Rational a, Rational b) => new(a.Numerator * b.Denominator, a.Denominator * b.Numerator);

    public static bool operator >=(Rational a, Rational b) => a.CompareTo(b) >= 0;

    public static bool operator <=(Rational a, Rational b) => a.CompareTo(b) <= 0;

    public int CompareTo(Rational other) => (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator);

    public bool Equals(Rational other) => CompareTo(other) == 0;

    public override bool Equals(object? obj) => obj is Rational other && Equals(other);

    public override int GetHashCode() => HashCode.Combine(Numerator, Denominator);

    public override string ToString() => Numerator + "/" + Denominator;
}
