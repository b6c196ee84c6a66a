// Reads what the page says as a person does: lengths in either system, angles, and what stands beside a name.

/** A length in mm, and how far rounding may have moved it; null where the text is none. */
export function lengthOf(text) {
  const sign = text.startsWith("−") ? -1 : 1;
  const plain = text.replace("−", "").trim();
  const metric = /^(\d+)(?:\.(\d+))? (cm|mm|m)$/.exec(plain);
  if (metric !== null) {
    const [, whole, part = "", unit] = metric;
    const of = { mm: 1, cm: 10, m: 1000 }[unit];
    return { mm: sign * Number(`${whole}.${part || 0}`) * of, within: (of * 10 ** -part.length) / 2 };
  }
  const imperial = /^(?:(\d+) ft)? ?(?:(\d+)? ?(?:(\d+)\/(\d+))? in)?$/.exec(plain);
  if (imperial === null || plain === "") return null;
  const [, feet = 0, inches = 0, over = 0, under = 1] = imperial.map((part) => (part === undefined ? undefined : part));
  return { mm: sign * (Number(feet) * 12 + Number(inches) + Number(over) / Number(under)) * 25.4, within: 25.4 / 32 };
}

/** A plain number with its decimals: "−12.5°", "f/11", "3.2 kg". */
export function numberOf(text) {
  const found = /([−-]?)(\d+)(?:\.(\d+))?/.exec(text);
  if (found === null) return null;
  const [, sign, whole, part = ""] = found;
  return { value: (sign === "" ? 1 : -1) * Number(`${whole}.${part || 0}`), within: 10 ** -part.length / 2 };
}

/** All names with what stands beside them in a list of figures. */
export const figuresOf = (page, selector) =>
  page.$$eval(`${selector} > div`, (rows) =>
    Object.fromEntries(rows.map((row) => {
      const value = row.querySelector(".value") ?? row.querySelector("dd");
      return [row.querySelector("dt").textContent, value.textContent];
    })));

/** Whether a text tells that length. */
export function tells(text, mm) {
  const read = lengthOf(text);
  // What lies on the edge between two steps may be told either way: a thousandth more.
  return read !== null && Math.abs(read.mm - mm) <= read.within * 1.001;
}
