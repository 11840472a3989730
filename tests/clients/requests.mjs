// api/requests: a file a subject, with every call of the contract, its body taken from api/examples. Written from the contract, then parsed as an editor would and sent.
//   node tests/clients/requests.mjs --write     writes the files anew
//   node tests/clients/requests.mjs URL         fails where they differ from what would be written, or where a request is not answered as documented
import assert from "node:assert/strict";
import { mkdirSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = new URL("../../", import.meta.url);
const folder = new URL("api/requests/", root);
const contract = JSON.parse(readFileSync(new URL("api/openapi.json", root)));
const resolve = (part) => (part.$ref ? part.$ref.split("/").slice(1).reduce((at, name) => at[name], contract) : part);
const operations = Object.entries(contract.paths).flatMap(([path, methods]) => Object.entries(methods).map(([method, operation]) => ({ method: method.toUpperCase(), path, ...operation })));
const examples = new Map(Object.keys(contract.components.examples).filter((name) => name.includes(".request.")).map((name) => [`#/components/examples/${name}`, name]));
const otherParts = { "fitment-batch.request.csv": ["car", "fitment-batch.car.json", "application/json"], "fitment-catalogue.request.csv": ["cars", "fitment-catalogue.cars.ndjson", "application/x-ndjson"] };

function address({ path, parameters = [] }) {
  const query = [];
  for (const { name, in: place, example } of parameters.map(resolve)) {
    if (example === undefined) continue;
    if (place === "path") path = path.replace(`{${name}}`, encodeURIComponent(example));
    else query.push(`${name}=${encodeURIComponent(example)}`);
  }
  return path + (query.length ? `?${query.join("&")}` : "");
}

function text(operation) {
  const lines = [`### ${operation.summary}`, `# @name ${operation.operationId}`, `${operation.method} {{url}}${address(operation)}`];
  const [type, content] = Object.entries(operation.requestBody?.content ?? {})[0] ?? [];
  if (type === undefined) return lines;
  const file = examples.get(content.examples.demo.$ref);
  if (type !== "multipart/form-data") return [...lines, `Content-Type: ${type}`, "", `< ../examples/${file}`];
  const [name, carFile, carType] = otherParts[file];
  const part = (partName, partFile, partType) => ["--part", `Content-Disposition: form-data; name="${partName}"; filename="${partFile}"`, `Content-Type: ${partType}`, "", `< ../examples/${partFile}`];
  return [...lines, `Content-Type: ${type}; boundary=part`, "", ...part(name, carFile, carType), ...part("candidates", file, "text/csv"), "--part--"];
}

/** The files as they must be, by name. */
function files() {
  const bySubject = operations.reduce((map, one) => map.set(one.tags[0], [...(map.get(one.tags[0]) ?? []), one]), new Map());
  return new Map([...bySubject].map(([subject, list]) => [`${subject.toLowerCase()}.http`, ["@url = http://localhost:5080", "", ...list.flatMap((operation) => [...text(operation), ""])].join("\n")]));
}

/** The requests of a file, as an editor reads it: `name`, `method`, `address`, `headers`, `body`. */
function parse(content, url) {
  return content.split(/^### .*$/m).slice(1).map((block) => {
    const lines = block.trim().split("\n");
    const name = /^# @name (\w+)$/.exec(lines.shift())[1];
    const [method, target] = lines.shift().split(" ");
    const headers = {};
    while (lines.length && lines[0] !== "") {
      const [header, value] = lines.shift().split(/: (.*)/);
      headers[header] = value;
    }
    lines.shift();
    const included = lines.map((line) => (line.startsWith("< ") ? readFileSync(new URL(line.slice(2), folder), "utf8").trimEnd() : line));
    return { name, method, address: target.replace("{{url}}", url), headers, body: lines.length ? included.join(headers["Content-Type"].startsWith("multipart") ? "\r\n" : "\n") : undefined };
  });
}

async function send(request) {
  const operation = operations.find((one) => one.operationId === request.name);
  const response = await fetch(request.address, { method: request.method, headers: request.headers, body: request.body });
  const body = await response.text();
  assert.equal(response.status, 200, `${request.name}: ${body.slice(0, 500)}`);
  const [type, content] = Object.entries(operation.responses[200].content)[0];
  assert.equal(response.headers.get("content-type").split(";")[0], type, request.name);
  if (type !== "application/json") return assert.ok(body.length > 0, request.name);
  const documented = content.example ?? resolve(content.examples.demo).value;
  assert.deepEqual(Object.keys(JSON.parse(body)).sort(), Object.keys(documented).sort(), `${request.name}: other members than its example`);
}

const wanted = files();
if (process.argv[2] === "--write") {
  mkdirSync(folder, { recursive: true });
  for (const [name, content] of wanted) writeFileSync(new URL(name, folder), content);
} else {
  assert.deepEqual(readdirSync(folder).sort(), [...wanted.keys()].sort(), `${fileURLToPath(folder)} has other files than the contract has subjects`);
  const sent = [];
  for (const [name, content] of wanted) {
    const kept = readFileSync(new URL(name, folder), "utf8");
    assert.equal(kept, content, `${name} is not what the contract makes: node tests/clients/requests.mjs --write`);
    for (const request of parse(kept, process.argv[2])) {
      await send(request);
      sent.push(request.name);
    }
  }
  assert.deepEqual(sent.sort(), operations.map((one) => one.operationId).sort());
  console.log(`${sent.length} requests of api/requests sent and answered as documented`);
}
