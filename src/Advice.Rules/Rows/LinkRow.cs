using Advice.Evidence;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Knowledge.Words;

namespace Advice.Rules.Rows;

/// <summary>A fault shows itself by a sign: a shows rule, or what a check detects.</summary>
internal sealed class LinkRow : SignRow
{
    private readonly IReadOnlyList<string> occasions;
    private readonly IReadOnlyList<string> without;
    private readonly double often;
    private readonly VehicleCondition when;
    private readonly VehicleCondition[] exists;
    private readonly Func<bool, Text> because;
    private readonly Source? source;

    /// <summary>A row for a shows rule.</summary>
    public LinkRow(ShowsRule shows, Catalogue catalogue)
    {
        (Sign, Fault, Rule, often, when) = (shows.Sign, shows.Fault, shows.Id, shows.Often, shows.When);
        (occasions, without) = (shows.Occasions, shows.Without);
        (because, source) = (_ => shows.Because, shows.Source);
        exists = Exists(shows.Fault, catalogue);
    }

    /// <summary>A row for one abnormal value by which a check detects a fault.</summary>
    /// <param name="check">The check.</param>
    /// <param name="detects">What it detects.</param>
    /// <param name="value">The abnormal value.</param>
    /// <param name="shows">That value in words.</param>
    /// <param name="catalogue">The knowledge.</param>
    public LinkRow(Check check, Detects detects, string value, Text shows, Catalogue catalogue)
    {
        (Sign, Fault, Rule, often) = (Sign.Outcome(check.Id, value), detects.Fault, check.Id, detects.Surely);
        (when, occasions, without) = (VehicleCondition.Always, [], []);
        // Put together where it is said: there are thousands of values, and a case sees a few.
        because = present => present
            ? new Text($"{check.Title.Trade}: {shows.Trade}", $"{check.Title.Plain}: {shows.Plain}")
            : new Text($"{check.Title.Trade}: not {shows.Trade}", $"{check.Title.Plain}: not {shows.Plain}");
        exists = Exists(detects.Fault, catalogue);
    }

    /// <summary>The sign.</summary>
    public Sign Sign { get; }

    /// <summary>Id of the rule, or of the check for outcomes.</summary>
    public string Rule { get; }

    /// <summary>Id of the fault.</summary>
    public string Fault { get; }

    /// <inheritdoc/>
    public override bool Holds(Seen seen, Inquiry inquiry)
    {
        if (!seen.Concerns(occasions, inquiry.Catalogue) || when.Test(inquiry.Case.Vehicle) == Truth.No || inquiry.ReportsAny(without))
            return false;
        foreach (var condition in exists)
        {
            if (condition.Test(inquiry.Case.Vehicle) == Truth.No)
                return false;
        }

        return true;
    }

    /// <summary>The evidence that it is.</summary>
    public Link Link(Seen seen, Inquiry inquiry) =>
        new(seen.Sign, Fault, often * when.Share(inquiry.Case.Vehicle), Rule, because(seen.Sign.Present), source);

    private static VehicleCondition[] Exists(string fault, Catalogue catalogue) => [.. catalogue.FitsByFault[fault].Select(fits => fits.When)];
}
