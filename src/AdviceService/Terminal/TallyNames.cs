using Advice.Knowledge;
using Advice.Knowledge.Words;

namespace AdviceService.Terminal;

/// <summary>Names for what a fleet adds up to. Workers may have had another rule set than whoever collects: what it does not know keeps its id.</summary>
internal static class TallyNames
{
    /// <summary>That of a check.</summary>
    public static string OfCheck(string id, Catalogue catalogue) => catalogue.Checks.TryGetValue(id, out var check) ? check.Title.For(Audience.Technician) : id;

    /// <summary>That of a fault.</summary>
    public static string OfFault(string id, Catalogue catalogue) => catalogue.Faults.TryGetValue(id, out var fault) ? fault.Name.For(Audience.Technician) : id;

    /// <summary>That of a part.</summary>
    public static string OfPart(string id, Catalogue catalogue) => catalogue.Parts.TryGetValue(id, out var part) ? part.Name.For(Audience.Technician) : id;
}
