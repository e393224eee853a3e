using Advice.Arithmetic;
using Advice.Documents;
using Advice.Findings;
using Advice.Knowledge;
using Advice.Vehicles;

namespace Advice.FreezeFrames;

/// <summary>Makes findings of the values of a freeze frame, as the checks say.</summary>
public sealed class FrameReader(Catalogue catalogue)
{
    private const string Alone = "No check rests on it alone; it tells how the vehicle ran when the code was stored.";

    private readonly IReadOnlyList<Check> _checks =
        [.. catalogue.Checks.Values.Where(check => check.FreezeFrame is not null).OrderBy(check => check.Id, StringComparer.Ordinal)];

    /// <summary>Reads the frame of a request; a finding of the request for the same check wins.</summary>
    public FrameReading Read(AdviceRequest request, Vehicle vehicle)
    {
        if (request.FreezeFrame is not { } frame)
            return FrameReading.None;
        var found = request.Findings.Select(finding => finding.Check).ToHashSet();
        var attempts = _checks.Select(check => Attempt(check, frame, vehicle, found.Contains(check.Id))).ToList();
        var served = attempts.Where(attempt => attempt.Taken is not null).SelectMany(attempt => Served(attempt.Check, frame)).ToHashSet();
        return new FrameReading(
            [.. attempts.Select(attempt => attempt.Taken).OfType<FrameFinding>()],
            [.. FrameInputs.All.Where(member => frame.Has(member) && !served.Contains(member)).Select(member => new FrameMemberLeft(member.Name, Why(member, attempts, frame)))]);
    }

    private (Check Check, FrameFinding? Taken, string? Why) Attempt(Check check, Given frame, Vehicle vehicle, bool found)
    {
        var (from, measure) = (check.FreezeFrame!, check.Measure!);
        if (Complete(check, frame).MaxBy(sum => Math.Abs(Sum(sum, frame))) is not { } sum)
            return (check, null, null);
        // Two trims of one decimal each must not add up to ten and a hair.
        var value = Math.Round(Sum(sum, frame), 9);
        var why = found ? $"Your own finding of '{check.Id}' counts."
            : VehicleFit.Share(catalogue.FitsByCheck[check.Id], vehicle) == 0 ? $"'{check.Id}' does not apply to this vehicle."
            : from.Where.FirstOrDefault(test => test.Test(frame) != Truth.Yes) is { } failed
                ? $"'{check.Id}' takes it only where {failed}{(frame.Has(failed.Member) ? null : ", which is not given")}."
            : from.Unless.FirstOrDefault(test => test.Test(frame) == Truth.Yes) is { } hindered ? $"'{check.Id}' does not take it where {hindered}."
            : UnitConversion.ConvertAsRead(value, sum[0].Unit!, measure.Unit) is var own && (own < measure.PlausibleMinimum || own > measure.PlausibleMaximum)
                ? FormattableString.Invariant($"'{check.Id}' holds from {measure.PlausibleMinimum} to {measure.PlausibleMaximum} {measure.Unit} only.")
            : null;
        var finding = new FindingReport { Check = check.Id, Value = value, Unit = sum[0].Unit };
        return (check, why is null ? new FrameFinding(finding, [.. sum.Select(member => member.Name)]) : null, why);
    }

    private static IEnumerable<IReadOnlyList<NumberInput>> Complete(Check check, Given frame) => check.FreezeFrame!.Sums.Where(sum => sum.All(frame.Has));

    private static double Sum(IReadOnlyList<NumberInput> sum, Given frame) => sum.Sum(member => frame[member]);

    private static IEnumerable<Input> Served(Check check, Given frame) =>
        [.. Complete(check, frame).SelectMany(sum => sum), .. check.FreezeFrame!.Where.Concat(check.FreezeFrame.Unless).Select(test => test.Member)];

    private static string Why(Input member, List<(Check Check, FrameFinding? Taken, string? Why)> attempts, Given frame)
    {
        foreach (var (check, _, why) in attempts)
        {
            if (check.FreezeFrame!.Sums.FirstOrDefault(sum => sum.Contains(member)) is not { } sum)
                continue;
            return sum.FirstOrDefault(other => !frame.Has(other)) is { } missing ? $"'{check.Id}' adds it to {missing.Name}, which is not given." : why!;
        }

        return Alone;
    }
}
