// What a house with its procedures in YAML or JSON would run: every file of a folder read and held against a schema.
//   node check-files.mjs FOLDER js-yaml|yaml|json
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { SCHEMA } from '../content.mjs';
import { peer } from '../measure.mjs';

const [folder = '.', way = 'js-yaml'] = process.argv.slice(2);
const { default: ajv } = await peer('ajv');
const Ajv = ajv.default ?? ajv;
const validate = new Ajv({ allErrors: true }).compile(SCHEMA);
const parse =
  way === 'json'
    ? JSON.parse
    : way === 'yaml'
      ? (await peer('yaml')).parse
      : ((module) => module.load ?? module.default.load)(await peer('js-yaml'));
let faults = 0;
for (const name of readdirSync(folder)) {
  if (!validate(parse(readFileSync(join(folder, name), 'utf8')))) faults += validate.errors?.length ?? 0;
}
if (faults > 0) throw new Error(`${faults} faults in the peer's own content`);
