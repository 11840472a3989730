// Says what is wrong with an answer, in words; an empty list where nothing is.
import { codes, schemaOf } from "./contract.mjs";

const problemMembers = new Set(Object.keys(schemaOf("Problem").properties));
const faultMembers = new Set(Object.keys(schemaOf("Fault").properties));

// Refusals that any address may get beside those its call names: of an address or method that is none, and of a message the server cannot read.
const everywhere = ["400", "404", "405", "414", "431"];
// A request line longer than this may be refused before it is read to its end.
export const mostOfALine = 8000;
const notNumber = /(?<![\p{L}])(NaN|Infinity)(?![\p{L}])|∞/u;
const ofTheRuntime = /System\.|Microsoft\.|SetupService\.|\bat [A-Z]\w+\.\w+\(|Exception/;

/**
 * The faults of an answer: `status`, `headers` (names in small letters), `body` (bytes), `seconds` it took. A message that is no HTTP, or whose first line
 * is too long, is refused by the server itself, without a body.
 */
export function faultsOf(request, answer, longestSeconds) {
  const { status, headers } = answer;
  if (request.isMalformed && status === 400 && answer.body.length === 0) return [];
  if (request.path.length > mostOfALine && status === 414 && answer.body.length === 0) return [];
  const faults = [];
  const text = answer.body.toString("utf8");
  const media = (headers["content-type"] ?? "").split(";")[0];
  if (answer.seconds > longestSeconds) faults.push(`the answer took ${answer.seconds.toFixed(1)} s, ${longestSeconds} s are allowed`);
  if (status >= 500 && status !== 503) faults.push(`status ${status}`);
  if (!request.hasRaw && notNumber.test(text)) faults.push(`the answer holds “${text.match(notNumber)[0]}”`);
  if (!headers["request-id"]) faults.push("no Request-Id");
  if (request.mustRefuse && status < 400 && !isToldInside(request, text)) faults.push(`a request that breaks the contract was answered with ${status}`);
  if (request.mode === "sound" && ![200, 304, 503].includes(status)) faults.push(`an example was answered with ${status}`);
  const isHead = request.method === "HEAD";
  if (status >= 400) {
    if (request.mode !== "path" && !(String(status) in request.call.answers) && !everywhere.includes(String(status))) faults.push(`the call does not name ${status}`);
    if (ofTheRuntime.test(text)) faults.push("the refusal speaks of the code");
    if (status === 405 && !headers.allow) faults.push("405 without Allow");
    if ((status === 503 || status === 429) && !/^\d+$/.test(headers["retry-after"] ?? "")) faults.push(`${status} without Retry-After`);
    if (media !== "application/problem+json") faults.push(`${status} as “${media}”`);
    else if (!isHead) faults.push(...faultsOfProblem(text, request, answer));
  } else if (status === 200 && !isHead) {
    const named = request.call.answers["200"] ?? [];
    if (request.mode !== "path" && !named.includes(media)) faults.push(`200 as “${media}”`);
    faults.push(...faultsOfAnswer(media, text, request));
  }
  return faults;
}

/** What-if tells the faults of one change in that change's answer; its chart draws the others. */
const isToldInside = (request, text) => request.call.name === "whatIfChart" || (request.call.name === "whatIf" && JSON.parse(text).changes.some((change) => change.problem));

/** RFC 9457 and the contract's members. */
function faultsOfProblem(text, request, answer) {
  const problem = parsed(text);
  if (problem === undefined) return ["the problem is no JSON"];
  const faults = [];
  for (const name of Object.keys(problem)) if (!problemMembers.has(name)) faults.push(`the problem has a member ${name}`);
  for (const name of ["type", "title", "detail"]) if (typeof problem[name] !== "string" || problem[name].length === 0) faults.push(`the problem has no ${name}`);
  if (!/^\/docs\/problems\/[a-z-]+$/.test(problem.type)) faults.push(`the problem's type is “${problem.type}”`);
  if (problem.status !== answer.status) faults.push(`the problem says ${problem.status} under ${answer.status}`);
  if (problem.requestId !== answer.headers["request-id"]) faults.push("the problem has another request id than the header");
  if (!Array.isArray(problem.errors)) return [...faults, "the problem has no list of errors"];
  if (problem.type === "/docs/problems/invalid-request" && problem.errors.length === 0) faults.push("a broken request without a fault");
  if (problem.errors.length > 101) faults.push(`${problem.errors.length} faults listed`);
  const sent = request.call.body?.media === "application/json" && request.body ? parsed(request.body.toString("utf8")) : undefined;
  // Of a member given twice only the last is left once it is read here; faults of the first are in places that are gone.
  const twice = problem.errors.filter((fault) => fault.code === "duplicateMember").map((fault) => `${fault.pointer}/`);
  for (const fault of problem.errors) faults.push(...faultsOfFault(fault, twice.some((place) => fault.pointer?.startsWith(place)) ? undefined : sent));
  return faults;
}

function faultsOfFault(fault, sent) {
  const faults = [];
  for (const name of Object.keys(fault)) if (!faultMembers.has(name)) faults.push(`a fault has a member ${name}`);
  if (!codes.has(fault.code)) faults.push(`the code “${fault.code}” is not on the page of codes`);
  if (typeof fault.message !== "string" || fault.message.length === 0) faults.push(`a fault ${fault.code} without a message`);
  if (fault.message?.length > 2000) faults.push(`a message of ${fault.message.length} characters`);
  if ((typeof fault.pointer === "string") === (typeof fault.parameter === "string")) faults.push(`a fault ${fault.code} with ${fault.pointer === undefined ? "neither pointer nor parameter" : "pointer and parameter"}`);
  if (typeof fault.pointer === "string" && sent !== undefined && !leads(sent, fault.pointer, ["required", "undetermined", "unreachable", "duplicateMember"].includes(fault.code))) faults.push(`the pointer ${fault.pointer} of ${fault.code} leads nowhere`);
  return faults;
}

/** RFC 6901, section 4; what is missing, or stands at its default, need not be there, nor what holds it. */
function leads(value, pointer, mayBeMissing) {
  for (const step of pointer.split("/").slice(1)) {
    const name = step.replaceAll("~1", "/").replaceAll("~0", "~");
    if (value === null || typeof value !== "object" || !Object.hasOwn(value, name)) return mayBeMissing;
    value = value[name];
  }
  return true;
}

function faultsOfAnswer(media, text, request) {
  switch (media) {
    case "application/json":
      return parsed(text) === undefined ? ["the answer is no JSON"] : [];
    case "application/x-ndjson":
      return faultsOfLines(text, request);
    case "image/svg+xml":
    case "text/html":
      return media === "image/svg+xml" || text.includes("xmlns") ? faultsOfMarkup(text, media === "text/html") : [];
    case "text/csv":
      return text.includes("\u0000") && !request.body.includes(0) ? ["the table holds a zero byte"] : [];
    default:
      return [];
  }
}

function faultsOfLines(text) {
  const lines = text.trimEnd().split("\n").map(parsed);
  if (lines.includes(undefined)) return ["a line is no JSON"];
  const faults = [];
  const last = lines.at(-1);
  if (!last.summary) faults.push("the last line is no summary");
  else if (last.summary.isComplete !== true && !last.summary.reason && !last.summary.problem) faults.push("an incomplete batch without a reason");
  for (const { problem } of lines) {
    if (problem && (!/^\/docs\/problems\//.test(problem.type) || problem.status >= 500 || !Array.isArray(problem.errors))) faults.push(`a line's problem is ${JSON.stringify(problem).slice(0, 200)}`);
  }
  return faults;
}

const emptyInHtml = new Set(["meta", "link", "br", "hr", "img", "input", "col", "wbr", "!doctype"]);

/** XML 1.0, well-formedness, as far as a picture can break it: tags in pairs, no bare < or &, only characters XML has. */
function faultsOfMarkup(text, isHtml) {
  if (/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/.test(text)) return ["the markup holds a character that XML has not"];
  if (/&(?!#\d+;|#x[\da-fA-F]+;|[A-Za-z]\w*;)/.test(text)) return ["the markup holds a bare &"];
  const open = [];
  for (const [, closing, name, rest] of text.replace(/<!--.*?-->|<style[^>]*>.*?<\/style>/gs, "").matchAll(/<(\/?)([^\s/>]*)((?:"[^"]*"|[^">])*)>/g)) {
    if (closing) {
      if (open.pop() !== name) return [`the markup closes ${name} where it is not open`];
    } else if (!/^[!?A-Za-z]/.test(name)) {
      return ["the markup holds a bare <"];
    } else if (!rest.endsWith("/") && !/^[!?]/.test(name) && !(isHtml && emptyInHtml.has(name.toLowerCase()))) {
      open.push(name);
    }
  }
  return open.length ? [`the markup leaves ${open.at(-1)} open`] : [];
}

function parsed(text) {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
