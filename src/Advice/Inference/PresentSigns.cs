namespace Advice.Inference;

/// <summary>
/// The present signs that the sweep explains, as a dense table.
/// A cause that touches only one of them couples nothing and is folded into the leak of that one.
/// </summary>
internal sealed class PresentSigns
{
    private readonly double[][] _strengths;

    public PresentSigns(IReadOnlyList<MergedSign> signs, double[] priors)
    {
        Count = signs.Count;
        _strengths = [.. signs.Select(sign => Dense(sign, priors.Length))];
        Leaks = [.. signs.Select(sign => sign.Leak)];
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
                    Leaks[sign] += (1 - Leaks[sign]) * priors[cause] * _strengths[sign][cause];
                    break;
                default:
                    coupling.Add(cause);
                    break;
            }
        }

        CouplingCauses = coupling;
    }

    public int Count { get; }

    /// <summary>P(the sign shows by its leak or by a cause that touches no other), 0 … 1.</summary>
    public double[] Leaks { get; }

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

    private static double[] Dense(MergedSign sign, int causes)
    {
        var strengths = new double[causes];
        foreach (var link in sign.Links)
            strengths[link.Cause] = link.Strength;
        return strengths;
    }
}
