using Advice.Knowledge;
using Advice.Knowledge.Signs;
using Advice.Symptoms;
using Advice.Symptoms.Mentions;

namespace Advice.Intake;

/// <summary>
/// Reads that something is wrong with a system from a complaint that speaks of it: where it says that something is wrong and nothing else was
/// understood, or where sentences that were not understood speak of it and no symptom or code of the case points to that system.
/// </summary>
internal sealed class TroubleReading(Catalogue catalogue)
{
    private const double Confidence = 0.6;

    /// <summary>Who speaks so much of one system in a complaint complains of it.</summary>
    private const double Insistent = 1.35;

    /// <summary>The reports to add.</summary>
    /// <param name="reading">What was read.</param>
    /// <param name="named">How much it speaks of each system.</param>
    /// <param name="signs">The symptoms that are noticed and the codes of the case.</param>
    public IEnumerable<Report> Of(ComplaintReading reading, SystemsNamed named, IReadOnlyList<Sign> signs)
    {
        if (!reading.StatesTrouble)
            return [];
        var mentions = reading.Mentions;
        if (signs.Count > 0)
        {
            mentions = [.. mentions.Where(mention => IsUnread(mention, reading))];
            named = SystemsNamed.Of(mentions);
            if (named.Most < Insistent)
                return [];
        }

        var pointedTo = signs.SelectMany(sign => catalogue.ShowsBySign[sign]).Select(rule => catalogue.Faults[rule.Fault].System).ToHashSet();
        return
            from system in catalogue.Systems
            where system.Trouble is not null && named.Foremost.Contains(system.Id) && !pointedTo.Contains(system.Id)
            let words = mentions.First(mention => mention.System == system.Id).Words
            select new Report(system.Trouble!, [], null, Present: true, words, Confidence);
    }

    /// <summary>A sentence that was understood says by its symptoms what it speaks of.</summary>
    private static bool IsUnread(SystemMention mention, ComplaintReading reading) =>
        reading.Unread.Any(sentence => sentence.Start <= mention.Start && mention.End <= sentence.End);
}
