// What things are called: the shoot file's own keys, made readable, and levels with their symbols.

const UNIT_ENDS = /_(mm|deg|kg|hz|n|n_m|n_m2|n_per_mm2|percent|minutes)$/;
const KNOWN = { delivered_aspect: "Delivered shape", f_number: "Opening", name: "Name of the shot", frame_width_tolerance: "Frame width tolerance" };

/** A key's name: `frame_width_mm` is "Frame width". */
export function label(key) {
  const known = KNOWN[key];
  if (known !== undefined) return known;
  const words = key.replace(UNIT_ENDS, "").replaceAll("_", " ");
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** A word of a shoot file, made readable. */
export const word = (text) => text.replaceAll("_", " ");

/** Levels: a symbol and a word each, so that colour is never alone. */
export const LEVELS = {
  none: { symbol: "–", word: "no caution" },
  note: { symbol: "○", word: "note" },
  warn: { symbol: "△", word: "warning" },
  stop: { symbol: "■", word: "stop" },
  fault: { symbol: "?", word: "not planned" },
};

const RANK = ["none", "note", "warn", "stop"];

/** The worst level among cautions. */
export function worst(cautions) {
  return cautions.reduce((worse, { level }) => (RANK.indexOf(level) > RANK.indexOf(worse) ? level : worse), "none");
}

/** Beside which figures a caution stands. */
export function topic({ number }) {
  if ([101, 102, 104, 105].includes(number)) return "camera";
  if (number < 200) return "focus";
  if (number < 300) return "frame";
  return number < 400 ? "stand" : "weights";
}

const plural = (count, one) => `${count} ${one}${count === 1 ? "" : "s"}`;

/** How many cautions of each level, in words. */
export function counted(cautions) {
  const told = ["stop", "warn", "note"]
    .map((level) => [level, cautions.filter((caution) => caution.level === level).length])
    .filter(([, count]) => count > 0)
    .map(([level, count]) => plural(Number(count), LEVELS[level].word));
  return told.length > 0 ? told.join(", ") : "no cautions";
}

/** A mistake of the library in a sentence that begins with the field's name as the page has it. */
export function mistakeInWords(mistake, typed) {
  const { sentence, label: hint, value, least, most, unit, helps } = mistake;
  const readable = sentence.replace(/`([a-z_]+)`/g, (_, key) => label(key));
  const begun = readable.charAt(0).toUpperCase() + readable.slice(1);
  const of = unit ? ` ${unit.replaceAll("_", " ")}` : "";
  const bounded = (bound) => typeof bound === "number";
  const range =
    bounded(least) && bounded(most) ? `${least} to ${most}${of}` : bounded(least) ? `${least}${of} or more` : bounded(most) ? `up to ${most}${of}` : null;
  const parts = [begun];
  if (value !== null && range !== null) parts.push(`given ${value}${of}, allowed ${range}`);
  else {
    if (hint && !/^to be given here$/.test(hint)) parts.push(hint.replaceAll("`", "“").replace(/“([^“]*)“/g, "“$1”"));
    if (typed !== undefined && typed !== "" && !parts.join(" ").includes(typed)) parts.push(`given “${typed}”`);
  }
  const help = helps?.[0];
  return `${parts.join(": ")}.${help ? ` ${help.charAt(0).toUpperCase()}${help.slice(1)}.` : ""}`.replaceAll(/`([a-z_]+)`/g, (_, key) => label(key));
}
