using System.Globalization;

namespace Benchmarks;

/// <summary>CPU time of this process for each call of several ways of doing the same, measured in turn.</summary>
internal static class CpuTime
{
    private const int Rounds = 7;

    /// <summary>Medians, µs per call.</summary>
    /// <param name="least">A round of one way lasts at least that much CPU time.</param>
    /// <param name="ways">What to run: by name, for the call with that number.</param>
    public static Dictionary<string, double> Of(TimeSpan least, params (string Name, int Calls, Action<int> Call)[] ways)
    {
        foreach (var way in ways)
            Round(way.Calls, way.Call, 5 * least);
        var rounds = ways.ToDictionary(way => way.Name, _ => new List<double>());
        for (var round = 0; round < Rounds; round++)
        {
            foreach (var way in ways)
                rounds[way.Name].Add(Round(way.Calls, way.Call, least));
        }

        return rounds.ToDictionary(one => one.Key, one => one.Value.Order().ElementAt(Rounds / 2));
    }

    public static string Text(double microseconds) => microseconds.ToString(microseconds < 10 ? "0.00" : microseconds < 100 ? "0.0" : "0", CultureInfo.InvariantCulture);

    private static double Round(int calls, Action<int> call, TimeSpan least)
    {
        var done = 0;
        var start = Environment.CpuUsage.TotalTime;
        TimeSpan used;
        do
        {
            for (var i = 0; i < calls; i++)
                call(i);
            done += calls;
            used = Environment.CpuUsage.TotalTime - start;
        }
        while (used < least);
        return used.TotalMicroseconds / done;
    }
}
