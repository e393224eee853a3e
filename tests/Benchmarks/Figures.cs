using Advice;
using Advice.Rules.Cases;
using Advice.Rules.RuleSets;
using Advice.Steps;
using Advice.Suspects;
using Advice.Symptoms;
using AdviceService.Http;
using BenchmarkDotNet.Running;
using Benchmarks.Floor;
using Benchmarks.Http;

namespace Benchmarks;

/// <summary>The figures of docs/performance.md, each by name.</summary>
internal static class Figures
{
    private static readonly TimeSpan Short = TimeSpan.FromMilliseconds(150);

    public static int Print(string[] names)
    {
        if (names[0] == "garbage")
        {
            BenchmarkRunner.Run<CoreBenchmarks>();
            return 0;
        }

        var corpus = new Corpus();
        Console.WriteLine($"{corpus.Book.Catalogue.Rules.Count} rules, {corpus.Cases.Count} cases");
        if (names[0] == "profile")
            Profile(corpus, names[1]);
        if (names[0] == "answers")
        {
            Console.WriteLine(Answers.Hash(corpus));
            Console.WriteLine($"{Readings.Hash(corpus.Book.Catalogue)} readings");
        }

        if (names[0] == "serve")
            CannedService.Run(corpus);
        if (names[0] is "all" or "http")
            Http(corpus);
        if (names[0] is "all" or "start")
            Start(names);
        if (names[0] is "all" or "tripled")
            Triple(corpus);
        if (names[0] is "all" or "matching")
            Match(corpus);
        if (names[0] is "all" or "advice")
            Advice(corpus);
        return 0;
    }

    private static void Http(Corpus corpus)
    {
        var times = HttpFigure.TimesAsync(corpus).GetAwaiter().GetResult();
        foreach (var (route, time) in times)
            Console.WriteLine($"server CPU of {route,-36} {CpuTime.Text(time),8} µs {CpuTime.Text(times[CannedService.Route] / time),8} of a canned reply's speed");
    }

    private static void Start(string[] names)
    {
        var service = names.ElementAtOrDefault(1) ?? Path.Combine(AppContext.BaseDirectory, "AdviceService.dll");
        var times = StartFigure.TimesAsync(service).GetAwaiter().GetResult();
        foreach (var (name, wall, cpu) in times)
            Console.WriteLine($"start to first answer {name,-34} {wall,6:0} ms ({cpu:0} ms CPU): {wall / times[0].Wall:0.00} x ({cpu / times[0].Cpu:0.00} x CPU)");
    }

    private static void Triple(Corpus corpus)
    {
        var tripled = TripledRules.Of(corpus.Book);
        var asked = corpus.Asked();
        var (one, three) = (new Assessment(corpus.Book), new Assessment(tripled));
        var times = CpuTime.Of(
            Short,
            ("matching", asked.Count, i => asked[i].Run(corpus.Book)),
            ("matching, rules tripled", asked.Count, i => asked[i].Run(tripled)),
            ("assessment", corpus.Cases.Count, i => one.Of(corpus.Cases[i])),
            ("assessment, rules tripled", corpus.Cases.Count, i => three.Of(corpus.Cases[i])));
        Console.WriteLine($"{tripled.Catalogue.Rules.Count} rules when tripled");
        foreach (var (name, time) in times)
            Console.WriteLine($"{name,-50} {CpuTime.Text(time),8} µs {CpuTime.Text(time / times[name.Split(',')[0]]),8} x");
    }

    private static void Match(Corpus corpus)
    {
        var matching = new Matching(corpus);
        Console.WriteLine(matching.Summary);
        var times = matching.Times();
        foreach (var (name, time) in times)
            Console.WriteLine($"{name,-50} {CpuTime.Text(time),8} µs {CpuTime.Text(time / times["service"]),8} x the service");
    }

    private static void Advice(Corpus corpus)
    {
        var floor = new PlainBook(corpus.Book.Catalogue, corpus.Book.Revision);
        var asked = corpus.Asked();
        var give = new GiveAdvice(corpus.Book, new CaseClock());
        var (nrules, plain) = (new Assessment(corpus.Book), new Assessment(floor));
        var five = corpus.OfFiveSymptoms();
        var gathered = five.Select(one => corpus.Book.Open(one).Gather()).ToList();
        var suspecting = new Suspecting(corpus.Book.Catalogue);
        var steps = new StepChoice(corpus.Book.Catalogue);
        var reader = new ComplaintReader(corpus.Book.Catalogue);
        var texts = corpus.Requests.Select(request => request.Complaint).OfType<string>().ToList();
        var times = CpuTime.Of(
            Short,
            ("rules of a whole advice", asked.Count, i => asked[i].Run(corpus.Book)),
            ("the same in plain C#", asked.Count, i => asked[i].Run(floor)),
            ("assessment", corpus.Cases.Count, i => nrules.Of(corpus.Cases[i])),
            ("assessment in plain C#", corpus.Cases.Count, i => plain.Of(corpus.Cases[i])),
            ("reading the complaint", texts.Count, i => reader.Read(texts[i])),
            ("triage", corpus.Requests.Count, i => give.Triage(corpus.Requests[i])),
            ("whole advice with questions", corpus.Requests.Count, i => give.To(corpus.Requests[i])),
            ("inference at five symptoms", five.Count, i => suspecting.Suspect(five[i], gathered[i])),
            ("inference and ranking at five symptoms", five.Count, i => steps.Choose(five[i], suspecting.Suspect(five[i], gathered[i]), true)));
        foreach (var (name, time) in times)
            Console.WriteLine($"{name,-50} {CpuTime.Text(time),8} µs");
        Console.WriteLine($"five symptoms: {five.Count} cases, faults per case {gathered.Average(one => one.Links.Select(link => link.Fault).Distinct().Count())}");
    }

    private static void Profile(Corpus corpus, string what)
    {
        var give = new GiveAdvice(corpus.Book, new CaseClock());
        var assessment = new Assessment(corpus.Book);
        var five = corpus.OfFiveSymptoms();
        var gathered = five.Select(one => corpus.Book.Open(one).Gather()).ToList();
        var suspecting = new Suspecting(corpus.Book.Catalogue);
        var steps = new StepChoice(corpus.Book.Catalogue);
        var reader = new ComplaintReader(corpus.Book.Catalogue);
        var texts = corpus.Requests.Select(request => request.Complaint).OfType<string>().ToList();
        var end = Environment.CpuUsage.TotalTime + TimeSpan.FromSeconds(15);
        for (var i = 0; Environment.CpuUsage.TotalTime < end; i++)
        {
            switch (what)
            {
                case "advice": give.To(corpus.Requests[i % corpus.Requests.Count]); break;
                case "read": reader.Read(texts[i % texts.Count]); break;
                case "triage": give.Triage(corpus.Requests[i % corpus.Requests.Count]); break;
                case "load": RuleSetLoader.Load(Corpus.Folder); break;
                case "desk": new AdviceDesk(corpus.Book, TimeProvider.System).Answer(corpus.Bodies[0]); break;
                case "assess": assessment.Of(corpus.Cases[i % corpus.Cases.Count]); break;
                default: steps.Choose(five[i % five.Count], suspecting.Suspect(five[i % five.Count], gathered[i % five.Count]), true); break;
            }
        }
    }
}
