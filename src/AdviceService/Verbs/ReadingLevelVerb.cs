using System.CommandLine;
using System.Globalization;
using Advice.Rules.Bench.Reading;

namespace AdviceService.Verbs;

/// <summary>The verb "rules reading-level": how hard what owners read is to read.</summary>
internal static class ReadingLevelVerb
{
    private const int FewestWords = 8;

    public static Command Command(RuleOptions rules)
    {
        var worst = new Option<int>("--worst") { Description = "How many of the hardest texts of each kind to show", DefaultValueFactory = _ => 3 };
        var level = new Command("reading-level", "Show the school year (Flesch-Kincaid) in which the owner's texts are understood, by kind, and the hardest") { worst };
        level.SetAction(parsed => Show(rules.ForAuthor(parsed), parsed.GetValue(worst)));
        return level;
    }

    private static int Show(RuleFolders folders, int worst)
    {
        if (RuleFolder.Load(folders) is not { } book)
            return 1;
        var kinds = OwnerTexts.Of(book.Catalogue);
        foreach (var (kind, texts) in kinds)
        {
            Print(kind, ReadingLevel.Of(texts.Select(one => one.Text)), texts.Count);
            // Of a few words the formula says little.
            var hardest = texts.Select(one => (one.Id, one.Text, Level: ReadingLevel.Of([one.Text]))).Where(one => one.Level.Words >= FewestWords)
                .OrderByDescending(one => one.Level.Grade).ThenBy(one => one.Id, StringComparer.Ordinal).Take(worst);
            foreach (var (id, text, level) in hardest)
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"    {level.Grade,4:0.0}  {id}: {text}"));
        }

        Print("all of it", ReadingLevel.Of(kinds.SelectMany(kind => kind.Texts).Select(one => one.Text)), kinds.Sum(kind => kind.Texts.Count));
        return 0;
    }

    private static void Print(string kind, ReadingLevel level, int count) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{kind,-42} {count,5} texts, grade {level.Grade,4:0.0}"));
}
