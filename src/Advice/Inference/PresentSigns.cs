namespace Advice.Inference;

/// <summary>The present signs that the sweep explains, as a dense table, with everything that touches only one of them folded into its leak.</summary>
internal sealed class PresentSigns
{
    private readonly double[][] _strengths;

    public PresentSigns(IReadOnlyList<MergedSign> signs, double[] priors)
    {
        Count = signs.Count;
        _strengths = [.. signs.Select(sign => Dense(sign, priors.Length))];
        Leaks = [.. signs.Select(sign => sign.Leak)];
        Silences = [.. signs.Select(sign => 1 - sign.Leak)];
        var coupling = new List<int>();
        for (var cause = 0; cause < priors.Length; cause++)
        {
            if (priors[cause] == 0)
                continue;
            switch (Touched(cause, out var sign))
            {
                case 0:
                    break;
                case 1:
                    Fold(sign, priors[cause] * _strengths[sign][cause]);
                    break;
                default:
                    coupling.Add(cause);
                    break;
            }
        }

        CouplingCauses = coupling;
    }

    public int Count { get; }

    /// <summary>P(the sign shows by its leak or by a cause of its own).</summary>
    public double[] Leaks { get; }

    /// <summary>1 − <see cref="Leaks"/>, kept as a product because the difference loses digits near 1.</summary>
    public double[] Silences { get; }

    /// <summary>Causes that touch two or more of the signs, by index.</summary>
    public IReadOnlyList<int> CouplingCauses { get; }

    public double Strength(int sign, int cause) => _strengths[sign][cause];

    /// <summary>How many of the signs the cause can produce, and one of them.</summary>
    public int Touched(int cause, out int last)
    {
        last = -1;
        var count = 0;
        for (var sign = 0; sign < Count; sign++)
        {
            if (_strengths[sign][cause] == 0)
                continue;
            last = sign;
            count++;
        }

        return count;
    }

    private void Fold(int sign, double activation)
    {
        Leaks[sign] += Silences[sign] * activation;
        Silences[sign] *= 1 - activation;
    }

    private static double[] Dense(MergedSign sign, int causes)
    {
        var strengths = new double[causes];
        foreach (var link in sign.Links)
            strengths[link.Cause] = link.Strength;
        return strengths;
    }
}
