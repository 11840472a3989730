// Prints every difference between the released contract and the present one that can break a caller: what was there and is gone,
// what is asked for anew, what is taken in a narrower range, what is answered in a wider one.
//   node .ci/contract-diff.mjs RELEASED PRESENT
import { readFile } from "node:fs/promises";
import { pathToFileURL } from "node:url";

// What breaks a caller of the released contract is a failure. A difference that is meant all the same is released on purpose: copy the
// present contract over api/openapi.released.json and say in docs/CHANGELOG.md what callers have to change.
const breakingFails = true;

const methods = ["get", "put", "post", "delete", "options", "head", "patch", "trace"];

// Each limit, and whether a greater value of it lets more through.
const limits = {
  minimum: false, exclusiveMinimum: false, minLength: false, minItems: false, minProperties: false,
  maximum: true, exclusiveMaximum: true, maxLength: true, maxItems: true, maxProperties: true,
};

/** Every breaking difference, as sentences in the order of the released contract. */
export function differences(released, present) {
  const found = [];
  const seen = new Set();
  const report = (place, what) => found.push(`${place}: ${what}`);

  for (const [path, item] of Object.entries(released.paths ?? {})) {
    for (const method of methods.filter((name) => item[name])) {
      const place = `${method.toUpperCase()} ${path}`;
      const call = present.paths?.[path]?.[method];
      if (call) compareCall(place, item[method], call);
      else report(place, "is gone");
    }
  }
  return found;

  function compareCall(place, before, after) {
    if (before.operationId !== after.operationId) report(place, `is called ${after.operationId}, was ${before.operationId}`);
    compareParameters(place, before.parameters ?? [], after.parameters ?? []);
    compareBody(place, resolve(released, before.requestBody), resolve(present, after.requestBody));
    for (const [status, old] of Object.entries(before.responses ?? {})) {
      const answer = resolve(present, after.responses?.[status]);
      if (!answer) {
        // A refusal that no longer happens breaks nobody.
        if (status.startsWith("2")) report(`${place} ${status}`, "is no longer answered");
        continue;
      }
      const was = resolve(released, old);
      for (const name of Object.keys(was.headers ?? {}).filter((name) => !answer.headers?.[name])) report(`${place} ${status}`, `header ${name} is gone`);
      compareContent(`${place} ${status}`, was.content, answer.content, "answer");
    }
  }

  function compareParameters(place, before, after) {
    const key = (parameter) => `${parameter.in} ${parameter.name}`;
    const old = new Map(before.map((one) => resolve(released, one)).map((one) => [key(one), one]));
    const now = new Map(after.map((one) => resolve(present, one)).map((one) => [key(one), one]));
    for (const [name, parameter] of old) {
      const same = now.get(name);
      if (!same) report(place, `parameter ${parameter.name} is gone`);
      else compareSchemas(`${place} ?${parameter.name}`, parameter.schema, same.schema, "request");
    }
    for (const [name, parameter] of now) {
      if (parameter.required && !old.get(name)?.required) report(place, `parameter ${parameter.name} is required`);
    }
  }

  function compareBody(place, before, after) {
    if (!before && after?.required) report(place, "a body is required");
    if (!before) return;
    if (!after) return report(place, "takes no body");
    if (after.required && !before.required) report(place, "a body is required");
    compareContent(`${place} body`, before.content, after.content, "request");
  }

  function compareContent(place, before, after, direction) {
    for (const [type, media] of Object.entries(before ?? {})) {
      if (!after?.[type]) report(place, `${type} is gone`);
      else compareSchemas(place, media.schema, after[type].schema, direction);
    }
  }

  // In a request the present contract must take all that the released one took; in an answer it must say nothing the released
  // one did not.
  function compareSchemas(place, before, after, direction) {
    const old = flatten(released, before);
    const now = flatten(present, after);
    const isRequest = direction === "request";
    compareTypes(place, old, now, isRequest);

    // What two named schemas hold is told once, at the first place they stand.
    const pair = [direction, target(before), target(after)];
    if (pair.every(Boolean)) {
      if (seen.has(pair.join(" "))) return;
      seen.add(pair.join(" "));
    }
    compareWords(place, old, now, isRequest);
    compareLimits(place, old, now, isRequest);
    compareMembers(place, old, now, direction);
    if (old.items && now.items) compareSchemas(`${place}[]`, old.items, now.items, direction);
    compareKinds(place, old, now, direction);
  }

  function compareTypes(place, old, now, isRequest) {
    const [wide, narrow] = isRequest ? [now, old] : [old, now];
    if (!wide.types) return;
    if (!narrow.types) return report(place, isRequest ? `takes only ${[...wide.types].join(", ")}` : "may be of any type");
    for (const type of narrow.types) {
      const isHeld = wide.types.has(type) || (type === "integer" && wide.types.has("number"));
      if (!isHeld) report(place, isRequest ? `no longer takes ${type}` : `may be ${type}`);
    }
  }

  function compareWords(place, old, now, isRequest) {
    if (old.words && now.words) {
      for (const word of old.words.filter((word) => !now.words.includes(word))) report(place, `the word ${JSON.stringify(word)} is gone`);
    } else if (now.words && isRequest) {
      report(place, `takes only ${now.words.map((word) => JSON.stringify(word)).join(", ")}`);
    }
  }

  function compareLimits(place, old, now, isRequest) {
    for (const [limit, greaterIsWider] of Object.entries(limits)) {
      const [was, is] = isRequest ? [old.schema[limit], now.schema[limit]] : [now.schema[limit], old.schema[limit]];
      if (is === undefined) continue;
      const isNarrower = was === undefined || (greaterIsWider ? is < was : is > was);
      if (isNarrower) report(place, `${limit} is ${now.schema[limit] ?? "not held"}, was ${old.schema[limit] ?? "not held"}`);
    }
    const { pattern } = now.schema;
    if (isRequest && pattern !== undefined && pattern !== old.schema.pattern) report(place, `must match ${pattern}`);
  }

  function compareMembers(place, old, now, direction) {
    const isRequest = direction === "request";
    for (const [name, member] of Object.entries(old.members)) {
      const same = now.members[name];
      if (same) compareSchemas(`${place} ${name}`, member, same, direction);
      else if (now.isClosed || !isRequest) report(`${place} ${name}`, "is gone");
    }
    const [must, could] = isRequest ? [now.required, old.required] : [old.required, now.required];
    for (const name of must) {
      if (could.has(name) || (!isRequest && !now.members[name])) continue;
      report(`${place} ${name}`, isRequest ? "is required" : "may be missing");
    }
    if (isRequest && now.isClosed && !old.isClosed) report(place, "takes no other members");
  }

  function compareKinds(place, old, now, direction) {
    for (const [word, kind] of Object.entries(old.kinds)) {
      if (now.kinds[word]) compareSchemas(`${place} (${word})`, kind, now.kinds[word], direction);
      else report(place, `the kind ${word} is gone`);
    }
    if (old.choices.length !== now.choices.length) {
      const isBroken = direction === "request" ? now.choices.length < old.choices.length : now.choices.length > old.choices.length;
      if (isBroken && old.choices.length > 0) report(place, `has ${now.choices.length} forms, had ${old.choices.length}`);
    } else {
      old.choices.forEach((choice, i) => compareSchemas(place, choice, now.choices[i], direction));
    }
  }
}

function resolve(document, part) {
  if (!part?.$ref) return part;
  const target = part.$ref.split("/").slice(1).reduce((place, name) => place?.[name.replaceAll("~1", "/").replaceAll("~0", "~")], document);
  if (!target) throw new Error(`${part.$ref} leads nowhere`);
  const { $ref, ...beside } = part;
  return { ...resolve(document, target), ...beside };
}

/** The named schema that one is, or is beside a null. */
function target(schema) {
  const plain = (schema?.oneOf ?? schema?.anyOf ?? []).filter((choice) => choice.type !== "null");
  return schema?.$ref ?? (plain.length === 1 ? plain[0].$ref : undefined);
}

/** A schema with its references followed, its parts put together, and its null told as a type. */
function flatten(document, schema) {
  const flat = { schema: {}, types: undefined, words: undefined, members: {}, required: new Set(), items: undefined, isClosed: false, kinds: {}, choices: [] };
  add(resolve(document, schema) ?? {}, false);
  return flat;

  function add(one, isBase) {
    for (const part of one.allOf ?? []) add(resolve(document, part), true);
    const choices = one.oneOf ?? one.anyOf ?? [];
    const plain = choices.filter((choice) => choice.type !== "null");
    if (one.discriminator?.mapping) {
      // The kinds of a base are not compared once more from inside one of them.
      if (!isBase) for (const [word, target] of Object.entries(one.discriminator.mapping)) flat.kinds[word] = { $ref: target };
    } else if (plain.length === 1) {
      add(resolve(document, plain[0]), isBase);
      if (plain.length < choices.length) flat.types?.add("null");
    } else {
      flat.choices.push(...choices);
    }
    if (one.type !== undefined) flat.types = new Set([one.type].flat());
    if (one.const !== undefined) flat.words = [one.const];
    if (one.enum) flat.words = one.enum;
    if (one.items) flat.items = one.items;
    Object.assign(flat.members, one.properties);
    for (const name of one.required ?? []) flat.required.add(name);
    if (one.additionalProperties === false || one.unevaluatedProperties === false) flat.isClosed = true;
    for (const limit of [...Object.keys(limits), "pattern"]) if (one[limit] !== undefined) flat.schema[limit] = one[limit];
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  const [released, present] = await Promise.all(process.argv.slice(2, 4).map(async (file) => JSON.parse(await readFile(file, "utf8"))));
  const found = differences(released, present);
  for (const one of found) console.log(one);
  console.log(`${found.length} breaking differences`);
  if (breakingFails && found.length > 0) process.exit(1);
}
