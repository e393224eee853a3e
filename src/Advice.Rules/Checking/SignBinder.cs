using Advice.Knowledge;

namespace Advice.Rules.Checking;

/// <summary>Binds symptoms and trouble codes.</summary>
internal sealed class SignBinder(Tables tables, SourceBinder sources, Problems problems)
{
    private static readonly string[] SymptomMembers = ["id", "name", "plain", "specificity", "ask", "phrases", "source"];
    private static readonly string[] CodeMembers = ["id", "meaning", "plain", "system", "source"];

    /// <summary>Binds all entries of these kinds.</summary>
    public void BindAll(Declarations declared)
    {
        foreach (var (id, node) in declared["symptoms"])
            tables.Symptoms.Bind(id, Symptom(id, new EntryReader(node, "symptom", SymptomMembers, problems)));
        foreach (var (id, node) in declared["codes"])
            tables.Codes.Bind(id, Code(id, new EntryReader(node, "trouble code", CodeMembers, problems)));
    }

    private Symptom Symptom(string id, EntryReader reader)
    {
        sources.Optional(reader);
        if (!reader.Has("phrases"))
            reader.Refuse(ErrorCode.MissingMember, "phrases", "'phrases' is missing: how do people say it?");
        return new Symptom(
            id, reader.TextPair("name"), reader.OneOf<double>("specificity", FormatWords.Specificity), reader.Text("ask"), reader.Texts("phrases"));
    }

    private TroubleCode Code(string id, EntryReader reader)
    {
        sources.Optional(reader);
        return new TroubleCode(id, reader.TextPair("meaning"), reader.Id("system", tables.Systems));
    }
}
