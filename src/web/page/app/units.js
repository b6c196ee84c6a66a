// Figures as people read them: lengths off a tape in either system, and everything else.

/** @typedef {"metric" | "feet"} System */

const MINUS = "−";

/** A length as the drawings write it: centimetres and tenths, or feet, inches and sixteenths. */
export function length(mm, system) {
  if (typeof mm !== "number") return mm === null || mm === undefined ? "—" : "no limit";
  const size = Math.abs(mm);
  if (system === "metric") {
    const decimals = size < 9.95 ? 2 : 1;
    const text = (Math.floor((size / 10) * 10 ** decimals + 0.5) / 10 ** decimals).toFixed(decimals);
    return `${mm < 0 && size >= 0.05 ? MINUS : ""}${text} cm`;
  }
  const sixteenths = Math.floor((size / 25.4) * 16 + 0.5);
  const sign = mm < 0 && sixteenths > 0 ? MINUS : "";
  const [feet, inches] = [Math.floor(sixteenths / 192), Math.floor(sixteenths / 16) % 12];
  const part = fraction(sixteenths % 16);
  const words = [];
  if (feet > 0) words.push(`${feet} ft`);
  if (inches > 0 || part !== "" || feet === 0) {
    words.push(`${[inches > 0 || part === "" ? inches : "", part].filter((word) => word !== "").join(" ")} in`);
  }
  return sign + words.join(" ");
}

function fraction(sixteenths) {
  let [over, under] = [sixteenths, 16];
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
  return over === 0 ? "" : `${over}/${under}`;
}

/** Two lengths of one thing. */
export function by(width, height, system) {
  const [one, other] = [length(width, system), length(height, system)];
  return system === "metric" && one.endsWith(" cm") ? `${one.slice(0, -3)} × ${other}` : `${one} × ${other}`;
}

/** With so many decimals, and a true minus; what is infinite says so. */
export function number(value, decimals = 1) {
  if (typeof value !== "number") return value === "infinite" ? "∞" : "—";
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace("-", "") : text.replace("-", MINUS);
}

/** Without needless zeros. */
export function short(value, decimals = 2) {
  const text = number(value, decimals);
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}

export const degrees = (value, decimals = 1) => `${number(value, decimals)}°`;
export const percent = (share, decimals = 0) => (typeof share === "number" ? `${number(share * 100, decimals)} %` : number(share));
export const kilograms = (value) => (typeof value === "number" ? `${short(value)} kg` : number(value));
export const newtons = (value) => (typeof value === "number" ? `${number(value, 0)} N` : number(value));
export const moment = (value) => (typeof value === "number" ? `${number(value, 1)} N m` : number(value));
export const fNumber = (engraved) => `f/${short(engraved, 1)}`;

/** What a length becomes in a shoot file: as exact as a tape is read. */
export function asWritten(mm, system) {
  return system === "metric" ? `${Number((mm / 10).toFixed(1))} cm` : `${Number((mm / 25.4).toFixed(2))} in`;
}

/** What the drawings call the system. */
export const drawingUnit = (system) => (system === "metric" ? "centimetres" : "feet_inches");

/** Small lengths inside camera and lens are written in millimetres in either system. */
const IN_MM = new Set(["camera", "lens"]);

/** What was typed, as a shoot file takes it: null where the field is empty. A bare length is in the unit shown. */
export function entryOf(typed, unit, kind, system) {
  const text = typed.trim();
  if (text === "") return null;
  const bare = /^[+−-]?(\d+([.,]\d*)?|[.,]\d+)$/.test(text);
  if (!bare) return text;
  const plain = text.replace("−", "-").replace(",", ".");
  if (unit === "mm" && !IN_MM.has(kind)) return `${plain} ${system === "metric" ? "cm" : "in"}`;
  // What is beyond numbers is refused with what was typed.
  return Number.isFinite(Number(plain)) ? Number(plain) : text;
}

const EXAMPLES = { mm: { metric: "213.5 cm ± 5 mm", feet: "84 1/16 in ± 3/16 in" }, deg: { metric: "9° ± 0.3°", feet: "9° ± 0.3°" } };

/**
 * A measurement that was typed, as a shoot file takes it, with its uncertainty after ±; `missing` says in words what it
 * lacks. Two bare numbers are in the unit that a bare number has; of two lengths either both have a unit or neither.
 */
export function measurementOf(typed, unit, system) {
  const halves = typed.split(/±|\+\/?[-−]/).map((half) => half.trim());
  if (halves.length === 1) return { value: entryOf(typed, unit, "log", system) };
  const example = `For example: ${EXAMPLES[unit][system]}.`;
  const [value, uncertainty] = halves;
  if (halves.length > 2) return { missing: `There is more than one ±. ${example}` };
  if (value === "") return { missing: `What was measured is missing before the ±. ${example}` };
  if (uncertainty === "") return { missing: `How far off it may be is missing after the ±. ${example}` };
  const written = halves.map((half) => entryOf(half, unit, "log", system));
  const bare = halves.map((half) => !/[^\d.,+−\s-]/.test(half));
  if (unit === "mm" && bare[0] !== bare[1]) {
    return { missing: `${bare[0] ? value : uncertainty} stands without a unit beside one that has it. ${example}` };
  }
  const told = written.map((half) => (typeof half === "number" ? `${half} ${unit}` : half));
  return { value: told.join(" ± ") };
}

const SYMBOLS = { mm: " mm", deg: "°", kg: " kg", percent: " %", n_m: " N m", hz: " Hz", n: " N", min: " min", n_m2: " N m2", n_per_mm2: " N/mm2" };

/** A value of a shoot file, as a field shows it. */
export function shown(value, unit) {
  if (value === undefined || value === null) return "";
  if (typeof value === "number") return `${value}${SYMBOLS[unit] ?? ""}`;
  if (Array.isArray(value)) return value.join(", ");
  return String(value);
}
