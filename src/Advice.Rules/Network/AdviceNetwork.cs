using NRules;
using NRules.Fluent;

namespace Advice.Rules.Network;

/// <summary>The compiled network: fixed, the same for every rule set, shared by all sessions.</summary>
internal static class AdviceNetwork
{
    private static readonly Lazy<ISessionFactory> Factory = new(Compile);

    public static ISession Open() => Factory.Value.CreateSession();

    private static ISessionFactory Compile()
    {
        var repository = new RuleRepository();
        repository.Load(rules => rules.PrivateTypes().From(
            typeof(SignImpliesSign), typeof(SignSpeaksForFaults), typeof(ReportMayBeNormal),
            typeof(VehicleIsProne), typeof(CaseCallsForCautions), typeof(CaseLimitsDriving)));
        return repository.Compile();
    }
}
