using System.CommandLine;
using System.Text.RegularExpressions;

namespace AdviceService.Verbs;

/// <summary>The options that the verbs of the queue share.</summary>
internal static partial class QueueOptions
{
    /// <summary>Where the queue is.</summary>
    public static Option<string> Url() => new("--nats")
    {
        Description = "Address of the NATS server; without it that in NATS_URL, else the one on this machine",
        DefaultValueFactory = _ => Environment.GetEnvironmentVariable("NATS_URL") is { Length: > 0 } url ? url : "nats://127.0.0.1:4222",
    };

    /// <summary>The job.</summary>
    public static Argument<string> Job()
    {
        var job = new Argument<string>("JOB") { Description = "Name of the job: letters, digits, - and _" };
        job.Validators.Add(given =>
        {
            if (!Name().IsMatch(given.GetValueOrDefault<string>() ?? ""))
                given.AddError("JOB is 1 to 64 letters, digits, - and _.");
        });
        return job;
    }

    [GeneratedRegex("^[A-Za-z0-9_-]{1,64}$")]
    private static partial Regex Name();
}
