// Reads api/openapi.json as the generator of bad requests needs it: what members a value has by the contract, and the calls with their examples.
import { readFileSync } from "node:fs";

const root = new URL("../../", import.meta.url);
const document = JSON.parse(readFileSync(new URL("api/openapi.json", root)));

/** The part that a reference names, with what stands beside the reference. */
export function resolve(part) {
  let { $ref, ...rest } = part ?? {};
  while ($ref) {
    const { $ref: next, ...found } = $ref.slice(2).split("/").reduce((at, name) => at[name.replaceAll("~1", "/").replaceAll("~0", "~")], document);
    rest = { ...found, ...rest };
    $ref = next;
  }
  return rest;
}

/** A schema without its choices: a reference followed, of several alternatives the first that is not null. */
export function plain(schema) {
  const found = resolve(schema);
  const choices = found.oneOf ?? found.anyOf;
  return choices ? plain(choices.map(resolve).find((choice) => choice.type !== "null")) : found;
}

/** The members that an object may have, each with its schema; which ones depends on the object's kind. */
export function members(schema, value) {
  const found = plain(schema);
  const all = { ...found.properties };
  for (const part of found.allOf ?? []) Object.assign(all, members(part, value));
  if (found.if) {
    const kind = found.if.properties.kind.const;
    if (value?.kind === kind) all.kind = { const: kind };
    Object.assign(all, members(value?.kind === kind ? found.then : (found.else ?? {}), value));
  }
  return all;
}

/** The kinds that a value may be, where the contract tells them apart; else null. */
export const kinds = (schema) => (plain(schema).discriminator ? Object.keys(plain(schema).discriminator.mapping) : null);

/** The types that JSON knows the value may have, without null. */
export const types = (schema) => [plain(schema).type ?? (plain(schema).properties || plain(schema).if ? "object" : "any")].flat().filter((type) => type !== "null");

/** True where an object may have no member that the contract does not name. */
export const isClosed = (schema) => plain(schema).additionalProperties === false || plain(schema).unevaluatedProperties === false;

/** Every place of a value, itself first: where it stands, its schema (null where the contract has none for it) and its JSON Pointer. */
export function places(value, schema, holder = { root: value }, key = "root", pointer = "") {
  const list = [{ holder, key, value, schema, pointer }];
  if (Array.isArray(value)) {
    const items = schema && plain(schema).items;
    value.forEach((item, i) => list.push(...places(item, items, value, i, `${pointer}/${i}`)));
  } else if (value && typeof value === "object" && Object.getPrototypeOf(value) === Object.prototype) {
    const known = schema ? members(schema, value) : {};
    for (const [name, member] of Object.entries(value)) {
      list.push(...places(member, Object.hasOwn(known, name) ? known[name] : null, value, name, `${pointer}/${name.replaceAll("~", "~0").replaceAll("/", "~1")}`));
    }
  }
  return list;
}

function bodyOf(operation) {
  const [media, content] = Object.entries(operation.requestBody?.content ?? {})[0] ?? [];
  if (!media) return null;
  const example = resolve(content.examples.demo).value;
  return { media, schema: content.schema, example };
}

/** Every call of the contract: its name, method, path, parameters, body with example, and what it may answer. */
export const calls = Object.entries(document.paths).flatMap(([path, methods]) =>
  Object.entries(methods).map(([method, operation]) => ({
    name: operation.operationId,
    method: method.toUpperCase(),
    path,
    parameters: (operation.parameters ?? []).map(resolve),
    body: bodyOf(operation),
    answers: Object.fromEntries(Object.entries(operation.responses).map(([status, answer]) => [status, Object.keys(resolve(answer).content ?? {})])),
  })),
);

/** The schema of a name. */
export const schemaOf = (name) => document.components.schemas[name];

/** The codes that docs/problems/codes.md lists. */
export const codes = new Set([...readFileSync(new URL("docs/problems/codes.md", root), "utf8").matchAll(/^\| `(\w+)` \|/gm)].map((row) => row[1]));
