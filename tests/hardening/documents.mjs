// Changes JSON documents in single places: within the contract up to its edges, and beyond it.
import { isClosed, kinds, members, places, plain, types } from "./contract.mjs";

/** A piece of JSON text that stands as it is, for what no value can say: 1e999, a name twice, a bare NaN. */
export class Raw {
  constructor(text) {
    this.text = text;
  }
}

/** JSON text of a document that may hold Raw. */
export function write(value) {
  if (value instanceof Raw) return value.text;
  if (Array.isArray(value)) return `[${value.map(write).join(",")}]`;
  if (value && typeof value === "object") return `{${Object.entries(value).map(([name, member]) => `${JSON.stringify(name)}:${write(member)}`).join(",")}}`;
  return Object.is(value, -0) ? "-0" : JSON.stringify(value);
}

export const oddTexts = [
  "", " ", "\t\n", "NaN", "Infinity", "-Infinity", "null", "0", "1e999", "\u0000", "\u0001\u0008\u001f", "\u007f\u0085", "\ufeff", "\ufffe\uffff", "\u202eabc", "é", "e\u0301", "Ⅳ", "½", "１７", "🛞",
  "\u2028", "<script>alert(1)</script>", "]]>", "--><svg onload=x>", "&amp;&lt;", "\"'`", "../../etc/passwd", "%00%ff", "{{7*7}}", "=1+1", "';--", "225/45R17 94W XL", "225/45ZR17 (94W)", "8Jx17 ET40", "5x112",
  "-0", "1,5", "1.5.5", "M14x1.5", "a".repeat(61), "x".repeat(201), "😀".repeat(100), "y".repeat(10_000),
];

const brokenTexts = ['"\\ud800"', '"\\udc00x"', '"\\u00"', '"\\x41"', '"a\nb"', '"\u0007"', '"unfinished'];
const brokenNumbers = ["NaN", "Infinity", "-Infinity", "01", ".5", "1.", "+1", "0x10", "1_000", "1e", "--1", "1,5", "٣"];
const hugeNumbers = ["1e999", "-1e999", "1e309", `1${"0".repeat(400)}`];
const ownNumbers = ["1e-400", "5e-324", "-5e-324", "1E2", "1.0e+2", "3.00000000000000000000000000001", "0e99", "-0.0", `0.${"0".repeat(400)}1`];

/** A number within the bounds of its schema, at an edge more often than not. */
export function inRange(random, schema) {
  const { minimum = -1e6, maximum = 1e6, type } = plain(schema);
  const isWhole = [type].flat().includes("integer");
  const whole = (value) => Math.min(maximum, Math.max(minimum, Math.round(value)));
  const value = random.pick([
    () => minimum,
    () => maximum,
    () => Math.min(maximum, Math.max(minimum, 0)),
    () => Math.min(maximum, Math.max(minimum, random.pick([1e-300, -1e-300, 1e-9, -1e-9, 1e-3]))),
    () => minimum + (maximum - minimum) * 1e-9,
    () => maximum - (maximum - minimum) * 1e-9,
    () => random.between(minimum, maximum),
    () => random.between(minimum, maximum),
  ])();
  return isWhole ? whole(value) : value;
}

/** A value that the contract allows, as far as a schema tells: no deeper than asked. */
export function fresh(random, schema, depth = 4) {
  const found = plain(schema);
  if ("const" in found) return found.const;
  if (found.enum) return random.pick(found.enum.filter((word) => word !== null));
  switch (types(schema)[0]) {
    case "number":
    case "integer":
      return inRange(random, schema);
    case "boolean":
      return random.chance(0.5);
    case "string":
      return random.chance(0.7) && found.examples ? random.pick(found.examples) : random.pick(oddTexts).slice(0, found.maxLength ?? 60);
    case "array": {
      const count = Math.min(found.maxItems ?? 3, Math.max(found.minItems ?? 0, random.below(4)));
      return depth > 0 ? Array.from({ length: count }, () => fresh(random, found.items, depth - 1)) : [];
    }
    case "object": {
      const value = {};
      const possible = kinds(schema);
      if (possible) value.kind = random.pick(possible);
      const wanted = new Set(found.required ?? []);
      for (const [name, member] of Object.entries(members(schema, value))) {
        if (name !== "kind" && (wanted.has(name) || (depth > 0 && random.chance(0.35)))) value[name] = fresh(random, member, depth - 1);
        else if (name === "kind" && !possible) value[name] = fresh(random, member, depth - 1);
      }
      return value;
    }
    default:
      return random.pick(["a", 1, 1.5, true]);
  }
}

/** Another value for a place that keeps the contract as far as its schema tells. */
const within = {
  number: (random, place) => (random.chance(0.2) && inBounds(place.schema, 0) ? new Raw(random.pick(ownNumbers.filter((text) => inBounds(place.schema, Number(text))).concat("0"))) : inRange(random, place.schema)),
  integer: (random, place) => inRange(random, place.schema),
  string: (random, place) => {
    const { enum: words, maxLength = 60 } = plain(place.schema);
    return words ? random.pick(words.filter((word) => word !== null)) : random.pick([random.pick(oddTexts).slice(0, maxLength), place.value, "z".repeat(maxLength)]);
  },
  boolean: (random, place) => !place.value,
  array: (random, place) => {
    const { minItems = 0, maxItems = 20, items } = plain(place.schema);
    const list = [...place.value];
    return random.pick([
      () => list.slice(0, minItems),
      () => list.reverse(),
      () => [...list, ...list].slice(0, maxItems),
      () => (list.length ? Array.from({ length: Math.min(maxItems, 60) }, (_, i) => list[i % list.length]) : list),
      () => [...list, fresh(random, items)].slice(-maxItems),
      () => list.slice(0, Math.max(minItems, list.length - 1)),
    ])();
  },
  object: (random, place) => {
    const { required = [] } = plain(place.schema);
    const changed = { ...place.value };
    const names = Object.keys(changed).filter((name) => !required.includes(name) && name !== "kind");
    const absent = Object.entries(members(place.schema, place.value)).filter(([name]) => !Object.hasOwn(changed, name));
    if (names.length && random.chance(0.4)) delete changed[random.pick(names)];
    else if (absent.length) Object.assign(changed, Object.fromEntries([random.pick(absent)].map(([name, schema]) => [name, fresh(random, schema)])));
    return changed;
  },
};

function inBounds(schema, value) {
  const { minimum = -Infinity, maximum = Infinity } = plain(schema);
  return value >= minimum && value <= maximum;
}

const nested = (depth) => new Raw("[".repeat(depth) + "]".repeat(depth));

const otherTypes = { number: ["1.5", true, [], {}, [1]], integer: [1.5, "3", false, {}, []], string: [0, true, [], {}, ["a"]], boolean: [0, "true", [], {}], array: [0, "a", true, {}], object: [0, "a", true, []] };

/** Every way to break the contract at one place; each gives what to put there. All of them must be refused. */
function breaches(random, place) {
  const { minimum, maximum, enum: words, maxLength, minItems, maxItems, required = [] } = plain(place.schema);
  const type = types(place.schema)[0];
  const ways = [() => random.pick(otherTypes[type] ?? [nested(3)]), () => nested(random.pick([31, 33, 40, 2000]))];
  const beyond = (edge, away) => edge + away * random.pick([Math.max(Math.abs(edge), 1e-6) * 1e-9, 1, 1e6, 1e300]);
  if (type === "number" || type === "integer") {
    ways.push(() => new Raw(random.pick(hugeNumbers)), () => random.pick(["NaN", "Infinity", "-Infinity", "1"]), () => new Raw(random.pick(brokenNumbers)));
    if (maximum !== undefined) ways.push(() => beyond(maximum, 1), () => beyond(minimum, -1));
    if (type === "integer") ways.push(() => 1.5, () => new Raw("99999999999999999999"));
  }
  if (type === "string") {
    ways.push(() => new Raw(random.pick(brokenTexts)));
    if (words) ways.push(() => random.pick(["", "nonsense", `${words[0]}${words[0]}`, words[0].toUpperCase(), ` ${words[0]}`, `${words[0]}\u0000`].filter((word) => !words.includes(word))));
    else if (maxLength) ways.push(() => "q".repeat(maxLength + 1), () => "€".repeat(20_000));
  }
  if (type === "array" && Array.isArray(place.value)) {
    if (maxItems !== undefined) ways.push(() => Array.from({ length: maxItems + 1 }, (_, i) => place.value[i % place.value.length] ?? 0));
    if (minItems > 0) ways.push(() => []);
    ways.push(() => [...place.value, nested(2)]);
  }
  if (type === "object" && isClosed(place.schema)) {
    const names = Object.keys(place.value);
    ways.push(() => ({ ...place.value, [random.pick(["unknown", "", "__proto__x", "constructor", "n".repeat(500), "é\u0000"])]: random.pick([null, 1, {}]) }));
    if (names.length) {
      ways.push(() => new Raw(`${write(place.value).slice(0, -1)},${JSON.stringify(names[0])}:${write(place.value[names[0]])}}`));
      ways.push(() => Object.fromEntries(Object.entries(place.value).map(([name, value], i) => [i === 0 ? name.toUpperCase() : name, value])));
    }
    for (const name of required) ways.push(() => Object.fromEntries(Object.entries(place.value).filter(([own]) => own !== name)));
    if (kinds(place.schema)) ways.push(() => ({ ...place.value, kind: random.pick(["nonsense", "", 3, null]) }));
  }
  return ways;
}

const put = (place, value) => (place.holder[place.key] = value);

/** The places of a document that may be changed. */
const changeable = (holder, schema) =>
  places(holder.root, schema, holder, "root").filter((place) => place.schema && place.value !== null && !(place.value instanceof Raw) && !("const" in plain(place.schema)));

/** A copy of a document, changed at so many places, within the contract as far as its schema tells. */
export function changeWithin(random, document, schema, count) {
  const holder = { root: structuredClone(document) };
  for (let i = 0; i < count; i++) {
    const possible = changeable(holder, schema);

    // Half of the changes go to numbers, which the domain computes with.
    const numbers = possible.filter((place) => typeof place.value === "number");
    const place = random.pick(numbers.length && random.chance(0.5) ? numbers : possible);
    const change = within[types(place.schema)[0]];
    if (change) put(place, change(random, place));
  }
  return holder.root;
}

/** Breaks the contract at one place of a document, which is changed or given back anew. */
export function breakContract(random, document, schema) {
  const holder = { root: document };
  const place = random.pick(changeable(holder, schema));
  put(place, random.pick(breaches(random, place))());
  return holder.root;
}
