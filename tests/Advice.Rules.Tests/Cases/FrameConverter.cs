using System.Text.Json;
using System.Text.Json.Serialization;
using Advice.Arithmetic;
using Advice.Findings;
using Advice.FreezeFrames;

namespace Advice.Rules.Tests.Cases;

/// <summary>Reads a freeze frame into the units of its members.</summary>
internal sealed class FrameConverter : JsonConverter<Given>
{
    public override Given Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => Of(JsonElement.ParseValue(ref reader));

    public override void Write(Utf8JsonWriter writer, Given value, JsonSerializerOptions options) => throw new NotSupportedException();

    public static Given Of(JsonElement frame) => new(frame.EnumerateObject().ToDictionary(
        member => FrameInputs.All.FirstOrDefault(input => input.Name == member.Name) ?? throw new JsonException(member.Name), Value));

    private static object Value(JsonProperty member) => member.Value.ValueKind == JsonValueKind.String
        ? member.Value.GetString()!
        : UnitConversion.ConvertAsRead(
            member.Value.GetProperty("value").GetDouble(), member.Value.GetProperty("unit").GetString()!,
            FrameInputs.All.OfType<NumberInput>().Single(input => input.Name == member.Name).Unit!)!;
}
