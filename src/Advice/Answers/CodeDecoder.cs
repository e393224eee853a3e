using Advice.Documents.Understood;
using Advice.Intake;
using Advice.Knowledge;
using Advice.Knowledge.Codes;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Knowledge.Words;
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
    public DecodedCode Decode(StoredCode stored, Case @case)
    {
        var code = stored.Code;
        var audience = @case.Workshop.Reader;
        List<CodeFamily> families = [.. catalogue.FamiliesOf(code)];
        var scope = Scope(families);
        var known = catalogue.Codes.GetValueOrDefault(code);
        return new DecodedCode(
            code,
            families.Find(family => family.Starts.Length == 1)?.Name.For(audience) ?? code[..1],
            scope,
            scope == CodeScope.Standard ? families.Find(family => family.Starts.Length >= Family)?.Name.For(audience) : null,
            known is not null,
            known?.Meaning.For(audience),
            known is null ? [] : [.. Causes(code, @case.Vehicle, audience)],
            Caveat(families, audience),
            FailureType(stored, audience));
    }

    /// <summary>What the code means; of one that the rules do not know, that only the maker can say, or what it is about.</summary>
    public string Meaning(string code, Audience audience)
    {
        if (catalogue.Codes.GetValueOrDefault(code) is { } known)
            return known.Meaning.For(audience);
        List<CodeFamily> families = [.. catalogue.FamiliesOf(code)];
        if (Scope(families) != CodeScope.Standard && Caveat(families, audience) is { } caveat)
            return caveat;
        var about = families.Find(family => family.Starts.Length >= Family) ?? families.LastOrDefault();
        return string.Join(": ", new[] { about?.Name.For(audience), catalogue.Say(audience, Sentences.CodeNotKnown) }.OfType<string>());
    }

    /// <summary>What the failure type byte says; null where there is none.</summary>
    public CodeFailureType? FailureType(StoredCode stored, Audience audience) => stored.FailureType is not { } type ? null
        : new CodeFailureType(type, catalogue.FailureTypes.FirstOrDefault(known => type.StartsWith(known.Starts, StringComparison.Ordinal))?.Name.For(audience));

    private static CodeScope Scope(List<CodeFamily> families) => families.Find(family => family.Scope is not null)?.Scope ?? CodeScope.Standard;

    private static string? Caveat(List<CodeFamily> families, Audience audience) => families.Find(family => family.Caveat is not null)?.Caveat?.For(audience);

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
