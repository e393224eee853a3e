using System.Text.Json;
using Advice.Documents.Requests;
using Advice.Intake;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Rules.RuleSets;
using Advice.Vehicles;
using CsCheck;

namespace Advice.Rules.Tests.Laws;

/// <summary>What must hold for every request, whatever the rules say.</summary>
public class PipelineLawTests
{
    private static readonly Catalogue Known = RepositoryRules.Book.Catalogue;
    private static readonly GiveAdvice Advice = new(RepositoryRules.Book, TimeProvider.System);

    /// <summary>Symptoms that lead to each check by themselves, where nothing is known of the vehicle.</summary>
    private static readonly Lazy<ILookup<string, string>> StepsByCheck = new(() => Known.Symptoms.Keys
        .SelectMany(symptom => Advice.To(new() { Vehicle = new(), Symptoms = [new() { Symptom = symptom }], Limit = 50 }).Steps, (symptom, step) => (step.Check, symptom))
        .ToLookup(one => one.Check, one => one.symptom));

    [Fact]
    public void To_SymptomsInAnotherOrderAndTwice_SameBytes() =>
        RandomRequests.Any.Sample(
            request =>
            {
                var changed = request with
                {
                    Symptoms = [.. request.Symptoms.Reverse(), request.Symptoms[0]],
                    TroubleCodes = [.. request.TroubleCodes.Reverse(), .. request.TroubleCodes],
                };
                Assert.Equal(JsonSerializer.Serialize(Advice.To(request)), JsonSerializer.Serialize(Advice.To(changed)));
            },
            iter: 300);

    [Fact]
    public void To_SameRequestToRulesReadAgain_SameBytes()
    {
        var again = new GiveAdvice(RuleSetLoader.Load(RepositoryRules.Directory), TimeProvider.System);
        RandomRequests.Any.Sample(
            request => Assert.Equal(JsonSerializer.Serialize(Advice.To(request)), JsonSerializer.Serialize(again.To(request))), iter: 150);
    }

    [Fact]
    public void To_AnyVehicle_NothingThatItCannotHaveAndOnlyIfWhatItMayLack()
    {
        var conditional = 0;
        RandomRequests.Any.Sample(
            request =>
            {
                var advice = Advice.To(request);
                var vehicle = VehicleReader.Read(request.Vehicle, request.AsOf!.Value);
                foreach (var suspect in advice.Suspects)
                {
                    Assert.DoesNotContain(Known.FitsByFault[suspect.Fault], fits => fits.When.Test(vehicle) == Truth.No);
                    AssertSaysOnlyIf(suspect.OnlyIf, Known.FitsByFault[suspect.Fault], vehicle);
                }

                foreach (var step in advice.Steps)
                {
                    Assert.DoesNotContain(Known.FitsByCheck[step.Check], fits => fits.When.Test(vehicle) == Truth.No);
                    if (AssertSaysOnlyIf(step.OnlyIf, Known.FitsByCheck[step.Check], vehicle))
                        Interlocked.Increment(ref conditional);
                }
            },
            iter: 500);
        Assert.True(conditional > 100, "Hardly any step had a condition: the law was not put to the test.");
    }

    private static bool AssertSaysOnlyIf(string? onlyIf, IEnumerable<FitsRule> fits, Vehicle vehicle)
    {
        var open = fits.Where(rule => VehicleFit.IsOpen(rule, vehicle)).Select(rule => rule.OnlyIf).ToList();
        if (open.Count > 0)
            Assert.Contains(onlyIf, open);
        return open.Count > 0;
    }

    [Fact]
    public void To_AnyRequest_CautionsOfStepsAreGivenAndSuspectsAreRaisedByRules() =>
        RandomRequests.Any.Sample(
            request =>
            {
                var advice = Advice.To(request);
                var cautions = advice.Cautions.Select(caution => caution.Id).ToHashSet();
                Assert.All(advice.Steps, step => Assert.Subset(cautions, step.Cautions.ToHashSet()));
                Assert.All(advice.Steps, step => Assert.NotEmpty(step.Reasons));
                Assert.All(advice.Suspects, suspect => Assert.NotEmpty(suspect.Reasons));
                Assert.Equal(advice.Suspects.OrderByDescending(suspect => suspect.Probability).Select(suspect => suspect.Probability),
                    advice.Suspects.Select(suspect => suspect.Probability));
            },
            iter: 300);

    [Theory]
    [InlineData("frontWheelDrive", "gasoline", "universal-joint-play")]
    [InlineData("frontWheelDrive", "diesel", "propeller-shaft-look")]
    [InlineData("rearWheelDrive", "electric", "spark-plug-look")]
    [InlineData("frontWheelDrive", "electric", "engine-oil-level")]
    [InlineData("rearWheelDrive", "diesel", "spark-plug-look")]
    [InlineData("rearWheelDrive", "gasoline", "glow-plug-resistance")]
    public void To_SymptomThatLeadsThere_NeverAStepThatMakesNoSenseOnThatVehicle(string driveline, string fuel, string check)
    {
        var symptoms = StepsByCheck.Value[check].ToList();
        foreach (var symptom in symptoms)
        {
            var advice = Advice.To(new() { Vehicle = new() { Driveline = driveline, Fuel = fuel }, Symptoms = [new() { Symptom = symptom }], Limit = 50 });
            Assert.DoesNotContain(advice.Steps, step => step.Check == check);
        }

        Assert.True(symptoms.Count > 0, $"No symptom alone leads to {check}: the law was not put to the test.");
    }

    /// <summary>The leak of a sign is relative to what the listed faults cause, so that only ratios of base rates matter. Signs whose
    /// leak meets a bound in one of the two sets are left out.</summary>
    [Fact]
    public void To_BaseRatesDividedByTen_OneSymptomSuspectsStayWithinAFewPercent()
    {
        var scaled = new GiveAdvice(ScaledRules.DividedByTen(), TimeProvider.System);
        var (worst, total, count) = (0.0, 0.0, 0);
        foreach (var symptom in Known.Symptoms.Keys.Where(symptom => Known.Leaks[Sign.Symptom(symptom)] is > 0.001 and < 0.05).Order(StringComparer.Ordinal))
        {
            var request = new AdviceRequest { Vehicle = new() { Fuel = "gasoline" }, Symptoms = [new() { Symptom = symptom }] };
            var rare = scaled.To(request).Suspects.ToDictionary(suspect => (suspect.Fault, suspect.Place), suspect => suspect.Probability);
            foreach (var suspect in Advice.To(request).Suspects.Take(5))
            {
                var difference = Math.Abs(suspect.Probability - rare.GetValueOrDefault((suspect.Fault, suspect.Place)));
                (worst, total, count) = (Math.Max(worst, difference), total + difference, count + 1);
            }
        }

        Assert.True(total / count < 0.03 && worst < 0.12, $"mean {total / count:F4}, worst {worst:F4} of {count}");
    }
}
