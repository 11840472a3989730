// A seller's catalogue, made up: wheels with tyres, the same lines at every run.
// node docs/demo/catalogue.mjs > api/examples/further/catalogue.csv
import { fileURLToPath } from "node:url";

const count = 2400;

// Tyres that are usual on wheels of a diameter, with the widths of rim, in, they go on.
const tyres = {
  15: [["185/55R15 82V", 5.5, 6.5], ["195/50R15 82V", 6, 7], ["195/55R15 85V", 6, 7], ["195/65R15 91V", 6, 7], ["205/50R15 86V", 6.5, 7.5]],
  16: [["195/50R16 88V XL", 6, 7], ["205/45R16 87W XL", 6.5, 7.5], ["205/50R16 87V", 6.5, 7.5], ["205/55R16 91V", 6.5, 7.5], ["215/55R16 97W XL", 6.5, 7.5], ["225/50R16 92W", 7, 8]],
  17: [["205/45R17 88W XL", 7, 7.5], ["215/45R17 91W XL", 7, 8], ["225/45R17 91W", 7.5, 8.5], ["225/45R17 94W XL", 7.5, 8.5], ["235/45R17 97W XL", 8, 9], ["245/40R17 91W", 8, 9], ["225/50R17 98W XL", 7, 8]],
  18: [["215/40R18 89W XL", 7.5, 8], ["225/40R18 92Y XL", 7.5, 8.5], ["235/40R18 95Y XL", 8, 9], ["245/40R18 97Y XL", 8, 9], ["255/35R18 94Y XL", 8.5, 9.5]],
  19: [["225/35R19 88Y XL", 7.5, 8.5], ["235/35R19 91Y XL", 8, 9], ["245/35R19 93Y XL", 8, 9], ["255/35R19 96Y XL", 8.5, 9.5], ["265/30R19 93Y XL", 9, 10]],
};

// Bolt circles with the centre bores wheels for them are made with, mm.
const circles = [["4x100", 54.1], ["4x100", 56.1], ["4x108", 63.4], ["5x100", 56.1], ["5x108", 63.4], ["5x108", 67.1], ["5x112", 57.1], ["5x112", 66.6], ["5x114.3", 64.1], ["5x114.3", 67.1], ["5x120", 72.6]];
const ranges = ["Tarn Hill", "Low Beck", "Stonethwaite", "Aldermoor Sprint", "Nine Becks"];
const finishes = ["silver", "grey", "black", "bronze", "polished"];

/** Numbers from 0 to below 1 that follow from a seed (a 32-bit mixing function). */
function drawer(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** The catalogue as a table with a line for each wheel with its tyre, no two alike. */
export function catalogue(seed = 20261130) {
  const draw = drawer(seed);
  const whole = (from, to) => from + Math.floor(draw() * (to - from + 1));
  const one = (list) => list[whole(0, list.length - 1)];
  const lines = new Map();
  while (lines.size < count) {
    const diameter = one(["15", "16", "16", "17", "17", "17", "18", "18", "19"]);
    const [tyre, narrowest, widest] = one(tyres[diameter]);
    const width = narrowest + whole(0, Math.round(2 * (widest - narrowest))) / 2;
    const [circle, bore] = one(circles.filter(([name]) => diameter < 18 || !name.startsWith("4x")));
    const wheel = `${width}Jx${diameter} ET${whole(3, 11) * 5 - (width > 8 ? 5 : 0)} ${circle} CB${bore}`;
    const key = `${wheel},${tyre}`;
    const price = whole(60, 190) * 5 + 40 * (diameter - 15);
    const name = `${one(ranges)} ${one(finishes)}`;
    if (!lines.has(key)) lines.set(key, [`line-${String(lines.size + 1).padStart(4, "0")}`, wheel, tyre, price, name].join(","));
  }

  return ["id,wheelMarking,tyreMarking,priceEur,range", ...lines.values(), ""].join("\n");
}

if (process.argv[1] === fileURLToPath(import.meta.url)) process.stdout.write(catalogue());
