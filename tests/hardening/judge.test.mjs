// The judge finds what it is there to find. node --test tests/hardening/
import assert from "node:assert/strict";
import { test } from "node:test";
import { calls } from "./contract.mjs";
import { faultsOf, mostOfALine } from "./judge.mjs";
import { makeRequest } from "./requests.mjs";

const check = calls.find((call) => call.name === "fitmentCheck");
const sent = { vehicle: {} };
const request = { call: check, mode: "edges", method: "POST", path: "/v1/fitment/check", headers: {}, body: Buffer.from(JSON.stringify(sent)), mustRefuse: false, hasRaw: false };
const fault = { pointer: "/vehicle", code: "wrongType", message: "vehicle is a text." };
const problem = { type: "/docs/problems/invalid-request", title: "The request breaks the contract", status: 400, detail: "1 fault.", requestId: "a", errors: [fault] };
const answer = (status, body, more = {}) => ({
  status,
  headers: { "request-id": "a", "content-type": status === 200 ? "application/json" : "application/problem+json", ...more.headers },
  body: Buffer.from(typeof body === "string" ? body : JSON.stringify(body)),
  seconds: more.seconds ?? 0.1,
});
const judge = (given, changed = {}) => faultsOf({ ...request, ...changed }, given, 10);

test("a sound answer and a sound refusal have no fault", () => {
  assert.deepEqual(judge(answer(200, { verdict: "pass" })), []);
  assert.deepEqual(judge(answer(400, problem)), []);
  assert.deepEqual(judge(answer(503, { ...problem, status: 503, type: "/docs/problems/unavailable" }, { headers: { "retry-after": "1" } }), { call: calls.find((call) => call.name === "plan") }), []);
});

test("only a first line that is too long may be refused without a problem", () => {
  const bare = { status: 414, headers: {}, body: Buffer.alloc(0), seconds: 0.1 };
  assert.deepEqual(judge(bare, { path: `/v1/fitment/check?a=${"b".repeat(mostOfALine)}` }), []);
  assert.notDeepEqual(judge(bare), []);
});

const wrong = {
  "status 500": answer(500, { ...problem, status: 500 }),
  "“NaN”": answer(200, '{"a":"NaN"}'),
  "no JSON": answer(200, '{"a":1'),
  "200 as “text/plain”": answer(200, "{}", { headers: { "content-type": "text/plain" } }),
  "took 11.0 s": answer(200, {}, { seconds: 11 }),
  "no Request-Id": answer(200, {}, { headers: { "request-id": undefined } }),
  "does not name 409": answer(409, { ...problem, status: 409 }),
  "speaks of the code": answer(400, { ...problem, detail: "System.InvalidOperationException" }),
  "without Retry-After": answer(429, { ...problem, status: 429 }),
  "405 without Allow": answer(405, { ...problem, status: 405 }),
  "400 as “text/html”": answer(400, "<html>", { headers: { "content-type": "text/html" } }),
  "no title": answer(400, { ...problem, title: "" }),
  "a member trace": answer(400, { ...problem, trace: 1 }),
  "says 422 under 400": answer(400, { ...problem, status: 422 }),
  "another request id": answer(400, { ...problem, requestId: "b" }),
  "without a fault": answer(400, { ...problem, errors: [] }),
  "not on the page of codes": answer(400, { ...problem, errors: [{ ...fault, code: "oops" }] }),
  "without a message": answer(400, { ...problem, errors: [{ ...fault, message: "" }] }),
  "neither pointer nor parameter": answer(400, { ...problem, errors: [{ ...fault, pointer: undefined }] }),
  "leads nowhere": answer(400, { ...problem, errors: [{ ...fault, pointer: "/vehicle/front" }] }),
};
for (const [words, given] of Object.entries(wrong)) {
  test(`found: ${words}`, () => assert.ok(judge(given).some((one) => one.includes(words)), `${judge(given)}`));
}

test("of a member given twice the first one's faults lead to places that are gone", () => {
  const body = Buffer.from('{"vehicle":{"twice":{"odd":1},"twice":{"even":2}}}');
  const inside = { ...fault, code: "unknownMember", pointer: "/vehicle/twice/odd" };
  const both = { ...problem, errors: [inside, { ...fault, code: "duplicateMember", pointer: "/vehicle/twice" }] };
  assert.deepEqual(judge(answer(400, both), { body }), []);
  assert.ok(judge(answer(400, { ...problem, errors: [inside] }), { body }).some((one) => one.includes("leads nowhere")));
});

test("a request that must be refused is not to be answered, an example is", () => {
  assert.ok(judge(answer(200, {}), { mustRefuse: true })[0].includes("breaks the contract"));
  assert.ok(judge(answer(400, problem), { mode: "sound" })[0].includes("an example"));
});

test("pictures are well-formed", () => {
  const picture = (body) => judge(answer(200, body, { headers: { "content-type": "image/svg+xml" } }), { call: calls.find((call) => call.name === "fitmentDrawing") });
  assert.deepEqual(picture('<svg viewBox="0 0 1 1"><g><path d="M0 0"/></g><text>a &amp; b</text></svg>'), []);
  assert.ok(picture("<svg><g></svg>")[0].includes("closes svg"));
  assert.ok(picture("<svg><text>a & b</text></svg>")[0].includes("bare &"));
  assert.ok(picture("<svg><text>\u0001</text></svg>")[0].includes("XML has not"));
  assert.ok(picture('<svg><path d="M NaN 0"/></svg>')[0].includes("NaN"));
});

test("batches end in a summary", () => {
  const lines = (body) => judge(answer(200, body, { headers: { "content-type": "application/x-ndjson" } }), { call: calls.find((call) => call.name === "fitmentBatch") });
  assert.deepEqual(lines('{"line":1,"verdict":"pass"}\n{"summary":{"isComplete":true}}\n'), []);
  assert.ok(lines('{"line":1,"verdict":"pass"}\n')[0].includes("no summary"));
  assert.ok(lines('{"line":1,"problem":{"type":"/docs/problems/internal-error","status":500,"errors":[]}}\n{"summary":{"isComplete":true}}\n')[0].includes("a line's problem"));
});

test("a request is the same for the same seed and number, and most differ", () => {
  const texts = Array.from({ length: 200 }, (_, i) => JSON.stringify(makeRequest(7, i)));
  assert.deepEqual(texts, Array.from({ length: 200 }, (_, i) => JSON.stringify(makeRequest(7, i))));
  assert.ok(new Set(texts).size > 190);
  assert.notDeepEqual(texts, Array.from({ length: 200 }, (_, i) => JSON.stringify(makeRequest(8, i))));
});
