using Advice.Knowledge.Conditions;
using Advice.Knowledge.Rules;

namespace Advice.Rules.Checking;

/// <summary>What the 'fits' rules ask of the vehicle for a fault, check or service item to exist.</summary>
internal sealed class Existence(Tables tables)
{
    private readonly ILookup<string, FactTest> _faults = By(tables, rule => rule.Faults);
    private readonly ILookup<string, FactTest> _checks = By(tables, rule => rule.Checks);
    private readonly ILookup<string, FactTest> _services = By(tables, rule => rule.Services);

    /// <summary>Tests of the vehicles that can have a fault.</summary>
    public IEnumerable<FactTest> OfFault(string id) => _faults[id];

    /// <summary>Tests of the vehicles on which a check can be done.</summary>
    public IEnumerable<FactTest> OfCheck(string id) => _checks[id];

    /// <summary>Tests of the vehicles that need a service.</summary>
    public IEnumerable<FactTest> OfService(string id) => _services[id];

    private static ILookup<string, FactTest> By(Tables tables, Func<FitsRule, IEnumerable<string>> named) =>
        tables.Rules.Bound.OfType<FitsRule>().SelectMany(named, (rule, id) => (rule, id))
            .SelectMany(pair => pair.rule.When.Tests, (pair, test) => (pair.id, test)).ToLookup(pair => pair.id, pair => pair.test);
}
