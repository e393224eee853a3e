namespace Advice.Inference;

/// <summary>
/// Something that was looked for: seen (present) or denied (absent).
/// P(absent | causes) = (1 − leak) · Π over its present causes (1 − q).
/// </summary>
/// <param name="Id">Its id. Manifestations of one id and one presence count once, with the largest leak and strengths.</param>
/// <param name="Present">True where it was seen, false where it was denied.</param>
/// <param name="Leak">Probability that it shows although none of the linked causes produces it, 0 … 1.</param>
/// <param name="Links">Causes that can produce it; of several links of one cause the largest strength counts.</param>
public sealed record Manifestation(string Id, bool Present, double Leak, IReadOnlyList<CauseLink> Links);
