namespace Jackwork.Cli;

/// <summary>The command line or the design is wrong; the message is complete as it stands.</summary>
internal sealed class BadInputException(string message) : Exception(message);
