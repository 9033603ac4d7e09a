namespace Jackwork.Bench.Sessions;

/// <summary>The texts of a design in order, with the place where the maker stands. Not safe for several threads at once.</summary>
internal sealed class TextHistory(string first)
{
    /// <summary>Most texts kept; whole texts are cheap.</summary>
    private const int Most = 500;

    private readonly List<string> texts = [first];
    private int at;
    private string? gesture;

    /// <summary>The text.</summary>
    public string Text => texts[at];

    /// <summary>Whether there is one before.</summary>
    public bool CanUndo => at > 0;

    /// <summary>Whether there is one after.</summary>
    public bool CanRedo => at < texts.Count - 1;

    /// <summary>Adds a text. Those of one gesture, such as a drag, count as one step.</summary>
    /// <returns>Whether anything changed.</returns>
    public bool Add(string text, string? ofGesture)
    {
        if (text == Text)
        {
            return false;
        }

        if (ofGesture is not null && ofGesture == gesture && at == texts.Count - 1 && at > 0)
        {
            texts[at] = text;
            return true;
        }

        texts.RemoveRange(at + 1, texts.Count - at - 1);
        texts.Add(text);
        if (texts.Count > Most)
        {
            texts.RemoveAt(0);
        }

        (at, gesture) = (texts.Count - 1, ofGesture);
        return true;
    }

    /// <summary>Goes back by one, if there is one.</summary>
    public bool Undo() => Go(-1);

    /// <summary>Goes forward by one, if there is one.</summary>
    public bool Redo() => Go(1);

    private bool Go(int by)
    {
        if (at + by < 0 || at + by >= texts.Count)
        {
            return false;
        }

        at += by;
        gesture = null;
        return true;
    }
}
