namespace AdviceService.Http;

/// <summary>What a person who starts the service wants to know.</summary>
internal static class Greeting
{
    /// <summary>Prints where the routes are and a request to paste.</summary>
    public static void Print(IEnumerable<string> urls)
    {
        if (urls.FirstOrDefault() is not { } url)
            return;
        url = url.TrimEnd('/');
        Console.WriteLine(
            $$"""
            AdviceService listens on {{url}}
            All routes, to read and to try:  {{url}}/docs
            A request to paste:

            curl -s {{url}}/v1/advice -H 'Content-Type: application/json' -d '{"vehicle":{"modelYear":2014,"driveline":"frontWheelDrive","fuel":"gasoline"},"complaint":"It grinds when I brake and pulls to the left."}'

            """);
    }
}
