using k8s;
using k8s.Models;

namespace AdviceService.Tests.Deploy;

/// <summary>The manifests against the types of the Kubernetes API (KubernetesClient, generated from its published OpenAPI description).</summary>
public class ManifestTests
{
    public static TheoryData<string> Files => [.. Directory.EnumerateFiles(Path.Combine(Repository.Root, "deploy"), "*.yaml").Select(file => Path.GetFileName(file)!)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Manifest_Strictly_HasOnlyMembersThatKubernetesKnows(string file)
    {
        var text = File.ReadAllText(Path.Combine(Repository.Root, "deploy", file));

        var objects = KubernetesYaml.LoadAllFromString(text, strict: true);

        Assert.NotEmpty(objects);
        Assert.All(objects, one => Assert.False(string.IsNullOrEmpty(((IMetadata<V1ObjectMeta>)one).Metadata.Name)));
    }

    [Fact]
    public void Manifest_MisspeltMember_IsRefused() => Assert.ThrowsAny<Exception>(() => KubernetesYaml.LoadAllFromString(
        File.ReadAllText(Path.Combine(Repository.Root, "deploy", "service.yaml")).Replace("replicas:", "replicaz:", StringComparison.Ordinal), strict: true));

    [Theory]
    [MemberData(nameof(Files))]
    public void Pods_Always_RunWithoutRightsOnAReadOnlyRoot(string file)
    {
        var pods = Pods(file).ToList();

        Assert.NotEmpty(pods);
        Assert.All(pods, pod =>
        {
            Assert.True(pod.SecurityContext.RunAsNonRoot);
            Assert.False(pod.AutomountServiceAccountToken);
            Assert.All(pod.Containers, container =>
            {
                Assert.True(container.SecurityContext.ReadOnlyRootFilesystem);
                Assert.False(container.SecurityContext.AllowPrivilegeEscalation);
                Assert.Equal(["ALL"], container.SecurityContext.Capabilities.Drop);
                Assert.Equal(["cpu", "memory"], container.Resources.Requests.Keys.Order(StringComparer.Ordinal));
            });
        });
    }

    [Fact]
    public void Selectors_Always_FindThePodsOfTheirDeployment()
    {
        var objects = Objects("service.yaml");
        var labels = objects.OfType<V1Deployment>().Single().Spec.Template.Metadata.Labels;

        foreach (var selector in (IDictionary<string, string>[])
            [
                objects.OfType<V1Deployment>().Single().Spec.Selector.MatchLabels, objects.OfType<V1Service>().Single().Spec.Selector,
                objects.OfType<V1PodDisruptionBudget>().Single().Spec.Selector.MatchLabels, objects.OfType<V1NetworkPolicy>().Single().Spec.PodSelector.MatchLabels,
            ])
            Assert.Subset(labels.ToHashSet(), selector.ToHashSet());
    }

    [Fact]
    public void ScoreJob_Always_HasAPodForEachShard()
    {
        var job = Objects("score-job.yaml").OfType<V1Job>().Single();

        Assert.Equal("Indexed", job.Spec.CompletionMode);
        Assert.Contains($"$(JOB_COMPLETION_INDEX)/{job.Spec.Completions}", job.Spec.Template.Spec.Containers.Single().Args);
    }

    private static List<object> Objects(string file) => [.. KubernetesYaml.LoadAllFromString(File.ReadAllText(Path.Combine(Repository.Root, "deploy", file)), strict: true)];

    private static IEnumerable<V1PodSpec> Pods(string file) => Objects(file).Select(one => one switch
    {
        V1Deployment deployment => deployment.Spec.Template.Spec,
        V1Job job => job.Spec.Template.Spec,
        _ => null,
    }).OfType<V1PodSpec>();
}
