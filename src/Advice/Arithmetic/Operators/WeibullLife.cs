using MathNet.Numerics;

namespace Advice.Arithmetic.Operators;

/// <summary>
/// The life of a part as a Weibull distribution, by the largest likelihood of the lives at failure and of those that still run:
/// Σ tᵝ ln t / Σ tᵝ − 1/β = mean of ln t at failure, η = (Σ tᵝ / failures)^(1/β) (NIST/SEMATECH e-Handbook, 8.4.1.3).
/// </summary>
/// <param name="Shape">β; above 1 the part wears out.</param>
/// <param name="Scale">η, the life that 63.2 % do not reach.</param>
public sealed record WeibullLife(double Shape, double Scale)
{
    private const double LeastShape = 0.1;
    private const double MostShape = 50;

    /// <summary>Mean life.</summary>
    public double Mean => Scale * SpecialFunctions.Gamma(1 + (1 / Shape));

    /// <summary>Its standard deviation.</summary>
    public double Deviation => Scale * Math.Sqrt(SpecialFunctions.Gamma(1 + (2 / Shape)) - Math.Pow(SpecialFunctions.Gamma(1 + (1 / Shape)), 2));

    /// <summary>The fit; null where the lives lie so close together or so far apart that none is sensible.</summary>
    /// <param name="failed">Lives at failure, at least one.</param>
    /// <param name="running">Lives so far of what still runs.</param>
    public static WeibullLife? Of(IReadOnlyList<double> failed, IReadOnlyList<double> running)
    {
        var longest = failed.Concat(running).Max();
        var all = failed.Concat(running).Select(life => life / longest).ToList();
        var meanLog = failed.Average(life => Math.Log(life / longest));
        if (Excess(LeastShape) > 0 || Excess(MostShape) < 0)
            return null;
        var (low, high) = (LeastShape, MostShape);
        while (high - low > 1e-12 * high)
        {
            var middle = (low + high) / 2;
            (low, high) = Excess(middle) < 0 ? (middle, high) : (low, middle);
        }

        return new WeibullLife(low, longest * Math.Pow(all.Sum(life => Math.Pow(life, low)) / failed.Count, 1 / low));

        double Excess(double shape) =>
            (all.Sum(life => Math.Pow(life, shape) * Math.Log(life)) / all.Sum(life => Math.Pow(life, shape))) - (1 / shape) - meanLog;
    }

    /// <summary>The share that reaches an age.</summary>
    public double Surviving(double age) => Math.Exp(-Math.Pow(age / Scale, Shape));

    /// <summary>Of those that reached an age, the share that runs so much further.</summary>
    public double SurvivingFurther(double age, double further)
    {
        var (now, then) = (Math.Pow(age / Scale, Shape), Math.Pow((age + further) / Scale, Shape));
        return now == then ? further > 0 && double.IsInfinity(now) ? 0 : 1 : Math.Exp(now - then);
    }

    /// <summary>The age by which a share has failed.</summary>
    public double FailedBy(double share) => Scale * Math.Pow(-Math.Log(1 - share), 1 / Shape);
}
