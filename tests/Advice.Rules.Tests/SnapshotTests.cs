using System.Text.Json;
using Advice.Rules.Cases;
using Advice.Rules.RuleSets;
using Advice.Rules.Tests.Bench;
using Advice.Symptoms;

namespace Advice.Rules.Tests;

/// <summary>A snapshot says what the files say, and is not used where it might say anything else.</summary>
public sealed class SnapshotTests : IDisposable
{
    private readonly DirectoryInfo _rules = Directory.CreateTempSubdirectory("rules-");

    private string Snapshot => Path.Combine(_rules.FullName, RuleSets.Snapshot.FileName);

    public void Dispose() => _rules.Delete(recursive: true);

    [Fact]
    public void Load_SnapshotOfTheRepository_AnswersAlikeToTheByte()
    {
        CopyRepository();
        RuleSets.Snapshot.Write(_rules.FullName);

        Assert.True(RuleSets.Snapshot.IsUsable(_rules.FullName));
        var book = RuleSetLoader.Load(_rules.FullName);
        Assert.Equal(RepositoryRules.Book.Revision, book.Revision);
        var (parsed, read) = (new GiveAdvice(RepositoryRules.Book, new CaseClock()), new GiveAdvice(book, new CaseClock()));
        Assert.All(RepositoryCases.Sample, one => Assert.Equal(JsonSerializer.Serialize(parsed.To(one.Case.Given)), JsonSerializer.Serialize(read.To(one.Case.Given))));
    }

    [Fact]
    public void Load_SnapshotOfTheRepository_KnowsWhatWouldBeLearned()
    {
        CopyRepository();
        RuleSets.Snapshot.Write(_rules.FullName);

        var catalogue = RuleSetLoader.Load(_rules.FullName).Catalogue;
        Assert.False(catalogue.Learned.IsEmpty);
        Assert.True(new ComplaintReader(catalogue).Learned().Span.SequenceEqual(new ComplaintReader(RepositoryRules.Book.Catalogue).Learned().Span));
    }

    [Fact]
    public void Load_FileChangedAfterwards_FollowsTheFile()
    {
        WriteWords("words.yaml", "systems:\n  - {id: brakes, name: Brakes}\n");
        WriteWords("more.yaml", "systems:\n  - {id: tyres, name: Tyres}\n");
        RuleSets.Snapshot.Write(_rules.FullName);
        WriteWords("more.yaml", "systems:\n  - {id: wheels, name: Wheels}\n");

        Assert.False(RuleSets.Snapshot.IsUsable(_rules.FullName));
        Assert.Equal(["wheels", "brakes"], RuleSetLoader.Load(_rules.FullName).Catalogue.Systems.Select(system => system.Id));
    }

    [Fact]
    public void Load_FileBrokenAfterwards_NamesThePlace()
    {
        WriteWords("words.yaml", "systems:\n  - {id: brakes, name: Brakes}\n");
        RuleSets.Snapshot.Write(_rules.FullName);
        WriteWords("words.yaml", "systems:\n  - {id: brakes, nime: Brakes}\n");

        var wrong = Assert.Throws<RuleSetException>(() => RuleSetLoader.Load(_rules.FullName));
        Assert.Contains(wrong.Errors, error => error is { File: "words.yaml", Line: 2 } && error.Column > 1);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(40)]
    [InlineData(-1)]
    public void Load_ByteChangedInTheSnapshot_ReadsTheFiles(int at)
    {
        WriteWords("words.yaml", "systems:\n  - {id: brakes, name: Brakes}\n");
        RuleSets.Snapshot.Write(_rules.FullName);
        var bytes = File.ReadAllBytes(Snapshot);
        bytes[at < 0 ? bytes.Length + at : at] ^= 1;
        File.WriteAllBytes(Snapshot, bytes);

        Assert.False(RuleSets.Snapshot.IsUsable(_rules.FullName));
        Assert.Equal("brakes", Assert.Single(RuleSetLoader.Load(_rules.FullName).Catalogue.Systems).Id);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(20)]
    [InlineData(60)]
    public void Load_SnapshotCutShort_ReadsTheFiles(int length)
    {
        WriteWords("words.yaml", "systems:\n  - {id: brakes, name: Brakes}\n");
        RuleSets.Snapshot.Write(_rules.FullName);
        File.WriteAllBytes(Snapshot, File.ReadAllBytes(Snapshot)[..length]);

        Assert.False(RuleSets.Snapshot.IsUsable(_rules.FullName));
        Assert.Equal("brakes", Assert.Single(RuleSetLoader.Load(_rules.FullName).Catalogue.Systems).Id);
    }

    [Fact]
    public void Write_FaultyRules_NamesThePlaceAndWritesNothing()
    {
        WriteWords("words.yaml", "systems:\n  - {id: brakes, nime: Brakes}\n");

        var wrong = Assert.Throws<RuleSetException>(() => RuleSets.Snapshot.Write(_rules.FullName));
        Assert.Contains(wrong.Errors, error => error is { File: "words.yaml", Line: 2 });
        Assert.False(File.Exists(Snapshot));
    }

    private void WriteWords(string name, string text) => File.WriteAllText(Path.Combine(_rules.FullName, name), text);

    private void CopyRepository()
    {
        foreach (var file in Directory.EnumerateFiles(RepositoryRules.Directory, "*.yaml", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(_rules.FullName, Path.GetRelativePath(RepositoryRules.Directory, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }
}
