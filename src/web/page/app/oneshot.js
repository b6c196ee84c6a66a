// One shot with only the gear that it uses, so that a replanning reads no more than it must.

const KINDS = /** @type {const} */ (["camera", "lens", "table", "subject", "support", "bay"]);

/** The name that a shot uses of a kind: its own, the shoot's, or the only one there is. */
export function nameUsed(shoot, index, kind) {
  const own = shoot.shot?.[index]?.[kind] ?? shoot.shoot?.[kind];
  if (own !== undefined) return own;
  const names = Object.keys(shoot[kind] ?? {});
  return names.length === 1 ? names[0] : undefined;
}

/** The shoot of that one shot. It is planned as in the whole shoot; what it says of other shots is left out. */
export function oneShot(shoot, index) {
  const { after: _after, right_after: _rightAfter, ...shot } = shoot.shot[index];
  const one = {};
  for (const kind of ["criteria", "weights"]) if (shoot[kind] !== undefined) one[kind] = shoot[kind];
  const kit = {};
  for (const kind of KINDS) {
    const all = shoot[kind];
    const name = shot[kind] ?? shoot.shoot?.[kind];
    if (all === undefined || (typeof name === "object" && !Array.isArray(name))) continue;
    const names = Array.isArray(name) ? name : [name];
    if (names.every((each) => typeof each === "string" && Object.hasOwn(all, each))) {
      one[kind] = Object.fromEntries(names.map((each) => [each, all[each]]));
      shot[kind] = name;
      continue;
    }
    one[kind] = all;
    // What is left open is chosen from the kit.
    if (kind === "lens" || kind === "support") one.kit = kit;
    if (kind === "lens" && shoot.kit?.lenses !== undefined) kit.lenses = shoot.kit.lenses;
    if (kind === "support" && shoot.kit?.supports !== undefined) kit.supports = shoot.kit.supports;
    if (name !== undefined) shot[kind] = name;
  }
  if (shoot.kit?.sides !== undefined) kit.sides = shoot.kit.sides;
  if (shoot.kit !== undefined && Object.keys(kit).length > 0) one.kit = kit;
  one.shot = [shot];
  return one;
}

/** Where a path of the whole shoot lies in the shoot of one shot, and back. */
export function pathInWhole(path, index) {
  return path[0] === "shot" && path[1] === 0 ? ["shot", index, ...path.slice(2)] : path;
}

/** A copy with a value put at a path, or taken away where it is null; what lies beside the way is shared. */
export function withValue(node, path, value) {
  const [step, ...rest] = path;
  const copy = Array.isArray(node) ? [...node] : { ...node };
  if (rest.length > 0) copy[step] = withValue(copy[step] ?? {}, rest, value);
  else if (value !== null) copy[step] = value;
  else if (Array.isArray(copy)) copy.splice(Number(step), 1);
  else delete copy[step];
  return copy;
}

/** The same change as one of the outermost table or list that is not there yet. */
export function withPlace(node, { path, value }) {
  const depth = path.findIndex((_, index) => index + 1 < path.length && valueAt(node, path.slice(0, index + 1)) === undefined);
  if (depth < 0 || value === null) return { path, value };
  const inside = path.slice(depth + 1).reduceRight((within, step) => (typeof step === "number" ? [within] : { [step]: within }), value);
  return { path: path.slice(0, depth + 1), value: inside };
}

/** What lies at a path; undefined where there is nothing. */
export function valueAt(node, path) {
  return path.reduce((at, step) => at?.[step], node);
}
