#!/usr/bin/env node
// Carries the recorded calls over to a contract with other names, so that the test can say "the same numbers under new names".
//
//   node migrate.mjs CALL[,CALL...]|all --rename old=new [--rename ...]    members renamed at every depth
//   node migrate.mjs CALL[,CALL...]|all --with change.mjs                  any other change, written as functions
//   add --dry to see one entry before and after, and write nothing
//
// --rename changes the members of requests and answers, the JSON Pointers in them (a string that begins with "/"), and, where the
// old name has a capital inside (so that it is no plain English word), the name inside texts and table headers.
//
// change.mjs may export any of
//   request(body, entry)  gives the new body: once for a JSON body, for each line of NDJSON, for the car of a table
//   answer(body, entry)   gives the new answer: once for JSON (a problem too), for each line of NDJSON; not for drawings and tables
//   entry(entry)          gives the new entry: path, accept, or null to leave the entry out
// Requests that are no JSON on purpose stay as they are.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { gunzipSync, gzipSync } from 'node:zlib';

const folder = dirname(fileURLToPath(import.meta.url));
const ending = '.ndjson.gz';

function renamer(pairs) {
  const names = new Map(pairs.map(pair => pair.split('=')));
  const inTexts = [...names].filter(([old]) => /[a-z][A-Z]/.test(old));
  const text = value => {
    if (/^(\/[\w~-]+)+$/.test(value)) return value.split('/').map(part => names.get(part) ?? part).join('/');
    return inTexts.reduce((kept, [old, now]) => kept.replace(new RegExp(`\\b${old}\\b`, 'g'), now), value);
  };
  const node = value => {
    if (typeof value === 'string') return text(value);
    if (Array.isArray(value)) return value.map(node);
    if (value === null || typeof value !== 'object') return value;
    return Object.fromEntries(Object.entries(value).map(([name, one]) => [names.get(name) ?? name, node(one)]));
  };
  return { request: node, answer: node, text };
}

function eachLine(text, change) {
  return text.split('\n').map(line => {
    let body;
    try {
      body = JSON.parse(line);
    } catch {
      return line;
    }
    return JSON.stringify(change(body));
  }).join('\n');
}

function migrated(entry, change) {
  const request = body => (change.request ? change.request(body, entry) : body);
  const answer = body => (change.answer ? change.answer(body, entry) : body);
  const result = { ...entry };
  if (entry.contentType === 'multipart/form-data') {
    result.request = { ...entry.request, car: request(entry.request.car) };
    if (change.text && typeof entry.request.candidates === 'string') result.request.candidates = change.text(entry.request.candidates);
  } else if (entry.contentType === 'application/x-ndjson') result.request = eachLine(entry.request, request);
  else if (entry.request !== null && typeof entry.request === 'object') result.request = request(entry.request);

  if (Array.isArray(entry.answer) && entry.answerType === 'application/x-ndjson') result.answer = entry.answer.map(answer);
  else if (entry.answer !== null && typeof entry.answer === 'object') result.answer = answer(entry.answer);
  else if (typeof entry.answer === 'string' && entry.answerType === 'text/csv' && change.text) result.answer = change.text(entry.answer);
  return change.entry ? change.entry(result) : result;
}

const [calls, ...options] = process.argv.slice(2);
const values = name => options.flatMap((option, i) => (option === name ? [options[i + 1]] : []));
const renames = values('--rename');
const [file] = values('--with');
if (!calls || (renames.length === 0) === !file || renames.some(pair => !/^\w+=\w+$/.test(pair))) {
  console.error(readFileSync(fileURLToPath(import.meta.url), 'utf8').split('\n').filter(line => line.startsWith('//')).join('\n'));
  process.exit(2);
}

const change = file ? await import(pathToFileURL(resolve(file)).href) : renamer(renames);
const all = readdirSync(folder).filter(name => name.endsWith(ending)).map(name => name.slice(0, -ending.length));
for (const call of calls === 'all' ? all : calls.split(',')) {
  const path = join(folder, call + ending);
  const kept = gunzipSync(readFileSync(path)).toString('utf8').trimEnd().split('\n');
  const now = kept.map(line => migrated(JSON.parse(line), change)).filter(entry => entry !== null).map(entry => JSON.stringify(entry));
  const changed = now.filter((line, i) => line !== kept[i]);
  console.log(`${call}: ${changed.length} of ${kept.length} entries changed${now.length < kept.length ? `, ${kept.length - now.length} left out` : ''}`);
  if (options.includes('--dry')) {
    const first = now.findIndex((line, i) => line !== kept[i]);
    if (first >= 0) console.log(`- ${kept[first]}\n+ ${now[first]}`);
  } else if (changed.length > 0 || now.length < kept.length) writeFileSync(path, gzipSync(now.join('\n') + '\n', { level: 9 }));
}
