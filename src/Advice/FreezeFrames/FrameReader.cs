using Advice.Arithmetic;
using Advice.Documents.Requests;
using Advice.Documents.Understood;
using Advice.Findings;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Words;
using Advice.Vehicles;

namespace Advice.FreezeFrames;

/// <summary>Makes findings of the values of a freeze frame, as the checks say.</summary>
public sealed class FrameReader(Catalogue catalogue)
{
    private readonly IReadOnlyList<Check> _checks =
        [.. catalogue.Checks.Values.Where(check => check.FreezeFrame is not null).OrderBy(check => check.Id, StringComparer.Ordinal)];

    /// <summary>Reads the frame of a request; a finding of the request for the same check wins.</summary>
    public FrameReading Read(AdviceRequest request, Case @case)
    {
        if (request.FreezeFrame is not { } frame)
            return FrameReading.None;
        var found = request.Findings.Select(finding => finding.Check).ToHashSet();
        var attempts = _checks.Select(check => Attempt(check, frame, @case.Vehicle, found.Contains(check.Id))).ToList();
        var served = attempts.Where(attempt => attempt.Taken is not null).SelectMany(attempt => Served(attempt.Check, frame)).ToHashSet();
        return new FrameReading(
            [.. attempts.Select(attempt => attempt.Taken).OfType<FrameFinding>()],
            [.. FrameInputs.All.Where(member => frame.Has(member) && !served.Contains(member)).Select(member => new FrameMemberLeft(member.Name, catalogue.Say(@case.Workshop.Reader, Why(member, attempts, frame))))]);
    }

    private (Check Check, FrameFinding? Taken, Saying? Why) Attempt(Check check, Given frame, Vehicle vehicle, bool found)
    {
        var (from, measure) = (check.FreezeFrame!, check.Measure!);
        if (Complete(check, frame).MaxBy(sum => Math.Abs(Sum(sum, frame))) is not { } sum)
            return (check, null, null);
        // Two trims of one decimal each must not add up to ten and a hair.
        var value = Math.Round(Sum(sum, frame), 9);
        var why = found ? new Saying(Sentences.FrameFound, check.Id)
            : VehicleFit.Share(catalogue.FitsByCheck[check.Id], vehicle) == 0 ? new(Sentences.FrameNotHere, check.Id)
            : from.Where.FirstOrDefault(test => test.Test(frame) != Truth.Yes) is { } failed
                ? new(frame.Has(failed.Member) ? Sentences.FrameOnlyWhere : Sentences.FrameOnlyWhereGiven, check.Id, Condition(failed))
            : from.Unless.FirstOrDefault(test => test.Test(frame) == Truth.Yes) is { } hindered ? new(Sentences.FrameNotWhere, check.Id, Condition(hindered))
            : UnitConversion.ConvertAsRead(value, sum[0].Unit!, measure.Unit) is var own && (own < measure.PlausibleMinimum || own > measure.PlausibleMaximum)
                ? new(Sentences.FrameHolds, check.Id, measure.PlausibleMinimum, FormattableString.Invariant($"{measure.PlausibleMaximum} {measure.Unit}"))
            : null;
        var finding = new FindingReport { Check = check.Id, Value = value, Unit = sum[0].Unit };
        return (check, why is null ? new FrameFinding(finding, [.. sum.Select(member => member.Name)]) : null, why);
    }

    private static IEnumerable<IReadOnlyList<NumberInput>> Complete(Check check, Given frame) => check.FreezeFrame!.Sums.Where(sum => sum.All(frame.Has));

    private static double Sum(IReadOnlyList<NumberInput> sum, Given frame) => sum.Sum(member => frame[member]);

    private static IEnumerable<Input> Served(Check check, Given frame) =>
        [.. Complete(check, frame).SelectMany(sum => sum), .. check.FreezeFrame!.Where.Concat(check.FreezeFrame.Unless).Select(test => test.Member)];

    private static Saying Why(Input member, List<(Check Check, FrameFinding? Taken, Saying? Why)> attempts, Given frame)
    {
        foreach (var (check, _, why) in attempts)
        {
            if (check.FreezeFrame!.Sums.FirstOrDefault(sum => sum.Contains(member)) is not { } sum)
                continue;
            return sum.FirstOrDefault(other => !frame.Has(other)) is { } missing ? new(Sentences.FrameAdds, check.Id, missing.Name) : why!;
        }

        return new(Sentences.FrameAlone);
    }

    private string Condition(FrameTest test) => catalogue.Say(Audience.Technician, Sentences.FrameIs, test.Member.Name, test.Member is not NumberInput number
        ? string.Join(" or ", test.Words)
        : string.Join(" and ", new[] { Bound(Sentences.AtLeast, test.AtLeast, number.Unit), Bound(Sentences.Below, test.Below, number.Unit) }.OfType<string>()));

    private string? Bound(Sentence sentence, double? bound, string? unit) =>
        bound is null ? null : catalogue.Say(Audience.Technician, sentence, FormattableString.Invariant($"{bound} {unit}"));
}
