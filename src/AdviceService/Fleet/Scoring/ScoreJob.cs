namespace AdviceService.Fleet.Scoring;

/// <summary>What a score run was asked to do; whoever goes on with it must have been asked the same.</summary>
/// <param name="Revision">Revision of the rule set.</param>
/// <param name="Program">Version of the program.</param>
/// <param name="Input">SHA-256 of the input; null for a pipe, from which no run can go on.</param>
/// <param name="Detail">How much is answered.</param>
/// <param name="Shard">Which part of the lines.</param>
/// <param name="AsOf">The day that counts where a line names none.</param>
internal sealed record ScoreJob(string Revision, string Program, string? Input, LineDetail Detail, Shard Shard, DateOnly AsOf);
