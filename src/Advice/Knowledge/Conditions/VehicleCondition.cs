using Advice.Vehicles;

namespace Advice.Knowledge.Conditions;

/// <summary>A conjunction of tests on the vehicle; empty = every vehicle.</summary>
public sealed record VehicleCondition(IReadOnlyList<FactTest> Tests)
{
    private const double LikelyShare = 0.5;

    /// <summary>The condition that every vehicle meets.</summary>
    public static VehicleCondition Always { get; } = new([]);

    /// <summary>Whether the vehicle meets it: no as soon as one test fails, unknown while one is open.</summary>
    public Truth Test(Vehicle vehicle)
    {
        var result = Truth.Yes;
        for (var i = 0; i < Tests.Count; i++)
        {
            var one = Tests[i].Test(vehicle);
            if (one == Truth.No)
                return Truth.No;
            if (one == Truth.Unknown)
                result = Truth.Unknown;
        }

        return result;
    }

    /// <summary>Probability that the vehicle meets it: the product of the shares of the open tests, 0 once one fails.</summary>
    public double Share(Vehicle vehicle)
    {
        var share = 1.0;
        for (var i = 0; i < Tests.Count; i++)
            share *= Tests[i].ShareOn(vehicle);
        return share;
    }

    /// <summary>Whether what is said of these vehicles may be said of this one although not all is known: it meets the condition at
    /// least as probably as not.</summary>
    public bool IsLikely(Vehicle vehicle) => Share(vehicle) >= LikelyShare;
}
