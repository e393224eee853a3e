using Advice.Knowledge.Codes;
using Advice.Knowledge.Signs;
using Advice.Knowledge.Words;

namespace Advice.Rules.Checking;

/// <summary>Binds symptoms, trouble codes, their families and their failure types.</summary>
internal sealed class SignBinder(Tables tables, SourceBinder sources, Problems problems)
{
    private static readonly string[] SymptomMembers = ["id", "name", "plain", "specificity", "ask", "told", "answeredBy", "answeredOn", "phrases", "sentences", "source"];
    private static readonly string[] AnswerMembers = ["symptom", "occasions"];
    private static readonly string[] CodeMembers = ["id", "meaning", "plain", "system", "source"];

    private static readonly string[] FailureTypeMembers = ["id", "starts", "name", "plain", "source"];
    private static readonly string[] FamilyMembers = ["id", "starts", "name", "plain", "scope", "caveat", "source"];
    private static readonly Dictionary<string, CodeScope> Scopes = new(StringComparer.Ordinal)
    {
        ["standard"] = CodeScope.Standard,
        ["maker"] = CodeScope.Maker,
        ["reserved"] = CodeScope.Reserved,
    };

    /// <summary>Binds all entries of these kinds.</summary>
    public void BindAll(Declarations declared)
    {
        foreach (var (id, node) in declared["symptoms"])
            tables.Symptoms.Bind(id, Symptom(id, new EntryReader(node, "symptom", SymptomMembers, problems)));
        foreach (var (id, node) in declared["codes"])
            tables.Codes.Bind(id, Code(id, new EntryReader(node, "trouble code", CodeMembers, problems)));
        foreach (var (id, node) in declared["code-families"])
            tables.CodeFamilies.Bind(id, Family(id, new EntryReader(node, "family of codes", FamilyMembers, problems)));
        foreach (var (id, node) in declared["failure-types"])
            tables.FailureTypes.Bind(id, FailureType(id, new EntryReader(node, "failure type", FailureTypeMembers, problems)));
    }

    private FailureType FailureType(string id, EntryReader reader)
    {
        sources.Required(reader);
        return new FailureType(id, reader.Text("starts"), reader.TextPair("name"));
    }

    private CodeFamily Family(string id, EntryReader reader)
    {
        sources.Required(reader);
        var caveat = reader.TextOrNull("caveat");
        return new CodeFamily(
            id, reader.Text("starts"), reader.TextPair("name"), reader.Has("scope") ? reader.OneOf("scope", Scopes) : null,
            caveat is null ? null : new Text(caveat, caveat));
    }

    private Symptom Symptom(string id, EntryReader reader)
    {
        sources.Optional(reader);
        if (!reader.Has("phrases"))
            reader.Refuse(ErrorCode.MissingMember, "phrases", "'phrases' is missing: how do people say it?");
        return new Symptom(
            id, reader.TextPair("name"), reader.OneOf<double>("specificity", FormatWords.Specificity), reader.Text("ask"), reader.Texts("phrases"))
        {
            Sentences = reader.Texts("sentences"),
            AnsweredBy = reader.Ids("answeredBy", tables.Symptoms),
            AnsweredOn = reader.Has("answeredOn") ? [.. reader.Inners("answeredOn", "answer", AnswerMembers).Select(AnsweredOn)] : [],
            Effort = reader.Has("told") ? reader.OneOf<double>("told", FormatWords.Told) : 1,
        };
    }

    private AnsweredOn AnsweredOn(EntryReader reader)
    {
        reader.RequiredTexts("occasions");
        return new(reader.Id("symptom", tables.Symptoms), reader.Ids("occasions", tables.Occasions));
    }

    private TroubleCode Code(string id, EntryReader reader)
    {
        sources.Optional(reader);
        return new TroubleCode(id, reader.TextPair("meaning"), reader.Id("system", tables.Systems));
    }
}
