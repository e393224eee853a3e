using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Knowledge.Words;

namespace Advice.Counterfactuals;

/// <summary>What rules ask for by which a fault shows itself, held against a case.</summary>
internal sealed class SignConditions(Catalogue catalogue, Advised advised)
{
    private readonly Audience _audience = advised.Case.Workshop.Reader;
    private readonly FactWords _facts = new(catalogue);

    /// <summary>The condition of one rule.</summary>
    public Condition Of(ShowsRule rule)
    {
        var when = rule.Occasions.Count == 0 ? "" : $" ({Occasions(rule.Occasions)})";
        var (status, why) = Standing(rule);
        return new Condition(rule.Id, status, $"{Say(Sentences.ShowsBy, Name(rule.Sign) + when)} {why} {rule.Because.For(_audience)}", [.. Parts(rule)]);
    }

    private (ConditionStatus Status, string Why) Standing(ShowsRule rule)
    {
        var @case = advised.Case;
        if (rule.When.Test(@case.Vehicle) == Truth.No)
            return (ConditionStatus.Failed, Say(Sentences.NotOnThisVehicle));
        if (rule.Without.FirstOrDefault(Reported) is { } ruledOut)
            return (ConditionStatus.Failed, Say(Sentences.NotBeside, catalogue.Symptoms[ruledOut].Name.For(_audience)));
        if (advised.Evidence.Links.FirstOrDefault(link => link.Rule == rule.Id) is { } link)
            return link.Seen.Present ? (ConditionStatus.Held, Say(Sentences.WasReported)) : (ConditionStatus.Failed, Say(Sentences.WasDenied));
        // Without a link: the fault cannot be on this vehicle, or something does not fit.
        var sign = Sign(rule).Status;
        return sign == ConditionStatus.Unknown ? (sign, Say(Sentences.NobodySpoke))
            : sign == ConditionStatus.Failed && !Seen(rule.Sign).Any(one => one.Occasions.Count == 0 || (rule.Occasions.Count > 0 && catalogue.OccasionsFit(one.Occasions, rule.Occasions))) ? (ConditionStatus.Unknown, Say(Sentences.DeniedOtherwise))
            : sign == ConditionStatus.Failed ? (sign, Say(Sentences.WasDenied))
            : rule.Occasions.Count > 0 && Occasion(rule, sign).Status == ConditionStatus.Failed ? (ConditionStatus.Failed, Say(Sentences.ReportedOtherwise))
            : (sign, Say(Sentences.WasReported));
    }

    private IEnumerable<ConditionPart> Parts(ShowsRule rule)
    {
        var sign = Sign(rule);
        yield return sign;
        if (rule.Occasions.Count > 0)
            yield return Occasion(rule, sign.Status);
        foreach (var other in rule.Without)
        {
            var there = Reported(other);
            yield return new ConditionPart(
                ConditionKind.Without, other, there ? ConditionStatus.Failed : ConditionStatus.Held, $"{Say(Sentences.PartNotBeside, catalogue.Symptoms[other].Name.For(_audience))} ({Say(there ? Sentences.PartReported : Sentences.PartNotReported)})");
        }

        foreach (var part in _facts.Parts(rule.When, advised.Case))
            yield return part;
    }

    /// <summary>Whether the sign is there, on whatever occasion.</summary>
    private ConditionPart Sign(ShowsRule rule)
    {
        var there = rule.Sign.Kind == SignKind.Code ? advised.Case.Codes.Contains(rule.Sign.Id) ? true : (bool?)null : Seen(rule.Sign).Select(one => (bool?)one.Present).Max();
        return new ConditionPart(
            rule.Sign.Kind == SignKind.Code ? ConditionKind.Code : ConditionKind.Symptom, rule.Sign.Id,
            there switch { true => ConditionStatus.Held, false => ConditionStatus.Failed, null => ConditionStatus.Unknown },
            $"{Name(rule.Sign)} ({Say(there switch { true => Sentences.PartReported, false => Sentences.PartDenied, null => Sentences.PartNotSpokenOf })})");
    }

    private ConditionPart Occasion(ShowsRule rule, ConditionStatus sign)
    {
        var stated = Seen(rule.Sign).Where(one => one.Present).Select(one => one.Occasions).ToList();
        var (status, says) = sign != ConditionStatus.Held || stated.Exists(occasions => occasions.Count == 0) && !stated.Exists(Names) ? (ConditionStatus.Unknown, Say(Sentences.NotStated))
            : stated.Exists(occasions => catalogue.OccasionsFit(occasions, rule.Occasions)) ? (ConditionStatus.Held, Say(Sentences.Stated, Occasions(stated.SelectMany(one => one))))
            : (ConditionStatus.Failed, Say(Sentences.Stated, Occasions(stated.SelectMany(one => one))));
        return new ConditionPart(ConditionKind.Occasion, rule.Sign.Id, status, $"{Occasions(rule.Occasions)} ({says})");

        bool Names(IReadOnlyList<string> occasions) => occasions.Count > 0 && catalogue.OccasionsFit(occasions, rule.Occasions);
    }

    /// <summary>Reports of a symptom, and what follows from reports.</summary>
    private IEnumerable<(bool Present, IReadOnlyList<string> Occasions)> Seen(Sign sign) =>
        advised.Case.Reports.Where(report => sign == Knowledge.Signs.Sign.Symptom(report.Symptom)).Select(report => (report.Present, report.Occasions))
            .Concat(advised.Evidence.Implied.Where(one => one.Implied.Sign == sign).Select(one => (one.Implied.Present, one.Implied.Occasions)));

    private bool Reported(string symptom) => advised.Case.Reports.Any(report => report.Present && report.Symptom == symptom);

    private string Name(Sign sign) => sign.Kind == SignKind.Code ? Say(Sentences.Code, sign.Id) : catalogue.Symptoms[sign.Id].Name.For(_audience);

    private string Say(Sentence sentence, params ReadOnlySpan<object?> slots) => catalogue.Say(_audience, sentence, slots);

    private string Occasions(IEnumerable<string> ids) => string.Join(" or ", ids.Distinct().Select(id => catalogue.Occasions[id].Name));
}
