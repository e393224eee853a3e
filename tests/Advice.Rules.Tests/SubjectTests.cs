using Advice.Symptoms;

namespace Advice.Rules.Tests;

/// <summary>What a text is about, with the vocabulary and the topics of the repository.</summary>
public class SubjectTests
{
    private static readonly ComplaintReader Reader = new(
        RepositoryRules.Book.Catalogue.Symptoms.Values, RepositoryRules.Book.Catalogue.Occasions.Values, RepositoryRules.Book.Catalogue.Positions.Values,
        RepositoryRules.Book.Catalogue.Systems, RepositoryRules.Book.Catalogue.Services.Values, RepositoryRules.Book.Catalogue.Topics);

    [Theory]
    [InlineData("The trombone squeals badly", false)]
    [InlineData("My trombone squeals badly", false)]
    [InlineData("The trombone squeals on the highway", true)]
    [InlineData("The tensioner squeals badly", true)]
    [InlineData("The tensionner squeals badly", true)]
    [InlineData("It squeals badly", true)]
    public void Read_OpeningWithAThingThatIsNoPart_IsAboutSomethingElse(string text, bool isRead) =>
        Assert.Equal(isRead, Reader.Read(text).Reports.Count > 0);
}
