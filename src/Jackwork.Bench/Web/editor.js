// The text of the design, with what is wrong marked in place.
import { defaultKeymap, indentWithTab } from "@codemirror/commands";
import { yaml } from "@codemirror/lang-yaml";
import { HighlightStyle, indentUnit, syntaxHighlighting } from "@codemirror/language";
import { lintGutter, setDiagnostics } from "@codemirror/lint";
import { searchKeymap } from "@codemirror/search";
import { Annotation, EditorState } from "@codemirror/state";
import { drawSelection, EditorView, highlightActiveLine, keymap, lineNumbers } from "@codemirror/view";
import { tags } from "@lezer/highlight";

const colours = HighlightStyle.define([
  { tag: [tags.propertyName, tags.definition(tags.propertyName)], color: "var(--walnut)", fontWeight: "600" },
  { tag: tags.comment, color: "var(--soft)", fontStyle: "italic" },
  { tag: [tags.string, tags.content], color: "var(--ink)" },
  { tag: [tags.number, tags.bool], color: "var(--verdigris)" },
]);
const fromPage = Annotation.define();
// Typing without a pause of this many milliseconds is one step of the history.
const pause = 900;

// It opens with the caret in the line asked for: a caret set later could break into what is already typed or selected.
export function createEditor(place, page, text, line) {
  let gesture = 0;
  let typed = 0;
  let soon = 0;
  const send = () => {
    soon = 0;
    page.invokeMethodAsync("Typed", view.state.doc.toString(), `type ${gesture}`);
  };
  const history = (name) => () => {
    if (soon) {
      clearTimeout(soon);
      send();
    }
    document.querySelector(`[data-history=${name}]`)?.click();
    return true;
  };
  const view = new EditorView({
    parent: place,
    state: EditorState.create({
      doc: text,
      extensions: [
        EditorView.cspNonce.of(document.querySelector("meta[name=nonce]").content),
        lineNumbers(),
        highlightActiveLine(),
        drawSelection(),
        EditorView.lineWrapping,
        lintGutter(),
        yaml(),
        indentUnit.of("  "),
        syntaxHighlighting(colours),
        EditorView.contentAttributes.of({ "aria-label": "Text of the design", tabindex: "0" }),
        keymap.of([{ key: "Mod-z", run: history("undo") }, { key: "Mod-Shift-z", run: history("redo") }, { key: "Mod-y", run: history("redo") }, ...searchKeymap, ...defaultKeymap, indentWithTab]),
        EditorView.updateListener.of((u) => {
          if (!u.docChanged || u.transactions.some((t) => t.annotation(fromPage))) return;
          if (Date.now() - typed > pause) gesture = Date.now();
          typed = Date.now();
          clearTimeout(soon);
          soon = setTimeout(send, 120);
        }),
      ],
    }),
  });
  const go = (n) => {
    if (n < 1) return;
    const row = view.state.doc.line(Math.min(n, view.state.doc.lines));
    view.dispatch({ selection: { anchor: row.from }, effects: EditorView.scrollIntoView(row.from, { y: "center" }) });
    view.focus();
  };
  go(line);
  return {
    line: go,
    // Only the stretch that differs is put in, so that the caret stays where it is.
    text(next) {
      if (soon) return;
      const old = view.state.doc.toString();
      let from = 0;
      while (from < Math.min(old.length, next.length) && old[from] === next[from]) from++;
      let end = 0;
      while (end < Math.min(old.length, next.length) - from && old[old.length - 1 - end] === next[next.length - 1 - end]) end++;
      view.dispatch({ changes: { from, to: old.length - end, insert: next.slice(from, next.length - end) }, annotations: fromPage.of(true) });
    },
    problems(list) {
      const { doc } = view.state;
      const marks = list.map(({ line, column, message }) => {
        const row = doc.line(Math.min(Math.max(1, line), doc.lines));
        const from = Math.min(row.to, row.from + Math.max(0, column - 1));
        const word = /^[^\s,:\]}]+/.exec(row.text.slice(from - row.from));
        return { from, to: Math.min(row.to, from + (word ? word[0].length : 1)), severity: "error", message };
      });
      view.dispatch(setDiagnostics(view.state, marks.sort((a, b) => a.from - b.from)));
    },
    stop() {
      if (soon) {
        clearTimeout(soon);
        send();
      }
      view.destroy();
    },
  };
}
