using System.CommandLine;
using Advice.Rules.Layout;

namespace AdviceService.Verbs;

/// <summary>The verb "rules fmt": one layout for all rule files.</summary>
internal static class FormatVerb
{
    public static Command Command(RuleOptions rules)
    {
        var check = new Option<bool>("--check") { Description = "Change nothing, name the files that have another layout, and fail if there are any" };
        var format = new Command("fmt", "Bring rule and case files into one layout: indentation, order of members, quotes, blank lines; comments stay") { check };
        format.SetAction(parsed => Format(rules.ForAuthor(parsed), parsed.GetValue(check)));
        return format;
    }

    private static int Format(RuleFolders folders, bool check)
    {
        var (files, other, stay) = (0, 0, 0);
        foreach (var folder in folders.Overlays.Prepend(folders.Rules))
        {
            foreach (var file in FileLayout.Of(folder))
            {
                files++;
                stay += file.Text is null ? 1 : 0;
                Messages.Print(Console.Error, file.Errors, folder);
                if (file.Text is null || file.IsCanonical)
                    continue;
                other++;
                Console.WriteLine(Path.Combine(folder, file.Path));
                if (!check)
                    File.WriteAllText(Path.Combine(folder, file.Path), file.Text);
            }
        }

        Console.WriteLine($"{files} files: {other} {(check ? "have another layout" : "brought into the layout")}, {stay} could not be laid out.");
        return stay > 0 || (check && other > 0) ? 1 : 0;
    }
}
