using System.Text.RegularExpressions;

namespace Advice.Arithmetic;

/// <summary>A short text of a fixed form, such as the size on a tyre.</summary>
/// <param name="Name">Name of the member.</param>
/// <param name="What">What it says.</param>
/// <param name="Form">The form, which must bound the length.</param>
/// <param name="Example">A text of that form.</param>
public sealed record TextInput(string Name, string What, Regex Form, string Example) : Input(Name, What);
