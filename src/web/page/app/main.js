// Puts the page together: loads the library, opens what was kept or the invented shoot, and lets every part follow.

import { load } from "../tablerig/tablerig.js";
import { Advice } from "./advice.js";
import { alarm, tell } from "./announce.js";
import { AsText } from "./astext.js";
import { Changes } from "./changes.js";
import { Desk } from "./desk.js";
import { byId, make, say } from "./dom.js";
import { Figures } from "./figures.js";
import { Files, mistakesWithPlaces } from "./files.js";
import { Follow } from "./follow.js";
import { Form } from "./form.js";
import { Handles, elevationEdit } from "./handles.js";
import { keep, kept } from "./keep.js";
import { Lenses } from "./lenses.js";
import { MeasuredOnSet } from "./measured.js";
import { keepForOffline } from "./offline.js";
import { Planner } from "./planner.js";
import { SheetPrinter } from "./print.js";
import { Shots } from "./shots.js";
import { Stages } from "./stages.js";
import { TiltReader } from "./tilt.js";
import { degrees, length } from "./units.js";
import { counted } from "./words.js";

const chosen = (name) => /** @type {any} */ (document.querySelector(`input[name=${name}]:checked`)).value;

/** Marks the radio of that value, if there is one. */
function check(name, value) {
  const radio = /** @type {any} */ (document.querySelector(`input[name=${name}][value="${CSS.escape(String(value))}"]`));
  if (radio !== null) radio.checked = true;
}

async function begin() {
  const before = kept();
  check("unit", before.unit);
  check("view", before.view ?? "side");
  const rig = await load();
  let unit = chosen("unit");
  byId("unit-switch").addEventListener("change", () => (unit = chosen("unit")));
  const system = () => unit;
  const desk = new Desk(rig);
  const stages = new Stages(() => planner.redraw());
  const planner = new Planner(desk, stages, system);
  const usual = rig.ask("codes").usual_cautions;
  const figures = new Figures(system, usual);
  new Handles(desk, planner, stages, system);
  new Form(desk, planner, system);
  new Follow(stages, planner);
  new Shots(desk, planner);
  const files = new Files(desk);
  const asText = new AsText(desk);
  new Advice(desk, planner);
  new Changes(desk, planner, system);
  new Lenses(desk, planner, system, usual);
  new TiltReader(planner);
  new MeasuredOnSet(desk, planner, system);
  new SheetPrinter(desk, system);
  byId("usual-cautions").append(...usual.map((text) => make("li", {}, text)));
  say(byId("about"), `Library version ${rig.ask("version").version}.`);

  planner.addEventListener("planned", (/** @type {any} */ { detail }) => {
    figures.show(detail.planned, detail.moving);
    showElevation(detail.planned.brief.shot.elevation_deg);
    showChosen(detail.planned);
  });
  planner.addEventListener("rested", (/** @type {any} */ { detail }) => {
    if (!stages.held) {
      figures.rest(detail.planned);
      desk.commit();
    }
    tell(inWords(detail.planned, system()));
  });
  for (const event of ["opened", "selected", "committed"]) desk.addEventListener(event, () => showDesk(desk));
  controls(desk, planner, stages);

  stages.choose(chosen("view"));
  if (!openKept(desk, before, asText)) files.anew();
  document.documentElement.dataset.ready = "true";
  keepForOffline();
}

/** Opens what was worked on last; says whether there was any. */
function openKept(desk, { text, name, isDemo, index, saved }, asText) {
  if (typeof text !== "string" || text === "") return false;
  try {
    desk.open(text, { name, demo: isDemo, index, saved });
    return true;
  } catch (error) {
    desk.open(desk.rig.ask("demo").text, { demo: true });
    const mistakes = error.mistakes ?? [];
    asText.offer(text, mistakes);
    alarm("What was kept from the last visit can no longer be read. It stands under The file, as text, to be mended; the invented shoot is open instead.", mistakesWithPlaces(mistakes));
    return true;
  }
}

function showElevation(angle) {
  const slide = byId("elevation-slide");
  if (Number(slide.value) !== angle) slide.value = angle;
  slide.setAttribute("aria-valuetext", degrees(angle));
  say(byId("elevation-now"), degrees(angle));
}

/** What a shot left open, and what was taken for it. */
function showChosen({ chosen: left, uses, plan }) {
  byId("chosen").hidden = left === null;
  if (left !== null) say(byId("chosen"), `Left open: ${uses.lens} on ${uses.support}, ${plan.placement.side} side, is the best of ${left.planned} planned, of which ${left.possible} can be rigged.`);
}

function showDesk(desk) {
  const { shoot, name, isDemo, saved, shot } = desk;
  say(byId("shoot-title"), shoot.shoot?.title ?? name);
  say(byId("plan-heading"), shot.name);
  say(byId("shot-note"), shot.note ?? "");
  byId("demo-note").hidden = !isDemo;
  byId("undo").disabled = desk.back.length === 0;
  byId("redo").disabled = desk.forth.length === 0;
  byId("unsaved").hidden = saved;
  document.title = `${shot.name}: tablerig`;
}

function inWords({ name, brief, plan }, system) {
  const { elevation_deg: elevation } = brief.shot;
  return `${name}: elevation ${degrees(elevation)}, sensor height ${length(plan.pose.sensor.z_mm, system)}, frame width ${length(plan.frame_width_mm, system)}, ${counted(plan.cautions)}.`;
}

/** The controls that stand outside the form. */
function controls(desk, planner, stages) {
  const hint = () => say(byId("asked-hint"), `A bare length is in ${chosen("unit") === "metric" ? "cm" : "inches"}; in camera and lens, in mm. Units may be written: 62 cm, 7 ft 10 in, f/8.`);
  hint();
  document.documentElement.dataset.unit = chosen("unit");
  byId("unit-switch").addEventListener("change", () => {
    keep({ unit: chosen("unit") });
    document.documentElement.dataset.unit = chosen("unit");
    hint();
    planner.redraw();
  });
  byId("view-switch").addEventListener("change", () => {
    keep({ view: chosen("view") });
    stages.choose(chosen("view"));
    planner.redraw();
  });
  byId("explain").checked = kept().explain === true;
  const explain = () => byId("asked").classList.toggle("explained", byId("explain").checked);
  explain();
  byId("explain").addEventListener("change", () => {
    keep({ explain: byId("explain").checked });
    explain();
  });
  stages.lettered = kept().lettered ?? null;
  byId("lettered").addEventListener("change", () => {
    stages.lettered = byId("lettered").checked;
    keep({ lettered: stages.lettered });
    planner.redraw();
  });
  planner.addEventListener("planned", () => {
    if (byId("lettered").checked === stages.bare) byId("lettered").checked = !stages.bare;
  });
  byId("larger").addEventListener("change", (event) => stages.enlarge(event.target.checked));
  byId("undo").addEventListener("click", () => desk.undo());
  byId("redo").addEventListener("click", () => desk.redo());
  const slide = byId("elevation-slide");
  slide.addEventListener("input", (event) => planner.propose({ edits: [elevationEdit(desk, Number(slide.value))], at: event.timeStamp, moving: true }));
  slide.addEventListener("pointerdown", () => (stages.held = true));
  for (const end of ["pointerup", "pointercancel", "change"]) {
    slide.addEventListener(end, () => {
      stages.held = false;
      planner.restSoon();
    });
  }
  for (const [id, step] of [["elevation-less", -1], ["elevation-more", 1]]) {
    byId(id).addEventListener("click", (event) => {
      if (planner.planned === null) return;
      const angle = Math.round((planner.planned.brief.shot.elevation_deg + step) * 10) / 10;
      planner.propose({ edits: [elevationEdit(desk, Math.min(Math.max(angle, -60), 90))], at: event.timeStamp });
      requestAnimationFrame(() => desk.commit());
    });
  }
  addEventListener("keydown", (event) => {
    const inField = event.target instanceof HTMLElement && event.target.matches("input[type=text], textarea");
    if (inField || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
    event.preventDefault();
    if (event.shiftKey) desk.redo();
    else desk.undo();
  });
}

begin().catch((error) => {
  alarm(`The page could not begin: ${error.message}.`);
  throw error;
});
