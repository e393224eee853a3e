using System.Text;

namespace Advice.Symptoms.Words;

/// <summary>Quotes from a text, white space and control characters reduced to single spaces.</summary>
internal static class Excerpt
{
    /// <summary>The text between two places.</summary>
    public static string Of(string text, int start, int end)
    {
        var quote = new StringBuilder(end - start);
        foreach (var c in text.AsSpan(start, end - start))
        {
            if (!char.IsWhiteSpace(c) && !char.IsControl(c))
                quote.Append(c);
            else if (quote.Length > 0 && quote[^1] != ' ')
                quote.Append(' ');
        }

        return quote.ToString().TrimEnd();
    }

}
