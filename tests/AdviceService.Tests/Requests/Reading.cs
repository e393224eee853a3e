using System.Text;
using Advice.Documents.Requests;
using Advice.Rules.RuleSets;
using AdviceService.Requests;

namespace AdviceService.Tests.Requests;

/// <summary>A reader over the rules of the repository, and bodies for it.</summary>
internal static class Reading
{
    public static DateOnly Today { get; } = new(2026, 3, 1);

    public static RuleBook Book { get; } = RuleSetLoader.Load(Path.Combine(AppContext.BaseDirectory, "rules"));

    public static RequestReader Reader { get; } = new(Book.Catalogue);

    /// <summary>The example of the contract, with nothing left out.</summary>
    public const string Full =
        """
        { "asOf": "2026-03-01", "jurisdiction": "US",
          "vehicle": { "modelYear": 2009, "odometer": {"value": 178000, "unit": "km"}, "body": "suv", "driveline": "fourWheelDrive", "transmission": "automatic",
            "fuel": "gasoline", "engine": {"timingDrive": "belt", "interference": true, "cylinders": 6, "ignition": "coilOnPlug", "forcedInduction": false, "directInjection": true},
            "steering": {"wheelDiameter": {"value": 16, "unit": "in"}, "assist": "power"}, "brakes": {"front": "disc", "rear": "drum", "parking": "cable", "fluid": "dot4"},
            "rearAxle": "solid", "equipment": {"limitedSlip": true, "antilockBrakes": true, "airSuspension": false, "airConditioning": true, "sunroof": false,
            "keylessStart": false, "startStop": false, "winterTyres": false}, "duty": "severe" },
          "complaint": "Big clunk from underneath when I shift from reverse into drive",
          "symptoms": [ {"symptom": "clunk", "occasions": ["selecting-gear"], "position": "rear", "present": true} ],
          "unsure": ["squeal"], "troubleCodes": ["P0135", "P0301"],
          "findings": [ {"check": "brake-pad-thickness", "position": "front-left", "value": 2.5, "unit": "mm", "on": "2026-02-01", "odometer": {"value": 177000, "unit": "km"},
                         "limit": {"minimum": 3, "maximum": 20, "unit": "mm", "source": "stamped on the part"}}, {"check": "coolant-condition", "observation": "rusty"} ],
          "services": [ {"item": "differential-fluid", "on": "2019-05-01", "odometer": {"value": 60000, "unit": "mi"}} ],
          "workshop": {"lift": false, "minutes": 60, "audience": "owner"}, "limit": 8 }
        """;

    /// <summary>A body with an empty vehicle and these members.</summary>
    public static string With(string members) => $"{{\"vehicle\":{{}},{members}}}";

    /// <summary>A body with one finding of these members.</summary>
    public static string Finding(string members) => With($"\"findings\":[{{{members}}}]");

    /// <summary>A body whose vehicle has these members.</summary>
    public static string Vehicle(string members) => $"{{\"vehicle\":{{{members}}}}}";

    public static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    public static ReadResult<AdviceRequest> Read(string body) => Reader.Read(Bytes(body), Today);

    /// <summary>"pointer code" of every error, ordered.</summary>
    public static IEnumerable<string> Errors(ReadResult<AdviceRequest> read) =>
        read.Errors.Select(error => $"{error.Pointer} {error.Code}").Order(StringComparer.Ordinal);
}
