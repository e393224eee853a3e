using System.Globalization;
using System.Text.Json.Nodes;
using Advice.Evidence;
using CsvHelper;

namespace AdviceService.Tests.Fleet;

/// <summary>Twenty thousand real vehicle profiles without names, each with a generated report: one of the catalogue's symptoms, or words for it.</summary>
internal static class RealFleet
{
    public const int Count = 20_000;

    /// <summary>One in so many lines is not a request.</summary>
    public const int EachUnreadable = 100;

    private static readonly string[] Words =
    [
        "It squeals when braking", "Clunk from the rear over bumps", "It overheats in traffic", "Hard to start when cold", "",
        "Whine from the rear that rises with speed", "Smell of burning oil", "Check engine light is on, P0420", "Grinding noise when turning",
    ];

    private static readonly Dictionary<string, string> Drivelines = new()
    {
        ["RWD"] = "rearWheelDrive",
        ["FWD"] = "frontWheelDrive",
        ["AWD"] = "allWheelDrive",
        ["4WD"] = "fourWheelDrive",
    };

    private static readonly Dictionary<string, string> Transmissions = new()
    {
        ["automatic"] = "automatic",
        ["manual"] = "manual",
        ["cvt"] = "cvt",
        ["automated-manual/dct"] = "dualClutch",
        ["single-speed"] = "singleSpeed",
    };

    private static readonly Dictionary<string, string> Fuels = new()
    {
        ["petrol"] = "gasoline",
        ["diesel"] = "diesel",
        ["electric"] = "electric",
        ["cng"] = "cng",
    };

    /// <summary>The fleet, a line for each vehicle; the test skips without the profiles.</summary>
    public static string Lines(IRuleBook rules)
    {
        var shared = Environment.GetEnvironmentVariable("ADVICE_SHARED");
        Skip.If(shared is null, "ADVICE_SHARED names no folder with vehicle profiles.");
        using var csv = new CsvReader(File.OpenText(Path.Combine(shared!, "data", "vehicles.csv")), CultureInfo.InvariantCulture);
        var profiles = csv.GetRecords<dynamic>().Cast<IDictionary<string, object>>().ToList();
        var symptoms = rules.Catalogue.Symptoms.Keys.Order(StringComparer.Ordinal).ToList();
        return string.Concat(Enumerable.Range(1, Count).Select(i => Line(i, profiles[(i - 1) % profiles.Count], symptoms) + "\n"));
    }

    private static string Line(int id, IDictionary<string, object> profile, List<string> symptoms)
    {
        var line = new JsonObject { ["id"] = id, ["vehicle"] = Vehicle(id, name => (string)profile[name]) };
        if (id % 2 == 0)
            line["complaint"] = Words[id / 2 % Words.Length];
        else
            line["symptoms"] = new JsonArray(new JsonObject { ["symptom"] = symptoms[id / 2 % symptoms.Count] });
        if (id % EachUnreadable == 0)
            line["vehicle"] = "breaks the contract";
        return line.ToJsonString();
    }

    private static JsonObject Vehicle(int id, Func<string, string> of)
    {
        var engine = new JsonObject();
        if (int.TryParse(of("cylinders"), CultureInfo.InvariantCulture, out var cylinders))
            engine["cylinders"] = cylinders;
        engine["forcedInduction"] = of("turbo") == "Y" || of("supercharged") == "Y";
        return new JsonObject
        {
            ["modelYear"] = int.Parse(of("model_year"), CultureInfo.InvariantCulture),
            ["odometer"] = new JsonObject { ["value"] = id * 7919 % 300_000, ["unit"] = "km" },
            ["body"] = of("body") switch { "pickup" => "pickup", "suv" => "suv", "van" or "minivan" => "van", _ => "car" },
            ["driveline"] = Drivelines.GetValueOrDefault(of("driveline"), "unknown"),
            ["transmission"] = Transmissions.GetValueOrDefault(of("transmission"), "unknown"),
            ["fuel"] = of("hybrid") switch { "hybrid" => "hybrid", "plug-in-hybrid" => "plugInHybrid", _ => Fuels.GetValueOrDefault(of("fuel"), "unknown") },
            ["engine"] = of("fuel") == "electric" ? null : engine,
            ["equipment"] = new JsonObject { ["startStop"] = of("stop_start") == "Y" },
        };
    }
}
