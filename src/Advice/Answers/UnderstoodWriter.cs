using Advice.Documents.Understood;
using Advice.Intake;
using Advice.Knowledge;
using Advice.Knowledge.Signs;

namespace Advice.Answers;

/// <summary>How the request was understood.</summary>
internal sealed class UnderstoodWriter(Catalogue catalogue)
{
    private readonly AssumptionWriter _assumptions = new(catalogue);
    private readonly CodeDecoder _codes = new(catalogue);

    /// <summary>Symptoms, codes, what was not understood, and what was assumed.</summary>
    public UnderstoodDocument Write(CaseReading reading, Advised advised)
    {
        var audience = reading.Case.Workshop.Reader;
        return new UnderstoodDocument(
            [
                .. reading.Case.Reports.Select(report => new UnderstoodSymptom(
                    report.Symptom, catalogue.Symptoms[report.Symptom].Name.For(audience), report.Occasions, report.Position,
                    report.Present, report.Words, Math.Round(report.Confidence, 2))),
            ],
            [
                .. reading.Stored.OrderBy(stored => catalogue.Codes.ContainsKey(stored.Code) ? 0 : 1).Select(stored => new UnderstoodCode(
                    stored.Code, _codes.Meaning(stored.Code, audience), advised.Evidence.Links.Any(link => link.Seen.Sign == Sign.Code(stored.Code)),
                    _codes.FailureType(stored, audience))),
            ],
            reading.Complaint.NotUnderstood,
            _assumptions.Write(advised),
            reading.FreezeFrameLeft);
    }
}
