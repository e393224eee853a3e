using System.Text.Json;
using AdviceService.Json;

namespace AdviceService.Fleet.Scoring;

/// <summary>The replies of a run that has not ended, beside its output: they are the checkpoint. A run that died goes on after the last
/// whole reply, so that nothing is answered twice and nothing is lost.</summary>
internal sealed class PartFile : IDisposable
{
    private const int FlushedBytes = 1024 * 1024;

    private readonly string _jobPath;
    private readonly FileStream _replies;
    private int _unflushed;
    private bool _isEmpty;

    private PartFile(string jobPath, FileStream replies, long done) => (_jobPath, _replies, Done, _isEmpty) = (jobPath, replies, done, done == 0);

    /// <summary>How many replies there were when it was opened.</summary>
    public long Done { get; }

    /// <summary>Opens that of an earlier run of the same job, or a new one.</summary>
    /// <param name="output">Path of the output.</param>
    /// <param name="jobToday">The job; the day of an earlier run counts for it.</param>
    /// <param name="givenAsOf">Whether the day was asked for.</param>
    /// <param name="job">The job as it goes on.</param>
    /// <exception cref="ScoreException">The earlier run was another job.</exception>
    public static PartFile Open(string output, ScoreJob jobToday, bool givenAsOf, out ScoreJob job)
    {
        var jobPath = output + ".job";
        job = jobToday;
        if (job.Input is null || !File.Exists(jobPath))
        {
            File.Delete(output + ".part");
            File.WriteAllText(jobPath, JsonSerializer.Serialize(job, Written.As.ScoreJob));
        }
        else
        {
            var earlier = JsonSerializer.Deserialize(File.ReadAllText(jobPath), Written.As.ScoreJob)!;
            job = givenAsOf ? job : job with { AsOf = earlier.AsOf };
            if (job != earlier)
                throw new ScoreException($"{jobPath}: a run that did not end was asked for something else ({Differences(job, earlier)}). Ask for the same, or delete that file to start anew.");
        }

        var replies = Replies(output);
        var (count, end) = WholeLines(replies);
        replies.SetLength(end);
        replies.Position = end;
        return new PartFile(jobPath, replies, count);
    }

    /// <summary>Opens a new one, whatever there was.</summary>
    public static PartFile Anew(string output)
    {
        File.Delete(output + ".part");
        return new PartFile(output + ".job", Replies(output), 0);
    }

    /// <summary>Keeps a reply.</summary>
    public void Add(byte[] reply)
    {
        _isEmpty = false;
        _replies.Write(reply);
        _replies.WriteByte((byte)'\n');
        _unflushed += reply.Length;
        if (_unflushed < FlushedBytes)
            return;
        _replies.Flush();
        _unflushed = 0;
    }

    /// <summary>Ends the run: what was kept is handed over and becomes the output.</summary>
    /// <param name="output">Path of the output.</param>
    /// <param name="format">Its form.</param>
    /// <param name="tally">Adds the replies up.</param>
    public async Task CompleteAsync(string output, ScoreFormat format, Tally tally)
    {
        await _replies.FlushAsync();
        await foreach (var reply in ReplyTable.LinesAsync(_replies))
            tally.Add(reply);
        if (format == ScoreFormat.Ndjson)
        {
            File.Move(_replies.Name, output, overwrite: true);
        }
        else
        {
            var finished = output + ".new";
            await using (var target = File.Create(finished))
                await ReplyTable.WriteAsync(_replies, target, format);
            File.Move(finished, output, overwrite: true);
            File.Delete(_replies.Name);
        }

        File.Delete(_jobPath);
    }

    /// <summary>Closes it. A run that ended before its first reply leaves nothing: there is nothing to go on from, and what was wrong may be put right.</summary>
    public void Dispose()
    {
        _replies.Dispose();
        if (!_isEmpty)
            return;
        File.Delete(_replies.Name);
        File.Delete(_jobPath);
    }

    private static FileStream Replies(string output) => new(output + ".part", FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.Read, 64 * 1024);

    private static (long Count, long End) WholeLines(FileStream replies)
    {
        var (count, end, position) = (0L, 0L, 0L);
        var buffer = new byte[FlushedBytes];
        for (int read; (read = replies.Read(buffer)) > 0; position += read)
        {
            for (var i = 0; i < read; i++)
            {
                if (buffer[i] == '\n')
                    (count, end) = (count + 1, position + i + 1);
            }
        }

        return (count, end);
    }

    private static string Differences(ScoreJob job, ScoreJob earlier)
    {
        List<string> differences = [];
        void Compare(string what, object? now, object? then)
        {
            if (!Equals(now, then))
                differences.Add($"{what} was {then} and is {now}");
        }

        Compare("rule set", job.Revision, earlier.Revision);
        Compare("program", job.Program, earlier.Program);
        Compare("input", job.Input, earlier.Input);
        Compare("detail", job.Detail, earlier.Detail);
        Compare("shard", job.Shard, earlier.Shard);
        Compare("day", job.AsOf, earlier.AsOf);
        return string.Join(", ", differences);
    }
}
