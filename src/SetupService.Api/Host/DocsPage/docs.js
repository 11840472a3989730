// The page of the calls: reads the contract, shows each call with its example filled in, sends it and shows the answer. A call's form is made when it is opened.
"use strict";

let contract;

/** An element with properties and children. */
function make(tag, properties = {}, ...children) {
  const element = Object.assign(document.createElement(tag), properties);
  element.append(...children);
  return element;
}

/** The part that a reference names, with what stands beside the reference. */
function resolve(part) {
  if (!part?.$ref) return part;
  const { $ref, ...beside } = part;
  return { ...resolve($ref.slice(2).split("/").reduce((at, name) => at[name.replaceAll("~1", "/").replaceAll("~0", "~")], contract)), ...beside };
}

const exampleOf = (content) => content.example ?? resolve(content.examples?.demo)?.value;
const asText = (value) => (typeof value === "string" ? value : JSON.stringify(value, null, 2));

/** What a value may be, in a few words: its type or words, and its limits. */
function kindOf(schema) {
  const { type, enum: words, minimum, maximum, maxLength, items } = schema;
  const parts = [words ? words.filter((word) => word !== null).join(" | ") : [type ?? (schema.properties ? "object" : "")].flat().filter((name) => name !== "null").join(" or ")];
  if (items) parts[0] = `list of ${kindOf(chosen(items))}`;
  if (minimum !== undefined) parts.push(`${minimum} to ${maximum}`);
  if (maxLength !== undefined) parts.push(`at most ${maxLength} characters`);
  return parts.filter(Boolean).join(", ");
}

/** A schema without its choices: the first that is not null. */
function chosen(schema) {
  const found = resolve(schema);
  const choices = found.oneOf ?? found.anyOf;
  return choices ? { ...found, ...chosen(choices.find((one) => resolve(one).type !== "null")) } : found;
}

/** The members of a document as a tree whose branches are made when they are opened. */
function tree(schema) {
  const found = chosen(schema);
  if (found.items) return tree(found.items);
  const parts = [found, ...(found.allOf ?? []).map(chosen)];
  const kinds = Object.entries(found.discriminator?.mapping ?? {}).map(([kind, $ref]) => [`kind: ${kind}`, { $ref }, false]);
  const members = parts.flatMap((part) => Object.entries(part.properties ?? {}).map(([name, member]) => [name, member, part.required?.includes(name)]));
  return make("ul", {}, ...[...members, ...kinds].map(([name, member, isRequired]) => {
    const one = chosen(member);
    const words = [make("code", { textContent: name }), ` ${kindOf(one)}${isRequired ? ", required" : ""} `, make("small", { textContent: one.description ?? "" })];
    const inner = one.items ? chosen(one.items) : one;
    return make("li", {}, inner.properties || inner.allOf || inner.discriminator ? branch(words, member) : make("span", {}, ...words));
  }));
}

function branch(words, schema) {
  const details = make("details", {}, make("summary", {}, ...words));
  details.addEventListener("toggle", () => details.open && details.children.length === 1 && details.append(tree(schema)));
  return details;
}

/** The inputs of a call's parameters and body, each filled with its example; `read` gives what is to be sent. */
function form(call) {
  const fields = (call.parameters ?? []).map(resolve).map((parameter) => {
    const { enum: words } = chosen(parameter.schema);
    const input = words ? make("select", {}, make("option", { value: "", textContent: "" }), ...words.map((word) => make("option", { value: word, textContent: word }))) : make("input", { spellcheck: false });
    input.value = parameter.example ?? "";
    input.name = parameter.name;
    const label = make("label", {}, make("span", {}, make("code", { textContent: parameter.name }), parameter.required ? " required " : " ", make("small", { textContent: parameter.description })), input);
    return { parameter, input, label };
  });
  const [type, content] = Object.entries(call.requestBody?.content ?? {})[0] ?? [];
  const example = type && exampleOf(content);
  const parts = type === "multipart/form-data" ? Object.entries(example) : type ? [["body", example]] : [];
  const texts = parts.map(([name, value]) => {
    const area = make("textarea", { value: asText(value), spellcheck: false, name });
    return { name, area, type: content.encoding?.[name]?.contentType ?? type, label: make("label", {}, make("span", {}, make("code", { textContent: name }), ` ${content.encoding?.[name]?.contentType ?? type}`), area) };
  });

  function read() {
    let path = call.path;
    const query = new URLSearchParams();
    for (const { parameter, input } of fields) {
      if (parameter.in === "path") path = path.replace(`{${parameter.name}}`, encodeURIComponent(input.value));
      else if (input.value !== "") query.set(parameter.name, input.value);
    }
    const headers = {};
    const key = document.querySelector("#key").value;
    if (key) headers["api-key"] = key;
    let body;
    if (type === "multipart/form-data") {
      body = new FormData();
      for (const one of texts) body.append(one.name, new Blob([one.area.value], { type: one.type }), one.name);
    } else if (type) {
      headers["content-type"] = type;
      body = texts[0].area.value;
    }
    return [path + (query.size ? `?${query}` : ""), { method: call.method, headers, body }];
  }

  return { labels: [...fields, ...texts].map((field) => field.label), schema: content?.schema, isForm: type === "multipart/form-data", read };
}

/** Sends what stands in the form and shows what comes. */
async function send(read, place, button) {
  button.disabled = true;
  delete place.dataset.done;
  place.replaceChildren("Asking …");
  try {
    const [address, request] = read();
    const response = await fetch(address, request);
    const text = await response.text();
    place.replaceChildren(...shown(response, text));
  } catch (error) {
    place.replaceChildren(make("p", { className: "bad", textContent: `No answer: ${error.message}` }));
  }
  place.dataset.done = "true";
  button.disabled = false;
}

function shown(response, text) {
  const type = (response.headers.get("content-type") ?? "").split(";")[0];
  const status = make("p", { className: response.ok ? "good" : "bad", textContent: `${response.status} ${type}` });
  if (type === "image/svg+xml") return [status, make("img", { className: "answer", alt: /<title[^>]*>([^<]*)/.exec(text)?.[1] ?? "The drawing", src: `data:image/svg+xml;charset=utf-8,${encodeURIComponent(text)}` })];
  if (type === "text/html") return [status, make("p", {}, make("a", { href: `data:text/html;charset=utf-8,${encodeURIComponent(text)}`, download: "page.html", textContent: "Save the page" }), " and open it to read or print it."), make("pre", { textContent: text })];
  if (!["application/json", "application/problem+json"].includes(type)) return [status, make("pre", { textContent: text })];
  const answer = JSON.parse(text);
  const words = answer.summary ?? answer.detail;
  return [status, ...(typeof words === "string" ? [make("p", { className: "summary", textContent: words })] : []), make("pre", { textContent: JSON.stringify(answer, null, 2) })];
}

/** A call: closed, with its form made when it is first opened. */
function section(call) {
  const details = make("details", { className: "call", id: call.operationId }, make("summary", {}, call.summary, make("code", { textContent: `${call.method} ${call.path}` })));
  details.addEventListener("toggle", () => {
    if (!details.open || details.children.length > 1) return;
    const { labels, schema, isForm, read } = form(call);
    const place = make("div", { className: "result", role: "status" });
    const button = make("button", { type: "button", textContent: "Send" });
    button.addEventListener("click", () => send(read, place, button));
    const members = [];
    if (schema && !isForm) members.push(make("div", { className: "members" }, branch(["Members of the request"], schema)));
    const answer = Object.values(call.responses[200].content)[0].schema;
    if (answer.$ref) members.push(make("div", { className: "members" }, branch(["Members of the answer"], answer)));
    details.append(make("div", { className: "inside" }, make("p", { textContent: call.description ?? "" }), ...labels, button, place, ...members));
  });
  return details;
}

function openNamed() {
  const named = location.hash && document.querySelector(`details${location.hash}`);
  if (!named) return;
  named.open = true;
  named.scrollIntoView();
}

async function show() {
  const response = await fetch("/openapi/v1.json");
  contract = await response.json();
  document.querySelector("#edition").textContent = contract.info.version;
  document.querySelector("#introduction").textContent = contract.info.description;
  const calls = Object.entries(contract.paths).flatMap(([path, methods]) => Object.entries(methods).map(([method, call]) => ({ ...call, path, method: method.toUpperCase() })));
  document.querySelector("#calls").replaceChildren(...contract.tags.flatMap((tag) => [
    make("h2", { textContent: tag.name }),
    make("p", { className: "about", textContent: tag.description }),
    ...calls.filter((call) => call.tags[0] === tag.name).map(section),
  ]));
  openNamed();
}

addEventListener("hashchange", openNamed);
show().catch((error) => document.querySelector("#calls").replaceChildren(make("p", { className: "bad", textContent: `The contract could not be read: ${error.message}` })));
