using AdviceService.Json;

namespace AdviceService.Mcp;

/// <summary>The tools of this service.</summary>
internal static class AdviceTools
{
    /// <summary>All of them, in the order in which they are listed.</summary>
    public static IReadOnlyList<AdviceTool> All { get; } =
    [
        AdviceTool.Of(
            "advise", "Advice on a vehicle",
            "Call this when a driver notices something about a vehicle. Give what is known of the vehicle and the driver's own words as complaint. "
            + "It says whether it may be driven, what to inspect first and how, with cautions and reasons, and which question to ask next; "
            + "put the symptom of a question that the driver cannot answer into unsure, and it is not asked again.",
            "advise", (desk, arguments) => desk.Answer(arguments), Written.As.AdviceDocument),
        AdviceTool.Of(
            "read_complaint", "Read a complaint",
            "Call this to see how a driver's words and trouble codes are understood: symptoms, denials, service history, what was not understood, and what to ask.",
            "intake", (desk, arguments) => desk.Intake(arguments), Written.As.IntakeDocument),
        AdviceTool.Of(
            "inspect", "The whole inspection",
            "Call this to plan the maintenance inspection of a vehicle: every check that applies to it, within the minutes given, and what is due.",
            "inspect", (desk, arguments) => desk.Inspect(arguments), Written.As.AdviceDocument),
        AdviceTool.Of(
            "judge", "Judge findings",
            "Call this when something was measured or seen at a check: it says what that means against the limit for this vehicle, place and jurisdiction.",
            "judge", (desk, arguments) => desk.Judge(arguments), Written.As.JudgementsAnswer),
        AdviceTool.Of(
            "due", "What is due",
            "Call this to learn which services are overdue, due or soon, by distance and time.",
            "reckonDue", (desk, arguments) => desk.Reckon(arguments), Written.As.DueAnswer),
        AdviceTool.Of(
            "project_wear", "Project wear",
            "Call this with dated readings of one wearing part and the distance driven: when it reaches its limits, earliest to latest, or why that cannot be said.",
            "project", (desk, arguments) => desk.Project(arguments), Written.As.ProjectionDocument),
        AdviceTool.Of(
            "why_not", "Why a fault or check did not come up",
            "Call this when someone asks why the advice does not name a certain fault or check: the members of a request for advice, and fault or check.",
            "whyNot", (desk, arguments) => desk.WhyNot(arguments), Written.As.WhyNotDocument),
        AdviceTool.Of(
            "search_catalogue", "Search the catalogue",
            "Call this to find the id of a symptom, fault, check, caution or system from words, before giving ids to another tool.",
            "searchCatalogue", (desk, arguments) => desk.Search(arguments), Written.As.CatalogueSearchResult),
    ];
}
