using System.Text.Json;

namespace AdviceService.Tests.Complaints;

/// <summary>A complaint of a real owner with the systems that count as right.</summary>
/// <param name="Text">All that was written.</param>
/// <param name="Symptoms">Without the sentences that name a diagnosis or a repair.</param>
/// <param name="System">Id of the one system that it was filed under.</param>
/// <param name="Systems">Ids of the accepted systems.</param>
internal sealed record Complaint(string Text, string Symptoms, string System, IReadOnlySet<string> Systems)
{
    /// <summary>The complaints in the folder that ADVICE_SHARED names.</summary>
    public static IReadOnlyList<Complaint> All()
    {
        var folder = Environment.GetEnvironmentVariable("ADVICE_SHARED");
        Skip.If(string.IsNullOrEmpty(folder), "ADVICE_SHARED names no folder with the complaints.");
        return [.. File.ReadLines(Path.Combine(folder, "data", "complaints-dev.jsonl")).Select(Read)];
    }

    private static Complaint Read(string line)
    {
        var row = JsonDocument.Parse(line).RootElement;
        return new Complaint(
            row.GetProperty("text").GetString()!,
            row.GetProperty("text_symptom").GetString()!,
            row.GetProperty("system").GetString()!.Split('/')[0],
            row.GetProperty("systems_accepted").EnumerateArray().Select(system => system.GetString()!.Split('/')[0]).ToHashSet());
    }
}
