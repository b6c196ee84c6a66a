// Gear like this one under a new name, used by the shot: how a lens or a stand of one's own comes into the file.

import { alarm, inform } from "./announce.js";
import { make, say, show } from "./dom.js";
import { label, mistakeInWords } from "./words.js";

/** The field and the button for a copy of the gear of that kind and name. */
export function gearCopy(desk, kind, name) {
  const id = `copy-${kind}`;
  const error = make("p", { class: "error", id: `${id}-error`, hidden: true });
  const input = make("input", { type: "text", id, autocapitalize: "off", spellcheck: "false", "aria-describedby": `${id}-error` });
  const refuse = (text) => {
    say(error, `■ ${text}`);
    show(error, true);
    input.setAttribute("aria-invalid", "true");
    input.focus();
  };
  const take = () => {
    const fresh = input.value.trim();
    if (fresh === "") return refuse(`Name of the copy: it needs one, such as my-${kind}.`);
    if (desk.shoot[kind][fresh] !== undefined) return refuse(`Name of the copy: the file has a ${kind} “${fresh}” already.`);
    const at = ["shot", desk.index, kind];
    try {
      const kept = desk.restructure([{ path: [kind, fresh], value: desk.shoot[kind][name] }, { path: at, value: fresh }]);
      inform(`${label(kind)} ${fresh} was added, and this shot uses it.${kept ? "" : " The file had to be written anew for it: its comments are gone. Undo brings them back."}`);
    } catch (failure) {
      if (failure.mistakes === undefined) throw failure;
      alarm("That copy cannot be made.", failure.mistakes.map((mistake) => mistakeInWords(mistake)));
    }
  };
  return make("div", { class: "field wide copy" }, make("label", { for: id }, `Another ${kind} like this: name of the copy`),
    make("div", { class: "row" }, input, make("button", { type: "button", id: `${id}-take`, onclick: take }, "Copy and use it")), error);
}
