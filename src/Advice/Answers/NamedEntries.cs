using Advice.Documents.Judgements;

namespace Advice.Answers;

/// <summary>What an answer names beside what was concluded.</summary>
/// <param name="Cautions">Ids of the cautions that it gives.</param>
/// <param name="Services">Ids of the service items that it names.</param>
/// <param name="Judgements">Its judgements on findings.</param>
internal sealed record NamedEntries(IEnumerable<string> Cautions, IEnumerable<string> Services, IEnumerable<JudgementDocument> Judgements)
{
    /// <summary>Nothing.</summary>
    public static NamedEntries None { get; } = new([], [], []);
}
