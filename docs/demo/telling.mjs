// What the stories tell alike: tables of readings, of packages, of what was refused.
import { number, signed } from "./page.mjs";

const names = { frontLeft: "front left", frontRight: "front right", rearLeft: "rear left", rearRight: "rear right" };
const n = (text) => ({ text, isNumber: true });

/** The depths read across each tread. */
export const depths = (tyres) => ({
  table: {
    head: ["Tyre", n("new"), n("outer"), n("middle"), n("inner")],
    rows: tyres.map(({ position, newDepthMm, depthMm }) => [names[position], n(`${number(newDepthMm)} mm`), ...["outer", "centre", "inner"].map((zone) => n(`${number(depthMm[zone])} mm`))]),
  },
});

/** The likely causes, and what was thought of beside them. */
export const causes = (answer) => ({
  table: {
    head: ["What it could be", n("How likely")],
    rows: answer.causes.filter(({ probability }) => probability >= 0.05).slice(0, 4).map(({ cause, tyres, probability }) => [`${spoken(cause)}, ${tyres.map((one) => names[one] ?? one).join(" and ")}`, n(`${Math.round(100 * probability)} %`)]),
    marked: 0,
  },
});

/** The packages worth choosing between. */
export const packages = (plan) => ({
  table: {
    head: ["Package", n("Cost"), n("Grip"), n("Tread off flat"), n("Tread life"), n("Ride")],
    rows: plan.packages.map(({ parts, cost, after, change }) => [
      parts.length ? parts.join(" + ") : "no parts, set what can be set",
      n(cost.amount ? `${number(cost.amount, 0)} ${cost.currency}` : "nothing"),
      n(after.track.limitG === null ? "not known" : signed(change.track.limitG, 2, " g")),
      n(number(after.track.offFlatDeg, 1, "°")),
      n(after.treadLifeFactor === null ? "not known" : signed(100 * (after.treadLifeFactor - 1), 0, " %")),
      n(`${number(Math.max(after.road.frontRideFrequencyHz, after.road.rearRideFrequencyHz), 2)} Hz`),
    ]),
    marked: plan.packages.findIndex(({ isRecommended }) => isRecommended),
  },
});

/** What was refused, with the reason. */
export const refused = (plan) => ({ list: plan.rejected.map(({ parts, reason }) => `${parts.join(" + ")}: ${reason}`) });

/** How the choice goes with money. */
export const byBudget = (plan) => plan.byBudget
  .map(({ amount, parts }) => `${amount ? `from ${number(amount, 0)} ${plan.packages.find(({ cost }) => cost.currency)?.cost.currency ?? ""}` : "with nothing to spend"} ${parts.length ? parts.join(" and ") : "settings only"}`)
  .join(", ");

const spoken = (code) => code.replace(/[A-Z]/g, (letter) => " " + letter.toLowerCase());

/** The members of a body that a call names, for the next one. */
export const adds = (answer, path) => answer.next.find((one) => one.path === path)?.adds ?? [];

const stages = { prepare: "before", strip: "strip", renew: "renew", refit: "refit", atRideHeight: "on its wheels", setUp: "set up", check: "check" };

/** The steps of the work, with what is tightened to what. */
export const workOrder = ({ workOrder: { steps } }) => ({
  table: {
    head: ["Stage", "What is done", "Tightened to"],
    rows: steps.map(({ stage, text, torques }, i) => [i > 0 && steps[i - 1].stage === stage ? "" : stages[stage] ?? stage, text, torques.map((one) => `${spoken(one.fastener)}: ${one.text}`).join("; ")]),
  },
});

/** The angles that are set or put back. */
export const alignment = ({ alignment: { lines } }) => ({
  table: {
    head: ["Angle", n("as found"), n("to"), n("within")],
    rows: lines.filter(({ task }) => task !== "read").map(({ axle, side, angle, nowDeg, text, toleranceDeg }) => [`${axle} ${side ?? ""} ${spoken(angle)}`.replace("  ", " "), n(number(nowDeg, 2, "°")), n(text ?? "not known"), n(`± ${number(toleranceDeg, 2, "°")}`)]),
  },
});
