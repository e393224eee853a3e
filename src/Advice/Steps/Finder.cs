using Advice.Knowledge;

namespace Advice.Steps;

/// <summary>That a check finds a fault, as far as no case is needed to know it.</summary>
/// <param name="Check">Place of the check among all checks by id.</param>
/// <param name="Surely">How surely it finds the fault where it can be done.</param>
/// <param name="Settled">Whether the fault's own existence settles something that the check needs.</param>
internal readonly record struct Finder(int Check, double Surely, bool Settled)
{
    /// <summary>The checks that find a fault.</summary>
    public static Finder[] Of(string fault, IReadOnlyDictionary<string, int> places, Catalogue catalogue)
    {
        var given = catalogue.FitsByFault[fault].SelectMany(rule => rule.When.Tests).ToList();
        return
        [
            .. catalogue.ChecksByFault[fault].Select(check => new Finder(
                places[check.Id], check.Surely(fault),
                catalogue.FitsByCheck[check.Id].Any(rule => rule.When.Tests.All(test => given.Exists(test.FollowsFrom))))),
        ];
    }
}
