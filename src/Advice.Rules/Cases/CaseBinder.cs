using System.Globalization;
using Advice.Documents.Requests;
using Advice.Knowledge;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Words;
using Advice.Rules.Checking;
using Advice.Rules.Files;

namespace Advice.Rules.Cases;

/// <summary>Binds the entries of case files.</summary>
/// <param name="catalogue">The rule set that the cases are about.</param>
/// <param name="readGiven">Reads their requests.</param>
/// <param name="problems">Where to note errors.</param>
/// <param name="doubts">Where to note what to look at again.</param>
internal sealed class CaseBinder(Catalogue catalogue, ReadGiven readGiven, Problems problems, Problems doubts)
{
    private const int MostSteps = 50;

    private static readonly string[] FileMembers = ["cases"];
    private static readonly string[] ExpectationMembers = ["first", "among", "never", "cautions", "noCautions", "suspect", "driving", "normal", "judged"];
    private static readonly string[] Members = ["id", "given", .. ExpectationMembers];

    private readonly KnownIds _checks = new("check", catalogue.Checks.Keys);
    private readonly KnownIds _faults = new("fault", catalogue.Faults.Keys);
    private readonly KnownIds _either = new("check or fault", catalogue.Checks.Keys.Concat(catalogue.Faults.Keys));
    private readonly KnownIds _cautions = new("caution", catalogue.Cautions.Keys);
    private readonly KnownIds _normals = new("'normal' rule", catalogue.Rules.Values.OfType<NormalRule>().Select(rule => rule.Id));
    private readonly Dictionary<string, string> _asked = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Place> _ids = new(StringComparer.Ordinal);

    /// <summary>The cases of a file that are right.</summary>
    public IEnumerable<RuleCase> Bind(MappingNode file) =>
        new EntryReader(file, "case file", FileMembers, problems).Inners("cases", "case", Members).Select(Case).OfType<RuleCase>();

    private RuleCase? Case(EntryReader reader)
    {
        var before = problems.Count;
        var id = reader.Text("id");
        if (id.Length > 0 && !_ids.TryAdd(id, reader.At("id")))
            reader.Refuse(ErrorCode.IdTaken, "id", $"the case '{id}' stands already in {_ids[id].File}, line {_ids[id].Line}");
        if (!ExpectationMembers.Any(reader.Has))
            reader.Refuse(ErrorCode.EmptyCase, "id", $"the case '{id}' asserts nothing; add one of {string.Join(", ", ExpectationMembers)}");
        var expectations = Expectations(reader).ToList();
        var given = Given(reader, id);
        if (given is not null)
            RefuseJudgedWithoutFinding(reader, given);
        return given is not null && problems.Count == before ? new RuleCase(id, reader.Place, given, expectations) : null;
    }

    private AdviceRequest? Given(EntryReader reader, string id)
    {
        if (reader.Raw("given") is not { } given)
        {
            reader.Refuse(ErrorCode.MissingMember, "given", "'given' is missing from this case: what does the caller ask?");
            return null;
        }

        var json = NodeJson.From(given);
        var asked = json.GetRawText();
        if (!_asked.TryAdd(asked, id))
            doubts.Add(WarningCode.SaysAgain, reader.At("id"), $"the case '{id}' asks what the case '{_asked[asked]}' asks; put what they expect into one");
        var read = readGiven(json, CaseClock.Today);
        foreach (var (pointer, detail) in read.Errors)
            problems.Add(ErrorCode.BadRequest, NodeJson.PlaceOf(pointer, given), detail);
        return read.Request;
    }

    private IEnumerable<Expectation> Expectations(EntryReader reader)
    {
        if (reader.IdOrIds("first", _checks) is { Count: > 0 } first)
            yield return Expect.First(first);
        foreach (var among in Among(reader))
            yield return among;
        if (reader.IdOrIds("never", _either) is { Count: > 0 } never)
            yield return Expect.Never(never);
        if (reader.IdOrIds("suspect", _faults) is { Count: > 0 } suspects)
            yield return Expect.Suspect(suspects);
        if (reader.IdOrIds("cautions", _cautions) is { Count: > 0 } cautions)
            yield return Expect.Cautions(cautions);
        if (reader.IdOrIds("noCautions", _cautions) is { Count: > 0 } absent)
            yield return Expect.NoCautions(absent);
        if (Driving(reader) is { Count: > 0 } driving)
            yield return Expect.Driving(driving);
        if (reader.IdOrIds("normal", _normals) is { Count: > 0 } normal)
            yield return Expect.Normal(normal);
        foreach (var judged in Judged(reader))
            yield return judged;
    }

    private IEnumerable<Expectation> Among(EntryReader reader)
    {
        if (reader.Raw("among") is not MappingNode mapping)
        {
            if (reader.Has("among"))
                reader.Refuse(ErrorCode.WrongShape, "among", $"'among' must be a mapping such as {{3: [check, check]}}, not {reader.Raw("among")!.Shape}");
            yield break;
        }

        var lists = new EntryReader(mapping, "mapping from counts to checks", [.. mapping.Members.Select(member => member.Key.Value)], problems);
        foreach (var (key, _) in mapping.Members)
        {
            var checks = lists.IdOrIds(key.Value, _checks);
            if (!int.TryParse(key.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var first) || first is < 1 or > MostSteps)
                problems.Add(ErrorCode.OutOfRange, key.Place, $"'{key.Value}' is no count of steps from 1 to {MostSteps}");
            else if (checks.Count > first)
                problems.Add(ErrorCode.OutOfRange, key.Place, $"{checks.Count} checks cannot all be among the first {first}");
            else if (checks.Count > 0)
                yield return Expect.Among(first, checks);
        }
    }

    private IEnumerable<Expectation> Judged(EntryReader reader)
    {
        if (reader.Raw("judged") is not MappingNode mapping)
        {
            if (reader.Has("judged"))
                reader.Refuse(ErrorCode.WrongShape, "judged", $"'judged' must be a mapping such as {{check: minor}}, not {reader.Raw("judged")!.Shape}");
            yield break;
        }

        if (mapping.Members.Count == 0)
            reader.Refuse(ErrorCode.EmptyList, "judged", "'judged' is empty; name a check and its class, or leave it out");
        foreach (var (check, value) in mapping.Members)
        {
            var word = (value as ScalarNode)?.Value ?? value.Shape;
            if (!_checks.Contains(check.Value))
                problems.Add(ErrorCode.UnknownId, check.Place, $"unknown check '{check.Value}'", NearestWord.To(check.Value, _checks.All));
            else if (FormatWords.Deficiency.TryGetValue(word, out var deficiency))
                yield return Expect.Judged(check.Value, deficiency);
            else
                problems.AddNoValue(value.Place, word, "judged", FormatWords.Deficiency.Keys);
        }
    }

    private void RefuseJudgedWithoutFinding(EntryReader reader, AdviceRequest given)
    {
        if (given.FreezeFrame is not null)
            return;
        var found = given.Findings.Select(finding => finding.Check).ToHashSet();
        foreach (var (check, _) in (reader.Raw("judged") as MappingNode)?.Members ?? [])
        {
            if (_checks.Contains(check.Value) && !found.Contains(check.Value))
                problems.Add(ErrorCode.AsksNothing, check.Place, $"the case gives no finding of '{check.Value}', so there is nothing to judge");
        }
    }

    private List<DrivingAdvice> Driving(EntryReader reader)
    {
        var advices = new List<DrivingAdvice>();
        foreach (var word in reader.WordOrWords("driving"))
        {
            if (FormatWords.ExpectedDriving.TryGetValue(word.Value, out var advice))
                advices.Add(advice);
            else
                problems.AddNoValue(word.Place, word.Value, "driving", FormatWords.ExpectedDriving.Keys);
        }

        if (advices.Distinct().Count() == FormatWords.ExpectedDriving.Count)
            reader.Refuse(ErrorCode.AsksNothing, "driving", "this names every value of 'driving', so it asks for nothing; leave it out");
        return advices;
    }
}
