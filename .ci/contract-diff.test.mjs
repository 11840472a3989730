// Small pairs of contracts, each with the breaking differences a caller would meet.
import assert from "node:assert/strict";
import { test } from "node:test";
import { differences } from "./contract-diff.mjs";

const contract = (call, components = {}) => ({ paths: { "/things": { post: { operationId: "things", ...call } } }, components });
const request = (schema, components) => contract({ requestBody: { content: { "application/json": { schema } } } }, components);
const answer = (schema, components) => contract({ responses: { 200: { content: { "application/json": { schema } } } } }, components);
const members = (properties, more = {}) => ({ type: "object", properties, ...more });
const holds = (name, before, after, expected) => test(name, () => assert.deepEqual(differences(before, after), expected));

const number = { type: "number" };

holds("nothing differs", request(members({ a: number })), request(members({ a: number })), []);
holds("a path is gone", contract({}), { paths: {} }, ["POST /things: is gone"]);
holds("a call is gone", contract({}), { paths: { "/things": { get: {} } } }, ["POST /things: is gone"]);
holds("a call is renamed", contract({}), contract({ operationId: "stuff" }), ["POST /things: is called stuff, was things"]);
holds("a path is new", contract({}), { paths: { ...contract({}).paths, "/more": { get: {} } } }, []);

const closed = { additionalProperties: false };
holds("a request's member is gone", request(members({ a: number, b: number }, closed)), request(members({ a: number }, closed)), ["POST /things body b: is gone"]);
holds("a request's member is new", request(members({ a: number }, closed)), request(members({ a: number, b: number }, closed)), []);
holds("a request's member is required", request(members({ a: number })), request(members({ a: number, b: number }, { required: ["a", "b"] })), [
  "POST /things body a: is required",
  "POST /things body b: is required",
]);
holds("a request's member is no longer required", request(members({ a: number }, { required: ["a"] })), request(members({ a: number })), []);
holds("a request takes no other members", request(members({})), request(members({}, closed)), ["POST /things body: takes no other members"]);

holds("an answer's member is gone", answer(members({ a: number, b: number }, { required: ["a", "b"] })), answer(members({ a: number }, { required: ["a"] })), [
  "POST /things 200 b: is gone",
]);
holds("an answer's member may be missing", answer(members({ a: number }, { required: ["a"] })), answer(members({ a: number })), ["POST /things 200 a: may be missing"]);
holds("an answer's member is new", answer(members({ a: number })), answer(members({ a: number, b: number }, { required: ["b"] })), []);

holds("a request's word is gone", request({ enum: ["a", "b"] }), request({ enum: ["b", "c"] }), ['POST /things body: the word "a" is gone']);
holds("an answer's word is gone", answer({ enum: ["a", "b"] }), answer({ enum: ["b"] }), ['POST /things 200: the word "a" is gone']);
holds("a text becomes one of some words", request({ type: "string" }), request({ type: "string", enum: ["a"] }), ['POST /things body: takes only "a"']);

holds("a request's type is narrowed", request({ type: ["null", "number"] }), request({ type: "integer" }), [
  "POST /things body: no longer takes null",
  "POST /things body: no longer takes number",
]);
holds("a request's type is widened", request({ type: "integer" }), request({ type: ["null", "number"] }), []);
holds("an answer may be null", answer({ type: "number" }), answer({ type: ["null", "number"] }), ["POST /things 200: may be null"]);
holds("an answer is never null any more", answer({ type: ["null", "number"] }), answer({ type: "number" }), []);

holds("a request's range is narrowed", request({ minimum: 0, maximum: 9 }), request({ minimum: 1, maximum: 8, minLength: 2 }), [
  "POST /things body: minimum is 1, was 0",
  "POST /things body: minLength is 2, was not held",
  "POST /things body: maximum is 8, was 9",
]);
holds("a request's range is widened", request({ minimum: 1, maximum: 8, maxItems: 3 }), request({ minimum: 0, maximum: 9 }), []);
holds("an answer's range is widened", answer({ maximum: 8 }), answer({ maximum: 9 }), ["POST /things 200: maximum is 9, was 8"]);

const reference = { $ref: "#/components/schemas/Thing" };
const thing = (schema) => ({ schemas: { Thing: schema } });
holds("a difference behind a reference, in a list", answer({ type: "array", items: reference }, thing(members({ a: number }))), answer({ type: "array", items: reference }, thing(members({}))), [
  "POST /things 200[] a: is gone",
]);
holds("a reference that may be null", answer({ oneOf: [{ type: "null" }, reference] }, thing(members({ a: number }))), answer({ oneOf: [reference, { type: "null" }] }, thing(members({ a: number }))), []);
holds("a reference that becomes null", answer(reference, thing(members({}))), answer({ oneOf: [reference, { type: "null" }] }, thing(members({}))), ["POST /things 200: may be null"]);
holds("a thing that holds itself", request(reference, thing(members({ next: reference, a: number }, closed))), request(reference, thing(members({ next: reference }, closed))), [
  "POST /things body a: is gone",
]);

const kinds = (names, form) => ({
  schemas: {
    Thing: { type: "object", discriminator: { propertyName: "kind", mapping: Object.fromEntries(names.map((name) => [name, `#/components/schemas/${name}`])) }, ...form(names) },
    ...Object.fromEntries(names.map((name) => [name, name === "red" ? { allOf: [reference, members({ a: number })] } : { allOf: [reference, members({ b: number })] }])),
  },
});
const base = () => members({ kind: { type: "string" } }, { unevaluatedProperties: false });
holds("a kind is gone", request(reference, kinds(["red", "blue"], base)), request(reference, kinds(["red"], base)), ["POST /things body: the kind blue is gone"]);
holds("kinds are told by another form", request(reference, kinds(["red", "blue"], (names) => ({ ...base(), anyOf: names.map((name) => ({ $ref: `#/components/schemas/${name}` })) }))), request(reference, kinds(["red", "blue"], base)), []);

const parameter = (more = {}, schema = { type: "string" }) => ({ name: "units", in: "query", schema, ...more });
holds("a parameter is gone", contract({ parameters: [parameter()] }), contract({}), ["POST /things: parameter units is gone"]);
holds("a parameter is required", contract({ parameters: [parameter()] }), contract({ parameters: [parameter({ required: true })] }), ["POST /things: parameter units is required"]);
holds("a parameter's word is gone behind a reference", contract({ parameters: [parameter({}, { enum: ["us", "metric"] })] }), contract({ parameters: [{ $ref: "#/components/parameters/units" }] }, { parameters: { units: parameter({}, { enum: ["us"] }) } }), [
  'POST /things ?units: the word "metric" is gone',
]);

holds("an answer's media type and header are gone", contract({ responses: { 200: { headers: { Age: {} }, content: { "text/csv": {} } }, 404: {} } }), contract({ responses: { 200: { content: {} } } }), [
  "POST /things 200: header Age is gone",
  "POST /things 200: text/csv is gone",
]);
holds("an answer is gone", contract({ responses: { 200: {} } }), contract({ responses: { 204: {} } }), ["POST /things 200: is no longer answered"]);
holds("a body is required", contract({}), contract({ requestBody: { required: true, content: {} } }), ["POST /things: a body is required"]);
