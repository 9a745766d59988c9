// node schema-server.mjs SCHEMA FILE...: what yaml-language-server says of each file, as an editor would ask it; a line for each.
import { spawn } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

const [, , schema, ...files] = process.argv;
const server = spawn(process.execPath, [path.join(process.env.PANELTUI_NPM, 'node_modules/yaml-language-server/bin/yaml-language-server'), '--stdio']);
const answers = new Map();
const said = new Map();
let received = Buffer.alloc(0);
let last = 0;

function send(message) {
  const text = JSON.stringify({ jsonrpc: '2.0', ...message });
  server.stdin.write(`Content-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`);
}

function take(message) {
  if (message.method === 'workspace/configuration') {
    const settings = { validate: true, schemaStore: { enable: false }, schemas: { [pathToFileURL(schema).href]: '*.panel.yaml' } };
    send({ id: message.id, result: message.params.items.map(item => (item.section === 'yaml' ? settings : {})) });
  } else if (message.method === 'textDocument/publishDiagnostics') said.set(message.params.uri, message.params.diagnostics);
  else if (message.id !== undefined && message.method) send({ id: message.id, result: null });
  else answers.get(message.id)?.(message.result);
}

server.stdout.on('data', data => {
  received = Buffer.concat([received, data]);
  for (let head; (head = received.indexOf('\r\n\r\n')) >= 0;) {
    const length = Number(/Content-Length: (\d+)/i.exec(received.subarray(0, head))[1]);
    if (received.length < head + 4 + length) return;
    take(JSON.parse(received.subarray(head + 4, head + 4 + length)));
    received = received.subarray(head + 4 + length);
  }
});

const ask = (method, params) => new Promise(resolve => { answers.set(++last, resolve); send({ id: last, method, params }); });
const pause = ms => new Promise(resolve => setTimeout(resolve, ms));

await ask('initialize', { processId: process.pid, rootUri: null, capabilities: { workspace: { configuration: true } } });
send({ method: 'initialized', params: {} });
for (const file of files) {
  const uri = pathToFileURL(file).href;
  send({ method: 'textDocument/didOpen', params: { textDocument: { uri, languageId: 'yaml', version: 1, text: fs.readFileSync(file, 'utf8') } } });
  for (let waited = 0; !said.has(uri) && waited < 20000; waited += 50) await pause(50);
  await pause(300); // a second answer replaces the first, once the schema is read
  console.log(`${path.basename(file)}: ${(said.get(uri) ?? [{ message: 'no answer' }]).map(found => `line ${found.range?.start.line + 1} ${found.message}`).join('; ') || 'nothing'}`);
}
server.kill();
