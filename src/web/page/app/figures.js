// The plan's figures in groups, each with the cautions that concern it beside it.

import { byId, make, say, sayFigure, show } from "./dom.js";
import { InSight } from "./sight.js";
import { LEVELS, counted, topic, weightiestFirst, worst } from "./words.js";
import { by, degrees, fNumber, kilograms, length, moment, newtons, number, percent, short } from "./units.js";

const L = (mm) => (_, system) => length(mm(_), system);

/** The few figures to set, in large type. */
const TO_SET = [
  ["Elevation", ({ brief }) => `${short(brief.shot.elevation_deg, 1)}°`, ({ brief }) => `± ${degrees(brief.shot.elevation_tolerance_deg)}`],
  ["Sensor height", L(({ plan }) => plan.pose.sensor.z_mm), ({ plan }, s) => upDown(plan.tolerance, s)],
  ["Sensor to aim point", L(({ plan }) => plan.lens.sensor_distance_mm), () => "straight"],
  ["Pivot height", L(({ plan }) => plan.pose.pivot.z_mm), ({ uses }) => uses.support],
  ["Reach", ({ plan }, s) => (plan.placement.boom_used ? length(plan.placement.reach_mm, s) : "—"), ({ plan }) => (plan.placement.boom_used ? "level, column to pivot" : "no boom used")],
  ["Opening", ({ plan }) => fNumber(plan.focus.engraved), ({ uses, plan }) => `${uses.lens}${plan.focus.f_number_given ? "" : ", chosen"}`],
];

function upDown({ up_mm: up, down_mm: down }, system) {
  const [more, less] = [length(up, system), length(down, system)];
  return more === less ? `± ${more}` : `+ ${more}, − ${less}`;
}

/** Groups of figures: each with a name, and rows of a name and what is told. */
const GROUPS = /** @type {[string, string, [string, (planned: any, system: any) => string][]][]} */ ([
  ["camera", "Camera", [
    ["Sensor from aim point, level", L(({ plan }) => plan.pose.sensor_from_aim_mm)],
    ["Pivot from aim point, level", L(({ plan }) => plan.pose.pivot_from_aim_mm)],
    ["Working distance, lens front to aim point", L(({ plan }) => plan.pose.front_clearance_mm)],
    ["Bearing, anticlockwise from the front", ({ brief }) => degrees(brief.shot.bearing_deg)],
    ["Top of the body", L(({ plan }) => plan.pose.body_top_mm)],
  ]],
  ["frame", "Frame", [
    ["Frame at the aim point", ({ plan }, s) => by(plan.frame_width_mm, plan.frame_height_mm, s)],
    ["Subject fills", ({ plan }) => (plan.outline === null ? "not in sight" : `${percent(plan.outline.fill_width)} of the width, ${percent(plan.outline.fill_height)} of the height`)],
    ["Table covers", ({ plan }) => (plan.footprint.table_share === null ? "—" : `${short(plan.footprint.table_share * 100, 1)} %`)],
    ["Shows", ({ plan }) => `${percent(plan.shares.top)} top, ${percent(plan.shares.side)} side`],
  ]],
  ["focus", "Focus", [
    ["Sharp before + behind aim", ({ plan }, s) => `${length(plan.focus.depth_of_field.in_front_mm, s)} + ${length(plan.focus.depth_of_field.behind_mm, s)}`],
    ["Holds the whole subject", ({ plan }) => (plan.focus.subject_held ? "yes" : "no")],
    ["Focal length at this distance", ({ plan }) => `${short(plan.lens.focal_length_mm, 1)} mm`],
    ["Exposure lost to extension", ({ plan }) => `${number(plan.focus.exposure_loss_stops, 2)} stops`],
  ]],
  ["stand", "Stand", [
    ["Stands on the side", ({ plan, uses }) => `${plan.placement.side}, ${uses.support}`],
    ["Stand-off, column to table edge", L(({ plan }) => plan.placement.stand_off_mm)],
    ["Clamp height", ({ plan }, s) => (plan.placement.boom_used ? length(plan.placement.clamp_height_mm, s) : "no boom")],
    ["Boom's length to the pivot", ({ plan }, s) => (plan.placement.boom_used ? length(plan.placement.boom_length_mm, s) : "no boom")],
    ["Room under the ceiling", L(({ plan }) => plan.bay_room.ceiling_mm)],
    ["Room behind the camera", L(({ plan }) => plan.bay_room.behind_camera_mm)],
  ]],
]);

const STANDS = [["As shot", "as_shot"], ["Camera off", "camera_off"], ["Counterweight off", "counterweight_off"]];

export class Figures {
  #cells = /** @type {{value: HTMLElement, beside: HTMLElement | null, of: Function, about: Function | undefined}[]} */ ([]);
  #cautions = new Map();
  #standing = /** @type {HTMLElement[][]} */ ([]);
  #weights = /** @type {any} */ ({});
  #worst = "";
  #sight = new InSight(byId("figures"));

  constructor(system, usual) {
    this.system = system;
    for (const [name, of, about] of TO_SET) byId("to-set").append(this.#row(name, of, about));
    for (const { symbol, word, means } of [LEVELS.stop, LEVELS.warn, LEVELS.note]) byId("levels").append(make("div", {}, make("dt", {}, `${symbol} ${word}`), make("dd", {}, means)));
    for (const [id, heading, rows] of GROUPS) {
      const list = make("dl", {}, rows.map(([name, of]) => this.#row(name, of)));
      byId("groups").append(this.#group(id, heading, list));
    }
    byId("groups").append(this.#group("weights", "Will it stand", this.#stability(usual)));
  }

  #row(name, of, about) {
    const value = make("span", { class: "value" });
    const beside = about === undefined ? null : make("span", { class: "beside" });
    this.#cells.push({ value, beside, of, about });
    return make("div", {}, make("dt", {}, name), make("dd", {}, value, beside));
  }

  #group(id, heading, ...content) {
    const cautions = make("ul", { class: "cautions" });
    this.#cautions.set(id, { list: cautions, key: "" });
    return make("section", { class: "group", id: `group-${id}`, "aria-labelledby": `group-${id}-heading` },
      make("h3", { id: `group-${id}-heading` }, heading), cautions, ...content);
  }

  #stability(usual) {
    const cell = () => make("td");
    const rows = STANDS.map(([name]) => {
      const cells = [cell(), cell(), cell(), cell()];
      this.#standing.push(cells);
      return make("tr", {}, make("th", { scope: "row" }, name), cells);
    });
    const heads = ["", "Tips at", "Push to tip", "Margin", "Factor"].map((text) => (text === "" ? make("td") : make("th", { scope: "col" }, text)));
    const weight = (key) => (this.#weights[key] = make("dd"));
    return [
      make("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": "How far it is from tipping" },
        make("table", {}, make("thead", {}, make("tr", {}, heads)), make("tbody", {}, rows))),
      make("dl", {},
        make("div", {}, make("dt", {}, "Payload on the pivot"), weight("payload")),
        make("div", {}, make("dt", {}, "Payload that would tip it"), weight("tips")),
        make("div", {}, make("dt", {}, "Counterweight to balance"), weight("balance")),
        make("div", {}, make("dt", {}, "Moment at the head"), weight("head")),
        make("div", {}, make("dt", {}, "Sag at the boom's end"), weight("sag")),
        make("div", {}, make("dt", {}, "After touching it, wait"), weight("settle"))),
      (this.#weights.removal = make("p", { class: "removal" })),
      make("ul", { class: "standing-cautions", "aria-label": "Cautions that go with every load" }, usual.map((text) => make("li", {}, text))),
    ];
  }

  /** Shows a plan. */
  show(planned, moving) {
    const system = this.system();
    for (const { value, beside, of, about } of this.#cells) {
      if (beside === null) continue;
      sayFigure(value, of(planned, system));
      say(beside, about?.(planned, system) ?? "");
    }
    // What stands above the drawing does not push it from under the hand that drags in it.
    if (!moving) this.#showWorst(planned.plan.cautions);
    this.#verdict(planned.plan.cautions);
    this.#sight.follow(() => this.#showGroups(planned), moving);
  }

  /** Nothing moves any more. */
  rest(planned) {
    this.#showWorst(planned.plan.cautions);
    this.#sight.rest();
  }

  #showGroups(planned) {
    const system = this.system();
    for (const { value, beside, of } of this.#cells) if (beside === null) say(value, of(planned, system));
    const { stability, payload, ballast, cautions } = planned.plan;
    STANDS.forEach(([, key], index) => {
      const state = stability[key];
      const told = [degrees(state.tilt_to_tip_deg), newtons(state.push_to_tip_n), length(state.margin_mm, system), number(state.factor, 2)];
      this.#standing[index].forEach((cell, column) => say(cell, told[column]));
    });
    say(this.#weights.payload, kilograms(payload.mass_kg));
    say(this.#weights.tips, stability.payload_to_tip_kg === "infinite" ? "none, it hangs inside the feet" : kilograms(stability.payload_to_tip_kg));
    const balance = ballast.counterweight_to_balance_kg;
    say(this.#weights.balance, balance === null ? "no boom" : kilograms(balance));
    say(this.#weights.head, moment(payload.head_moment_n_m));
    const { sag } = planned.plan;
    say(this.#weights.sag, sag === null ? "not computed" : length(sag.deflection_mm, system));
    say(this.#weights.settle, typeof sag?.settling_s === "number" ? `${number(sag.settling_s, 1)} s` : "not computed");
    say(this.#weights.removal, planned.removal_in_words);
    for (const [id, entry] of this.#cautions) this.#showCautions(entry, cautions.filter((caution) => topic(caution) === id));
  }

  #showCautions(entry, cautions) {
    const texts = cautions.map((caution) => inWords(caution, this.system()));
    const key = texts.join("\n") + cautions.map(({ level }) => level);
    if (key === entry.key) return;
    entry.key = key;
    show(entry.list, cautions.length > 0);
    entry.list.replaceChildren(...cautions.map((caution, index) => cautionItem(caution, texts[index])));
  }

  /** All cautions stand with the plan as well, the weightiest before its numbers; the figures each concerns are a press away. */
  #showWorst(cautions) {
    const sorted = weightiestFirst(cautions);
    const texts = sorted.map((caution) => inWords(caution, this.system()));
    const key = texts.join("\n") + sorted.map(({ level }) => level);
    if (key === this.#worst) return;
    this.#worst = key;
    const items = sorted.map((caution, index) => {
      const item = cautionItem(caution, texts[index]);
      item.append(" ", make("a", { href: `#group-${topic(caution)}` }, "its figures"));
      return item;
    });
    const isNote = (_, index) => sorted[index].level === "note";
    for (const [id, those] of [["worst", items.filter((item, index) => !isNote(item, index))], ["notes", items.filter(isNote)]]) {
      byId(id).replaceChildren(...(those.length > 0 ? those : [make("li", { class: "quiet" }, "None.")]));
    }
  }

  #verdict(cautions) {
    const level = worst(cautions);
    const element = byId("verdict");
    if (element.dataset.level !== level) element.dataset.level = level;
    const can = level === "stop" ? "cannot be rigged as asked" : "can be rigged";
    say(element, `${LEVELS[level].symbol} ${can}: ${counted(cautions)}`);
  }
}

/** A caution as an item of a list: symbol and word of its level, then the sentence. */
export function cautionItem({ level, code }, text) {
  return make("li", { class: "caution", "data-level": level, "data-code": code },
    make("span", { class: "level" }, make("span", { "aria-hidden": "true" }, `${LEVELS[level].symbol} `), LEVELS[level].word), " ", text);
}

/** What is told whatever its value is: a stack's pictures, the table's share, what hangs overhead. */
const WITHOUT_LIMIT = new Set([107, 204, 415]);

/** A caution's sentence with its value and limit, in the unit shown. */
export function inWords(caution, system) {
  const { sentence, value, limit, number: code } = caution;
  const told = figure(caution, value, system);
  const plain = WITHOUT_LIMIT.has(code);
  return `${sentence} Value ${told}${plain ? "" : `, limit ${figure(caution, limit, system)}`}.`;
}

function figure({ number: code, unit }, value, system) {
  if (typeof value !== "number") return number(value);
  if ([103, 108, 110].includes(code)) return `${short(value, value < 1 ? 3 : 1)} mm`;
  if (code === 106 || code === 109) return fNumber(value);
  if (code === 107) return `${short(value, 0)} pictures`;
  if (code === 204 || code === 401) return `${short(value * 100, 1)} %`;
  if (code === 102) return short(value, 3);
  const write = { mm: (v) => length(v, system), deg: degrees, kg: kilograms, n: newtons, n_m: moment, percent: (v) => `${short(v, 1)} %` }[unit];
  return write === undefined ? number(value, 2) : write(value);
}
