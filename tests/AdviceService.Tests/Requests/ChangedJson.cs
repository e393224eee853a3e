using System.Text.Json.Nodes;

namespace AdviceService.Tests.Requests;

/// <summary>Changes one value somewhere in a JSON document.</summary>
internal static class ChangedJson
{
    /// <summary>Replaces the value at one of its places, counted in the order of the document and round again.</summary>
    public static void Replace(JsonNode body, int which, string json) => At(body, which, (list, i) => list[i] = JsonNode.Parse(json), (members, name) => members[name] = JsonNode.Parse(json));

    /// <summary>Drops it.</summary>
    public static void Drop(JsonNode body, int which) => At(body, which, (list, i) => list.RemoveAt(i), (members, name) => members.Remove(name));

    private static void At(JsonNode body, int which, Action<JsonArray, int> inList, Action<JsonObject, string> inObject)
    {
        var places = Places(body).ToList();
        if (places.Count == 0)
            return;
        switch (places[which % places.Count])
        {
            case (JsonArray list, int index):
                inList(list, index);
                break;
            case (JsonObject members, string name):
                inObject(members, name);
                break;
        }
    }

    private static IEnumerable<(JsonNode Parent, object Key)> Places(JsonNode? node) => node switch
    {
        JsonObject members => members.SelectMany(member => Places(member.Value).Prepend((members, member.Key))),
        JsonArray list => list.SelectMany((element, index) => Places(element).Prepend((list, index))),
        _ => [],
    };
}
