// Which elevation suits the subject, and why; taken with one press.

import { byId, make } from "./dom.js";
import { elevationEdit } from "./handles.js";
import { oneShot } from "./oneshot.js";
import { degrees, percent, short } from "./units.js";
import { word } from "./words.js";

const angle = (value) => `${short(value, 1)}°`;

export class Advice {
  #key = "";

  constructor(desk, planner) {
    this.desk = desk;
    this.planner = planner;
    planner.addEventListener("rested", ({ detail }) => this.#show(detail.planned));
  }

  #show(planned) {
    const one = oneShot(this.desk.shoot, this.desk.index);
    const { subject, advice, reasons_in_words: reasons } = this.desk.rig.ask("advice", { shoot: one, shot: planned.name });
    const now = planned.brief.shot.elevation_deg;
    const key = JSON.stringify([advice, reasons, now, subject.judged_by, planned.name]);
    if (key === this.#key) return;
    this.#key = key;
    const inside = now >= advice.least_deg && now <= advice.most_deg;
    const take = (value) =>
      make("button", { type: "button", onclick: (event) => this.#take(value, event) }, `Take ${angle(value)}`);
    byId("advice").replaceChildren(
      make("h3", {}, "Which elevation suits the subject"),
      make("p", { class: "advised" },
        `${angle(advice.least_deg)} to ${angle(advice.most_deg)}, beginning at ${angle(advice.start_deg)}`),
      make("p", {}, `Judged by: ${word(subject.judged_by)}.`),
      make("ul", { class: "reasons" }, reasons.map((reason) => make("li", {}, reason))),
      make("p", {}, inside ? `– ${degrees(now)} lies within it.` : `○ ${degrees(now)} lies outside it.`),
      make("p", { class: "quiet" }, `At ${angle(advice.start_deg)} its top makes ${percent(advice.top_share_at_start)} of what is seen of it${advice.contents_at_start === null ? "" : `, and ${percent(advice.contents_at_start)} of its contents show`}.`),
      make("div", { class: "row" }, [advice.least_deg, advice.start_deg, advice.most_deg].filter((each, index, all) => all.indexOf(each) === index).map(take)),
    );
  }

  #take(value, event) {
    const rounded = Math.round(value * 10) / 10;
    this.planner.propose({ edits: [elevationEdit(this.desk, rounded)], at: event.timeStamp });
    requestAnimationFrame(() => this.desk.commit());
    byId("elevation-slide").focus({ preventScroll: true });
  }
}
