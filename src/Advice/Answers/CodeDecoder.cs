using Advice.Documents;
using Advice.Knowledge;
using Advice.Suspects;
using Advice.Vehicles;

namespace Advice.Answers;

/// <summary>Takes trouble codes apart: by their first characters, and by the rules where the code is known.</summary>
internal sealed class CodeDecoder(Catalogue catalogue)
{
    private const int MostCauses = 5;
    private const int Family = 3;

    private readonly PriorOnVehicle _priors = new(catalogue);

    /// <summary>What the code says, of faults that the vehicle can have.</summary>
    public DecodedCode Decode(string code, Case @case)
    {
        var audience = @case.Workshop.Reader;
        var families = catalogue.CodeFamilies.Where(family => code.StartsWith(family.Starts, StringComparison.Ordinal)).ToList();
        var scope = families.Find(family => family.Scope is not null)?.Scope ?? CodeScope.Standard;
        var known = catalogue.Codes.GetValueOrDefault(code);
        return new DecodedCode(
            code,
            families.Find(family => family.Starts.Length == 1)?.Name.For(audience) ?? code[..1],
            scope,
            scope == CodeScope.Standard ? families.Find(family => family.Starts.Length >= Family)?.Name.For(audience) : null,
            known is not null,
            known?.Meaning.For(audience),
            known is null ? [] : [.. Causes(code, @case.Vehicle, audience)],
            families.Find(family => family.Caveat is not null)?.Caveat?.For(audience));
    }

    /// <summary>The code, or else what it implies: the code of one cylinder implies its misfire.</summary>
    private IEnumerable<Sign> Signs(Sign code) => catalogue.ShowsBySign[code].Any()
        ? [code]
        : catalogue.Rules.Values.OfType<ImpliesRule>().Where(rule => rule.Sign == code).Select(rule => rule.Implied).Order(Comparer<Sign>.Create((a, b) => string.CompareOrdinal(a.Id, b.Id)));

    private IEnumerable<CodeCause> Causes(string code, Vehicle vehicle, Audience audience)
    {
        var sign = Sign.Code(code);
        var causes = Signs(sign).SelectMany(one => catalogue.ShowsBySign[one]).GroupBy(rule => rule.Fault)
            .Select(rules => (Fault: catalogue.Faults[rules.Key], Often: rules.Max(rule => rule.Often * rule.When.Share(vehicle)) * _priors.Of(catalogue.Faults[rules.Key], vehicle, [])))
            .Where(cause => cause.Often > 0).ToList();
        var all = catalogue.Leaks[sign] + causes.Sum(cause => cause.Often);
        return causes.OrderByDescending(cause => cause.Often).ThenBy(cause => cause.Fault.Id, StringComparer.Ordinal).Take(MostCauses)
            .Select(cause => new CodeCause(cause.Fault.Id, cause.Fault.Name.For(audience), Math.Round(cause.Often / all, 2)));
    }
}
