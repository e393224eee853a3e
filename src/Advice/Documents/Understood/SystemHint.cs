namespace Advice.Documents.Understood;

/// <summary>A system of which a text speaks.</summary>
/// <param name="System">Id of the system.</param>
/// <param name="Name">Its name.</param>
/// <param name="Weight">How much: 1 for each time that it is named, less for words that need not mean it.</param>
/// <param name="Mentions">Where.</param>
public sealed record SystemHint(string System, string Name, double Weight, IReadOnlyList<Mention> Mentions);
