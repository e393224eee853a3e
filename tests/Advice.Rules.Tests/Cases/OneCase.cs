using System.Text;
using Advice.Rules.Cases;
using Advice.Rules.Files;

namespace Advice.Rules.Tests.Cases;

/// <summary>A case file in memory.</summary>
internal static class OneCase
{
    /// <summary>What the answers of all rows are about: a squeal when braking, and nothing that calls for a lift or a stop.</summary>
    public const string Squeal =
        "{vehicle: {modelYear: 2016, fuel: gasoline, odometer: {value: 95000, unit: km}}, symptoms: [{symptom: squeal, occasions: [braking]}]}";

    /// <summary>The cases of a file with this text, each member of the first case on a line of its own from line 2.</summary>
    public static CaseSet Read(string text) => CaseFolder.Read(
        [new RuleFile("brakes/own.cases.yaml", Encoding.UTF8.GetBytes(text))], RepositoryRules.Book.Catalogue, PlainRequest.Read);

    /// <summary>A case about the squeal with these expectations.</summary>
    public static CaseSet With(string expectations) => Read($"cases:\n  - id: squeal\n    given: {Squeal}\n    {expectations}\n");
}
