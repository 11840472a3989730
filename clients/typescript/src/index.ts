import type { components, paths } from "./contract.js";

/** The documents of requests and answers, by the names they have in the contract. */
export type Schemas = components["schemas"];

type PathsWith<M extends "get" | "post"> = { [P in keyof paths]: paths[P] extends Record<M, object> ? P : never }[keyof paths];
type Operation<P extends keyof paths, M extends "get" | "post"> = paths[P] extends Record<M, infer O> ? O : never;
type JsonBody<O> = O extends { requestBody: { content: { "application/json": infer B } } } ? B : never;
type Answer<O> = O extends { responses: { 200: { content: infer C } } } ? (C extends { "application/json": infer A } ? A : string) : never;
type Given<O> = O extends { parameters: infer P } ? { query?: P extends { query?: infer Q } ? Q : never; path?: P extends { path?: infer V } ? V : never; signal?: AbortSignal } : never;

/** Paths of calls that take a JSON document. */
export type PostPath = { [P in PathsWith<"post">]: JsonBody<Operation<P, "post">> extends never ? never : P }[PathsWith<"post">];

/** Paths of calls without a body. */
export type GetPath = PathsWith<"get">;

/** The service refused a request. */
export class Refusal extends Error {
  constructor(
    /** The HTTP status. */
    readonly status: number,
    /** What the service says of it, with every fault; null where something before the service answered. */
    readonly problem: Schemas["Problem"] | null,
    /** After how many seconds the request may be sent again; null where that would not help. */
    readonly retryAfterSeconds: number | null,
  ) {
    super(`${status}: ${problem?.detail ?? "refused"}`);
    this.name = "Refusal";
  }
}

/** Most bytes of lines or table in one request (512 KiB): the service answers while it reads, so it has to take up all that is sent before any is answered. */
export const pieceBytes = 524_288;

/** A client of the service at an address. */
export class SetupClient {
  readonly #url: string;
  readonly #headers: Record<string, string>;

  constructor(url: string, options: { key?: string } = {}) {
    this.#url = url.replace(/\/+$/, "");
    this.#headers = options.key ? { "api-key": options.key } : {};
  }

  /** Makes a call without a body. JSON comes as its document, anything else as text. */
  async get<P extends GetPath>(path: P, given: Given<Operation<P, "get">> = {} as Given<Operation<P, "get">>): Promise<Answer<Operation<P, "get">>> {
    return this.#read(await this.#ask("GET", path, given)) as Promise<Answer<Operation<P, "get">>>;
  }

  /** Makes a call with a JSON document. JSON comes as its document, a picture or page as text. */
  async post<P extends PostPath>(path: P, body: JsonBody<Operation<P, "post">>, given: Given<Operation<P, "post">> = {} as Given<Operation<P, "post">>): Promise<Answer<Operation<P, "post">>> {
    return this.#read(await this.#ask("POST", path, given, JSON.stringify(body), "application/json")) as Promise<Answer<Operation<P, "post">>>;
  }

  /** Checks many candidates, each against the car of the car line before it; answers come line by line, the summary last. At most `pieceBytes` of lines. */
  async *batch(lines: Iterable<Schemas["BatchCarLine"] | Schemas["BatchCandidateLine"]>, given: Given<Operation<"/v1/fitment/batch", "post">> = {}): AsyncGenerator<Schemas["BatchAnswerLine"]> {
    const body = within(Array.from(lines, (line) => `${JSON.stringify(line)}\n`).join(""));
    yield* jsonLines<Schemas["BatchAnswerLine"]>(await this.#ask("POST", "/v1/fitment/batch", given, body, "application/x-ndjson"));
  }

  /** Checks a table of at most `pieceBytes`, a candidate a row under a header of member names; gives the table answered. */
  async table(car: Schemas["BatchCarLine"], candidates: string, given: Given<Operation<"/v1/fitment/batch/csv", "post">> = {}): Promise<string> {
    const form = new FormData();
    form.append("car", new Blob([JSON.stringify(car)], { type: "application/json" }));
    form.append("candidates", new Blob([within(candidates)], { type: "text/csv" }));
    return (await this.#ask("POST", "/v1/fitment/batch/csv", given, form)).text();
  }

  /** Checks a table of at most `pieceBytes` against many cars; pairs come line by line, the summary last. */
  async *catalogue(cars: Iterable<Schemas["CatalogueCarLine"]>, candidates: string, given: Given<Operation<"/v1/fitment/catalogue", "post">> = {}): AsyncGenerator<Schemas["CatalogueAnswerLine"]> {
    const form = new FormData();
    form.append("cars", new Blob(Array.from(cars, (car) => `${JSON.stringify(car)}\n`), { type: "application/x-ndjson" }));
    form.append("candidates", new Blob([within(candidates)], { type: "text/csv" }));
    yield* jsonLines<Schemas["CatalogueAnswerLine"]>(await this.#ask("POST", "/v1/fitment/catalogue", given, form));
  }

  async #ask(method: string, path: string, given: { query?: unknown; path?: unknown; signal?: AbortSignal }, body?: BodyInit, type?: string): Promise<Response> {
    const filled = path.replace(/\{(\w+)\}/g, (_, name: string) => encodeURIComponent(String((given.path as Record<string, unknown>)[name])));
    const query = new URLSearchParams(Object.entries((given.query ?? {}) as object).map(([name, value]) => [name, String(value)])).toString();
    const response = await fetch(`${this.#url}${filled}${query && `?${query}`}`, {
      method,
      headers: { ...this.#headers, ...(type ? { "content-type": type } : {}) },
      ...(body === undefined ? {} : { body }),
      ...(given.signal ? { signal: given.signal } : {}),
    });
    if (response.ok) return response;
    const isProblem = response.headers.get("content-type")?.startsWith("application/problem+json");
    const after = response.headers.get("retry-after");
    throw new Refusal(response.status, isProblem ? ((await response.json()) as Schemas["Problem"]) : null, after === null ? null : Number(after));
  }

  async #read(response: Response): Promise<unknown> {
    return response.headers.get("content-type")?.startsWith("application/json") ? response.json() : response.text();
  }
}

function within(text: string): string {
  const bytes = new TextEncoder().encode(text).length;
  if (bytes > pieceBytes) throw new RangeError(`${bytes} bytes of lines; at most ${pieceBytes} go in one call. Send them in pieces, each with its car or header.`);
  return text;
}

async function* jsonLines<T>(response: Response): AsyncGenerator<T> {
  const reader = response.body!.pipeThrough(new TextDecoderStream()).getReader();
  let text = "";
  for (;;) {
    const { done, value } = await reader.read();
    const lines = (text += value ?? "").split("\n");
    text = lines.pop()!;
    for (const line of lines) yield JSON.parse(line) as T;
    if (done) return;
  }
}
