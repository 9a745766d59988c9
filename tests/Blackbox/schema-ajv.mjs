// node schema-ajv.mjs SCHEMA FILE...: compiles the schema in strict draft-7 mode and validates each file, a line for each.
// ajv, ajv-formats and yaml are looked for beside the folder that PANELTUI_NPM names.
import fs from 'node:fs';
import path from 'node:path';
import { createRequire } from 'node:module';

const from = createRequire(path.join(process.env.PANELTUI_NPM, 'package.json'));
const Ajv = from('ajv').default;
const YAML = from('yaml');
const [, , schema, ...files] = process.argv;
const ajv = new Ajv({ strict: true, strictTypes: false, allErrors: true });
from('ajv-formats').default(ajv);
const validate = ajv.compile(JSON.parse(fs.readFileSync(schema, 'utf8')));
console.log('compiles');
for (const file of files) {
  const fits = validate(YAML.parse(fs.readFileSync(file, 'utf8')));
  console.log(`${path.basename(file)}: ${fits ? 'fits' : validate.errors.map(error => `${error.instancePath} ${error.message}`).join('; ')}`);
}
