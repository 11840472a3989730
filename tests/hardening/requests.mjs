// Makes bad and nearly bad requests from the contract; request number i of a seed is always the same.
import { calls, schemaOf } from "./contract.mjs";
import { Raw, breakContract, changeWithin, fresh, inRange, oddTexts, write } from "./documents.mjs";
import { Random } from "./random.mjs";

// Plans cost a hundred times a check, and some calls take nothing that could be wrong.
const rarer = { plan: 0.25, planSheets: 0.15, planSheetsPage: 0.1, problemPage: 0.3, methodPage: 0.3, healthLive: 0.3, healthReady: 0.3, version: 0.3, loadIndices: 0.3, speedSymbols: 0.3 };
const weights = Object.fromEntries(calls.map((call) => [call.name, rarer[call.name] ?? 1]));
const byName = Object.fromEntries(calls.map((call) => [call.name, call]));

/**
 * Request number `index`: `call` of the contract, `method`, `path`, `headers`, `body` (bytes or null), `mode` (how it is bad) and `mustRefuse`, true where a 2xx answer
 * would be a fault; `hasRaw` where it holds what an answer may only quote; `isMalformed` where it is no HTTP.
 */
export function makeRequest(seed, index) {
  const random = new Random(seed, index);
  const call = byName[random.weighted(weights)];
  const modes = call.body ? { edges: 40, breach: 27, text: 12, query: 8, headers: 8, path: 3, sound: 2 } : { query: 80, headers: 12, path: 6, sound: 2 };
  const mode = random.weighted(modes);
  const request = { index, call, mode, method: call.method, path: pathOf(call), headers: {}, body: null, mustRefuse: false };
  const query = soundQuery(random, call);
  if (call.body) Object.assign(request, bodies[call.body.media](random, call.body, mode));
  if (mode === "query") spoilQuery(random, call, query);
  const text = queryText(query);
  request.path += text && `?${text}`;
  if (mode === "headers") spoilHeaders(random, request);
  if (mode === "path") spoilPath(random, request);
  request.hasRaw = !isTidy(request);

  // RFC 9110, 5.5: a value is of visible ASCII, with octets beyond it obsolete; and the server takes no path with a zero byte.
  request.isMalformed = Object.values(request.headers).some((value) => /[^\t\x20-\x7e]/.test(value)) || request.path.split("?")[0].includes("%00");
  return request;
}

const pathOf = (call) => call.path.replace(/\{(\w+)\}/g, (_, name) => call.parameters.find((parameter) => parameter.name === name && parameter.in === "path").example);

/** True where neither address nor body holds a text that looks like what an answer must not hold. */
const isTidy = (request) => !/nan|infinity|∞/i.test(decodeURIComponentSafely(request.path) + (request.body ? request.body.toString("latin1") : ""));

function decodeURIComponentSafely(text) {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

// The address.

function soundQuery(random, call) {
  const query = [];
  for (const parameter of call.parameters) {
    if (parameter.in !== "query" || ["expires", "signature"].includes(parameter.name)) continue;
    if (parameter.required || random.chance(0.3)) query.push([parameter.name, encodeURIComponent(parameter.example)]);
  }
  return query;
}

const queryText = (query) => query.map(([name, value]) => (value === null ? name : `${name}=${value}`)).join("&");

function spoilQuery(random, call, query) {
  const parameters = call.parameters.filter((parameter) => parameter.in === "query");
  const times = 1 + random.below(2);
  for (let i = 0; i < times; i++) {
    const parameter = parameters.length ? random.pick(parameters) : { name: "units", schema: {} };
    const put = (value) => query.splice(0, query.length, ...query.filter(([name]) => name !== parameter.name), [parameter.name, value]);
    random.pick([
      () => put(encodeURIComponent(inRange(random, parameter.schema))),
      () => put(encodeURIComponent(inRange(random, parameter.schema))),
      () => put(encodeURIComponent(random.pick(["NaN", "Infinity", "-Infinity", "1e999", "1e-400", "-1", "0", "1,5", "0x1F", " 7", "1e2", "+8", "9".repeat(400), "٣", "1.5.5"]))),
      () => put(encodeURIComponent(random.pick(oddTexts.filter((text) => text.length < 400)))),
      () => put(encodeURIComponent(spoilText(random, String(parameter.example ?? "metric")))),
      () => put(encodeURIComponent(spoilText(random, String(parameter.example ?? "metric")))),
      () => put(random.pick(["%", "%ZZ", "%00", "%ff%fe", "%c0%80", "+", "%2525", "%ed%a0%80", null, ""])),
      () => query.push([random.pick(["unknown", "Units", "", "marking[]", "%00", "units%20"]), "1"]),
      () => query.push([parameter.name, encodeURIComponent(parameter.example ?? "1")]),
      () => put("a".repeat(random.pick([1990, 2048, 2100, 6000]))),
      () => query.splice(0, query.length),
    ])();
  }
}

/** A text with some of its characters lost, doubled, exchanged or made odd: what a hand at a keyboard may make of it, and worse. */
export function spoilText(random, text) {
  let list = [...text];
  const times = 1 + random.below(3);
  for (let i = 0; i < times; i++) {
    const at = random.below(list.length + 1);
    random.pick([
      () => list.splice(at, 1),
      () => list.splice(at, 0, list[at] ?? "x"),
      () => list.splice(at, 0, random.pick(["0", "9", "/", "R", "Z", "(", ")", " ", ",", ".", "-", "x", "\u00a0", "½", "é", "🛞", "\u0000", "\u202e", '"', ";", "\t", "E", "J"])),
      () => (list = list.slice(0, at)),
      () => (list = list.concat(list.slice(at))),
      () => (list[at] = (list[at] ?? "a").toLowerCase()),
      () => list.splice(at, 1, random.pick([..."0123456789"])),
    ])();
  }
  return list.join("").toWellFormed();
}

function spoilPath(random, request) {
  const [path, query = ""] = request.path.split("?");
  random.pick([
    () => (request.path = `${path}/?${query}`),
    () => (request.path = `${path.toUpperCase()}?${query}`),
    () => (request.path = `${path}/${random.pick(["..%2f..%2f", "%00", "chart", "nothing", "a".repeat(3000), "%e2%82"])}`),
    () => (request.path = path.slice(0, -1 - random.below(4))),
    () => (request.method = random.pick(["GET", "POST", "PUT", "DELETE", "PATCH", "OPTIONS", "HEAD", "TRACE", "QUERY"])),
  ])();
  if (["GET", "HEAD", "OPTIONS", "TRACE"].includes(request.method)) request.body = null;
}

function spoilHeaders(random, request) {
  const headers = request.headers;
  random.pick([
    () => delete headers["content-type"],
    () => (headers["content-type"] = random.pick(["text/plain", "application/xml", "application/jsonx", "application/json; charset=utf-16", "application/json; charset=nonsense", "application/json;;;", "json", "multipart/form-data", "multipart/form-data; boundary=", `multipart/form-data; boundary=${"b".repeat(300)}`, "application/x-www-form-urlencoded", "application/json, application/json"])),
    () => (headers.accept = random.pick(["image/png", "text/html", "*/*;q=0", "application/json;q=0", "nonsense", "image/*", "application/*+json", ",,,", "a/b;q=NaN", "x".repeat(2000)])),
    () => (headers["content-encoding"] = random.pick(["gzip", "br", "identity", "gzip, gzip", "nonsense"])),
    () => (headers["accept-encoding"] = random.pick(["br;q=NaN", "gzip;q=-1", "*;q=0", "identity;q=0", "nonsense", ",,"])),
    () => (headers["if-none-match"] = random.pick(["*", '"a"', "W/", '"unfinished', "é".repeat(40)])),
    () => (headers.traceparent = random.pick(["00-0", "00-00000000000000000000000000000000-0000000000000000-00", "ff-0af7651916cd43dd8448eb211c80319c-b7ad6b7169203331-01", "x"])),
    () => (headers["api-key"] = random.pick(["", "x", "0".repeat(64), "\u00e9"])),
    () => (headers.range = "bytes=0-1"),
    () => (headers.host = random.pick(["localhost", "example.invalid:99", "[::1]"])),
    () => (headers.expect = "100-continue"),
    () => (headers["accept-language"] = "de-DE, tr;q=0.9"),
    () => (headers.origin = random.pick(["null", "http://page.invalid", "nonsense"])),
  ])();
}

// The bodies.

const jsonType = { "content-type": "application/json" };

const bodies = {
  "application/json": (random, body, mode) => {
    const { text, mustRefuse } = jsonText(random, body.example, body.schema, mode);
    return { headers: { ...jsonType }, body: mode === "text" ? spoilBytes(random, text) : Buffer.from(text), mustRefuse };
  },

  "application/x-ndjson": (random, body, mode) => {
    const lines = body.example.trim().split("\n");
    const schemas = lines.map((line) => schemaOf(line.includes('"vehicle"') ? "BatchCarLine" : "BatchCandidateLine"));
    const changed = lines.map((line, i) => (random.chance(0.4) ? jsonText(random, JSON.parse(line), schemas[i], mode).text : line));
    if (mode === "text") spoilLines(random, changed);
    const text = changed.join(random.pick(["\n", "\n", "\r\n"])) + random.pick(["\n", "", "\n\n"]);
    return { headers: { "content-type": "application/x-ndjson" }, body: mode === "text" && random.chance(0.4) ? spoilBytes(random, text) : Buffer.from(text) };
  },

  "multipart/form-data": (random, body, mode) => {
    const boundary = `part${random.below(1e9)}`;
    const parts = Object.entries(body.example).map(([name, content]) => formPart(random, name, content, mode));
    if (mode === "breach" || mode === "text") spoilParts(random, parts);
    const text = parts.map((part) => `--${boundary}\r\n${part.head}\r\n\r\n${part.content}\r\n`).join("");
    const closed = text + (mode === "text" && random.chance(0.3) ? random.pick(["", `--${boundary}`, "--other--\r\n"]) : `--${boundary}--\r\n`);
    return { headers: { "content-type": `multipart/form-data; boundary=${boundary}` }, body: mode === "text" && random.chance(0.4) ? spoilBytes(random, closed) : Buffer.from(closed) };
  },
};

/** The example, or a fresh document, changed as the mode says. */
function jsonText(random, example, schema, mode) {
  if (mode === "sound" || mode === "query" || mode === "path" || mode === "headers") return { text: write(example), mustRefuse: false };
  const isFresh = random.chance(0.12);
  let document = isFresh ? fresh(random, schema) : changeWithin(random, example, schema, mode === "edges" ? 1 + random.below(6) : random.below(2));
  if (mode !== "breach") return { text: write(document), mustRefuse: false };
  for (let i = random.below(3); i > 0 && !(document instanceof Raw); i--) document = breakContract(random, document, schema);
  if (!(document instanceof Raw) && document !== null && typeof document === "object") document = breakContract(random, document, schema);
  return { text: write(document), mustRefuse: true };
}

const formTypes = { car: "application/json", cars: "application/x-ndjson", candidates: "text/csv" };

function formPart(random, name, content, mode) {
  const head = `content-disposition: form-data; name="${name}"; filename="${name}"\r\ncontent-type: ${formTypes[name]}`;
  if (name === "car") return { head, content: jsonText(random, content, schemaOf("BatchCarLine"), mode).text };
  if (name === "cars") return { head, content: content.trim().split("\n").map((line) => (random.chance(0.4) ? jsonText(random, JSON.parse(line), schemaOf("CatalogueCarLine"), mode).text : line)).join("\n") };
  return { head, content: mode === "sound" || mode === "query" ? content : spoilTable(random, content, mode) };
}

/** A table with cells, header, separators, quotes or rows changed. */
export function spoilTable(random, text, mode) {
  let rows = text.trimEnd().split(/\r?\n/).map((row) => row.split(","));
  const times = 1 + random.below(4);
  for (let i = 0; i < times; i++) {
    const row = random.below(rows.length);
    const cell = random.below(rows[row].length);
    random.pick([
      () => (rows[row][cell] = random.pick(["", " ", "NaN", "Infinity", "1e999", "-0", "1e-400", "0", "-5", "7.5", "999999", "x", '"', '""', '"a""b"', '"a\nb"', "'", "=cmd", "1.234,5", "é", "\u0000", "🛞", "z".repeat(300)])),
      () => (rows[row][cell] = spoilText(random, rows[row][cell])),
      () => rows[row].push(random.pick(["", "more", "9"])),
      () => rows[row].pop(),
      () => rows.splice(row, 1),
      () => rows.push([...rows[row]]),
      () => (rows = rows.concat(Array.from({ length: 50 }, () => [...rows[row]]))),
      () => (rows[0][cell % rows[0].length] = random.pick(["", "unknown", rows[0][0], "offsetmm", "offsetMm ", "wheelMarking", "tyreMarking", "wheel.massKg", '"id"', "\ufeffid"])),
      () => rows.splice(row, 0, []),
      () => mode === "text" && (rows[row][cell] = "w".repeat(random.pick([65_000, 65_537, 70_000]))),
    ].filter(Boolean))();
    if (rows.length === 0) rows = [[""]];
    rows = rows.map((one) => (one.length ? one : [""]));
  }
  const separator = random.pick([",", ",", ";", "\t", "|"]);
  return random.pick(["", "", "\ufeff"]) + rows.map((row) => row.join(separator)).join(random.pick(["\n", "\r\n", "\r"])) + random.pick(["\n", "", "\n\n\n"]);
}

function spoilParts(random, parts) {
  const i = random.below(parts.length);
  random.pick([
    () => parts.splice(i, 1),
    () => parts.reverse(),
    () => parts.push({ ...parts[i] }),
    () => (parts[i].head = parts[i].head.replace(/name="\w+"/, 'name="other"')),
    () => (parts[i].head = parts[i].head.replace(/content-type: .*/, "content-type: image/png")),
    () => (parts[i].head = random.pick(["", "content-disposition: form-data", "nonsense", `content-disposition: form-data; name="${"n".repeat(20_000)}"`])),
    () => (parts[i].content = ""),
    () => (parts[i].content = random.pick(oddTexts)),
    () => {},
  ])();
}

function spoilLines(random, lines) {
  const i = random.below(lines.length);
  random.pick([
    () => lines.splice(i, 1),
    () => lines.splice(i, 0, random.pick(["", " ", "{}", "[]", "null", "{", "nonsense", '{"id":1}', '{"id":{}}', `{"id":"${"i".repeat(300)}"}`, '{"vehicle":{},"axle":"front","candidate":{}}'])),
    () => (lines[i] = lines[i].slice(0, random.below(lines[i].length))),
    () => (lines[i] = lines[i] + lines[i]),
    () => (lines[i] = `{"id":"${"l".repeat(random.pick([65_400, 65_536, 70_000]))}"}`),
    () => lines.splice(0, lines.length),
    () => lines.reverse(),
  ])();
}

/** The bytes of a text, cut, torn or filled with what is no text. */
function spoilBytes(random, text) {
  const bytes = Buffer.from(text);
  const at = random.below(bytes.length + 1);
  const insert = (piece) => Buffer.concat([bytes.subarray(0, at), Buffer.from(piece), bytes.subarray(at)]);
  return random.pick([
    () => bytes.subarray(0, at),
    () => bytes.subarray(0, at),
    () => Buffer.concat([bytes.subarray(0, at), bytes.subarray(Math.min(bytes.length, at + 1 + random.below(40)))]),
    () => insert(random.pick([[0xff], [0xc0, 0x80], [0xed, 0xa0, 0x80], [0], [0xe2, 0x82], [0x1f, 0x8b, 8, 0]])),
    () => insert(random.pick([",", "}", "]", '"', "{", "[", "//x\n", "/**/", "\\", "\u2028", "NaN", "Infinity", "1e999", ":", "\n", "null"])),
    () => Buffer.concat([Buffer.from([0xef, 0xbb, 0xbf]), bytes]),
    () => Buffer.from(text, "utf16le"),
    () => Buffer.concat([bytes, bytes]),
    () => Buffer.alloc(0),
    () => Buffer.from(random.pick([" ", "\n\n", "null", "0", '""', "[]", "{}", "true", "{", "\u0000"])),
    () => Buffer.from(`${"[".repeat(random.pick([31, 32, 33, 100_000]))}`),
    () => Buffer.from(`{"a":`.repeat(random.pick([31, 32, 33, 40_000]))),
    () => Buffer.alloc(random.pick([262_143, 262_144, 262_145, 524_289, 600_000]), random.pick([" ", "a", "["])),
    () => insert(" ".repeat(5000)),
  ])();
}
