using System.Text.Json;
using System.Text.Json.Nodes;
using Advice.Counterfactuals;
using Advice.Documents.Requests;
using Advice.Intake;
using Advice.Knowledge.Conditions;
using Advice.Rules.Tests.Cases;
using Advice.Vehicles;

namespace Advice.Rules.Tests;

/// <summary>Holds the table of where a request states a fact against the one that reads it.</summary>
public class FactMemberTests
{
    private static readonly DateOnly Today = new(2026, 3, 1);

    public static TheoryData<string> Facts => [.. RepositoryRules.Book.Catalogue.Facts.Keys.Where(fact => fact != Vehicle.AgeYears).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Facts))]
    public void Member_OfEachValue_IsReadBackAsThatFact(string id)
    {
        var fact = RepositoryRules.Book.Catalogue.Facts[id];
        IEnumerable<(FactMember? Member, object Value)> members = fact.Kind switch
        {
            FactKind.Number => [(FactMember.Of(id, 4), 4.0)],
            FactKind.Truth => [(FactMember.Of(id, "true"), "true"), (FactMember.Of(id, "false"), "false")],
            _ => fact.Values.Keys.Select(word => (FactMember.Of(id, word), (object)word)),
        };

        Assert.All(members, one =>
        {
            Assert.NotNull(one.Member);
            Assert.Equal(one.Value, Read(one.Member.Set(new VehicleDescription()), id));
            Assert.Equal(one.Value, Read(Asked(one.Member), id));
        });
    }

    /// <summary>An age follows from the model year.</summary>
    [Fact]
    public void Member_OfAnAge_IsNone() => Assert.Null(FactMember.Of(Vehicle.AgeYears, 4));

    private static VehicleDescription Asked(FactMember member)
    {
        var value = member.At.Split('/')[1..].Reverse().Aggregate(member.Json.DeepClone(), (inner, name) => new JsonObject { [name] = inner });
        return PlainRequest.Read(JsonSerializer.SerializeToElement(value), Today).Request!.Vehicle;
    }

    private static object Read(VehicleDescription description, string fact)
    {
        var vehicle = VehicleReader.Read(description, Today);
        var others = vehicle.Words.Keys.Concat(vehicle.Numbers.Keys).Where(one => one != fact && !(fact == "modelYear" && one == Vehicle.AgeYears));
        Assert.Empty(others);
        return vehicle.Word(fact) ?? (object)vehicle.Number(fact)!;
    }
}
