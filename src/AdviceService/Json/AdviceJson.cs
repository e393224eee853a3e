using System.Text.Json.Serialization;
using Advice.Counterfactuals;
using Advice.Documents;
using Advice.Documents.Counterfactuals;
using Advice.Documents.Dues;
using Advice.Documents.Judgements;
using Advice.Documents.Requests;
using Advice.Documents.Understood;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Codes;
using Advice.Knowledge.Limits;
using Advice.Wear;
using AdviceService.Catalogues;
using AdviceService.Fleet;
using AdviceService.Fleet.Queue;
using AdviceService.Fleet.Scoring;
using AdviceService.Http;
using AdviceService.Http.Problems;

namespace AdviceService.Json;

/// <summary>How documents become JSON.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    Converters =
    [
        typeof(CamelCaseEnum<ChangeKind>), typeof(CamelCaseEnum<CodeScope>), typeof(CamelCaseEnum<ConditionKind>), typeof(CamelCaseEnum<ConditionStatus>), typeof(CamelCaseEnum<Deficiency>), typeof(CamelCaseEnum<DoneBy>), typeof(CamelCaseEnum<DrivingAdvice>), typeof(CamelCaseEnum<DueStatus>),
        typeof(CamelCaseEnum<ProjectionStatus>),
    ])]
[JsonSerializable(typeof(AdviceRequest))]
[JsonSerializable(typeof(AdviceDocument))]
[JsonSerializable(typeof(InspectionRequest))]
[JsonSerializable(typeof(JudgementsAnswer))]
[JsonSerializable(typeof(DueAnswer))]
[JsonSerializable(typeof(IntakeRequest))]
[JsonSerializable(typeof(IntakeDocument))]
[JsonSerializable(typeof(WhyNotQuestion))]
[JsonSerializable(typeof(WhyNotDocument))]
[JsonSerializable(typeof(ProjectionRequest))]
[JsonSerializable(typeof(ProjectionDocument))]
[JsonSerializable(typeof(ComputationAnswer))]
[JsonSerializable(typeof(IReadOnlyList<ComputationEntry>))]
[JsonSerializable(typeof(ProblemDocument))]
[JsonSerializable(typeof(AnswerLine))]
[JsonSerializable(typeof(TriageLine))]
[JsonSerializable(typeof(ProblemLine))]
[JsonSerializable(typeof(EndLine))]
[JsonSerializable(typeof(ScoreJob))]
[JsonSerializable(typeof(QueueJob))]
[JsonSerializable(typeof(QueueRun))]
[JsonSerializable(typeof(Chunk))]
[JsonSerializable(typeof(IReadOnlyList<SystemEntry>))]
[JsonSerializable(typeof(IReadOnlyList<SymptomEntry>))]
[JsonSerializable(typeof(IReadOnlyList<FaultEntry>))]
[JsonSerializable(typeof(IReadOnlyList<CheckEntry>))]
[JsonSerializable(typeof(IReadOnlyList<CautionEntry>))]
[JsonSerializable(typeof(IReadOnlyList<RuleEntry>))]
[JsonSerializable(typeof(RuleSetDocument))]
[JsonSerializable(typeof(CatalogueQuery))]
[JsonSerializable(typeof(CatalogueSearchResult))]
internal sealed partial class AdviceJson : JsonSerializerContext;
