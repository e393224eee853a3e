using System.Globalization;
using Advice.Documents;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Spectre.Console;

namespace AdviceService.Terminal;

/// <summary>Prints advice for a person to read: whether to drive, cautions, steps with reasons, questions.</summary>
internal sealed class AdvicePrinter(IAnsiConsole console)
{
    /// <summary>Prints the document.</summary>
    public void Print(AdviceDocument advice)
    {
        console.MarkupLine($"[{Colour(advice.Driving.Advice)}]{Markup.Escape(advice.Summary)}[/]");
        List("Why", advice.Driving.Because.Select(reason => reason.Text));
        List("Take care", advice.Cautions.Select(caution => caution.Text));
        if (advice.Steps.Count > 0)
            console.Write(Steps(advice.Steps));
        foreach (var step in advice.Steps)
            Print(step);
        List("Suspected", advice.Suspects.Take(5).Select(suspect => string.Create(CultureInfo.InvariantCulture,
            $"{suspect.Name}{(suspect.Place is { } place ? $", {place}" : "")}: {suspect.Probability * 100:0.#} %{(suspect.OnlyIf is { } condition ? $" (only if {condition})" : "")}")));
        List("Systems, likeliest first", advice.Systems.Select(system => system.Name));
        List("Judged", advice.Judgements.Concat(advice.AcrossAxles).Select(one => $"{one.Check} {one.Position}: {(one.Judged ? $"{one.Deficiency}, {one.Limit}" : one.Note)}"));
        List("Due", advice.Due.Select(item => $"{item.Name}: {item.Status.ToString().ToLowerInvariant()}. {item.Because}"));
        List("Normal", advice.Normal.Select(normal => normal.Text));
        List("To ask next", advice.Questions.Select(question => $"{question.Ask} Yes: {question.IfYes} No: {question.IfNo}"));
        List("Not understood", advice.Understood.NotUnderstood);
        List("Assumed", advice.Understood.Assumptions);
        console.WriteLine();
        console.WriteLine(advice.Notice);
    }

    private static Table Steps(IReadOnlyList<StepDocument> steps)
    {
        var table = new Table().Border(TableBorder.Rounded).AddColumns("", "Step", "Min", "By", "Looks for");
        foreach (var step in steps)
        {
            table.AddRow(
                step.Rank.ToString(CultureInfo.InvariantCulture),
                Markup.Escape(step.Title),
                step.Minutes.ToString(CultureInfo.InvariantCulture),
                step.DoneBy == DoneBy.Owner ? "owner" : "technician",
                Markup.Escape(string.Join("; ", step.Suspects.Take(2).Select(suspect => suspect.Name))));
        }

        return table;
    }

    private void Print(StepDocument step)
    {
        console.WriteLine();
        console.MarkupLine($"[bold]{step.Rank}. {Markup.Escape(step.Title)}[/]");
        if (step.OnlyIf is { } condition)
            Line($"Only if {condition}.");
        foreach (var reason in step.Reasons)
            Line($"Because: {reason.Text}");
        foreach (var line in step.Method)
            Line($"- {line}");
        foreach (var limit in step.Limits)
            Line($"Limit: {limit.Text} ({limit.Source})");
        foreach (var result in step.Results.Where(result => !result.Normal))
            Line($"Bad: {result.Text}");
    }

    private void List(string title, IEnumerable<string> lines)
    {
        var all = lines.ToList();
        if (all.Count == 0)
            return;
        console.WriteLine();
        console.MarkupLine($"[bold]{title}[/]");
        all.ForEach(line => Line($"- {line}"));
    }

    private void Line(string text) => console.Write(new Padder(new Spectre.Console.Text(text)).Padding(3, 0, 0, 0));

    private static string Colour(DrivingAdvice advice) => advice switch
    {
        DrivingAdvice.Stop => "red bold",
        DrivingAdvice.WorkshopOnly or DrivingAdvice.Soon or DrivingAdvice.Unknown => "yellow bold",
        _ => "green bold",
    };
}
