// What things are called: the shoot file's own keys, made readable, and levels with their symbols.

const UNIT_ENDS = /_(mm|deg|kg|hz|n|n_m|n_m2|n_per_mm2|percent|minutes)$/;
const KNOWN = { delivered_aspect: "Delivered shape", f_number: "Opening", least_f_number: "Least f-number", most_f_number: "Most f-number", name: "Name of the shot", frame_width_tolerance: "Frame width tolerance" };

/** A key's name: `frame_width_mm` is "Frame width". */
export function label(key) {
  const known = KNOWN[key];
  if (known !== undefined) return known;
  const words = key.replace(UNIT_ENDS, "").replaceAll("_", " ");
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** A word of a shoot file, made readable. */
export const word = (text) => text.replaceAll("_", " ");

/** Levels: a symbol and a word each, so that colour is never alone, and what follows from it. */
export const LEVELS = {
  none: { symbol: "–", word: "no caution" },
  note: { symbol: "○", word: "note", means: "worth knowing" },
  warn: { symbol: "△", word: "warning", means: "to be looked at before shooting" },
  stop: { symbol: "■", word: "stop", means: "cannot be done as asked, or must not" },
  fault: { symbol: "?", word: "not planned" },
};

const RANK = ["none", "note", "warn", "stop"];

/** The worst level among cautions. */
export function worst(cautions) {
  return cautions.reduce((worse, { level }) => (RANK.indexOf(level) > RANK.indexOf(worse) ? level : worse), "none");
}

/** The weightiest first, and as they came within a level. */
export const weightiestFirst = (cautions) => [...cautions].sort((one, other) => RANK.indexOf(other.level) - RANK.indexOf(one.level));

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

/** A text of any length, as much of it as is read. */
export const shortened = (text, most) => (text.length <= most ? text : `${text.slice(0, most)}…`);

/** How quantities are written in a field. */
const EXAMPLES = {
  length: "Write it with its unit: 60 cm, 600 mm, 24 in, 7 ft 10 in.",
  angle: "Write it in degrees: 45 or 45°.",
  mass: "Write it with its unit: 850 g, 1.2 kg, 2 lb 4 oz.",
};

const begun = (text) => text.charAt(0).toUpperCase() + text.slice(1);
/** Keys of the shoot file, as the page calls them. */
const asNamed = (text) => text.replace(/`?\b[a-z]+(?:_[a-z0-9]+)+\b`?/g, (key) => label(key.replaceAll("`", ""))).replace(/`(name|note|hold|lens|camera|table|subject|support|bay|side|after|surface|backdrop)`/g, (_, key) => label(key));
/** What the library sets between backticks. */
const quoted = (text) => text.replace(/`([^`]*)`/g, "“$1”");

/** What is allowed, where a mistake says it. */
function allowed({ least, most, unit }) {
  const of = unit ? ` ${unit.replaceAll("_", " ")}` : "";
  const bounded = (bound) => typeof bound === "number";
  if (bounded(least) && bounded(most)) return `${least} to ${most}${of}`;
  if (bounded(least)) return `${least}${of} or more`;
  return bounded(most) ? `up to ${most}${of}` : null;
}

/**
 * A mistake of the library in words. In a form the fields have the page's names, and what was typed is told;
 * about a file's text the keys stay as they are written there.
 */
export function mistakeInWords(mistake, entered, inFile = false) {
  const typed = entered === undefined ? undefined : shortened(entered, 40);
  const { kind, sentence, label: hint, value, unit, helps } = mistake;
  const named = inFile ? quoted : (text) => quoted(asNamed(text));
  const range = allowed(mistake);
  const parts = [shortened(begun(named(sentence)), 160)];
  if (value !== null && range !== null) parts.push(`given ${value}${unit ? ` ${unit.replaceAll("_", " ")}` : ""}, allowed ${range}`);
  else {
    // An empty pair of backticks: nothing stands where a unit would.
    if (hint && hint !== "to be given here" && !hint.startsWith("``")) parts.push(shortened(named(hint), 160));
    if (typed && !parts.join(" ").includes(typed)) parts.push(`given “${typed}”`);
  }
  const quantity = kind === "no_quantity" && !inFile ? /an? (length|angle|mass)/.exec(sentence)?.[1] : undefined;
  const help = quantity !== undefined ? EXAMPLES[quantity] : helps.filter((text) => !text.includes("`tablerig ")).map((text) => `${shortened(begun(named(text)), 160)}.`)[0];
  const told = parts.join(": ");
  return `${told}${/[.?!]$/.test(told) ? "" : "."}${help === undefined ? "" : ` ${help}`}`;
}
