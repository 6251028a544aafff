namespace Terminus.Tests;

public class SplitMix64Test
{
    // Steele, Lea and Flood 2014; the widely published vector for seed 1234567 (row RNG-splitmix64 of TestData/sightings).
    [Fact]
    public void Next_Seed1234567_GivesThePublishedVector()
    {
        SplitMix64 random = new(1234567);
        Assert.Equal(
            [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821],
            Enumerable.Range(0, 5).Select(_ => random.Next()));
    }

    [Fact]
    public void NextDouble_Seed1234567_TakesTheTop53Bits()
    {
        SplitMix64 random = new(1234567);
        Assert.Equal(
            [0.3500795420214081, 0.17364409667091263, 0.5322073040624192, 0.24900765738229136, 0.889529490618583],
            Enumerable.Range(0, 5).Select(_ => random.NextDouble()));
    }
}
