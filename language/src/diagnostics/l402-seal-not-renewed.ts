// L402: a seal is disturbed and goes back on.
import { defineDiagnostic } from './define.js';

const job = (line: string) => `procedure A-1: Breather cover, reseal

parts
  breather-cover: Breather cover
    held by cover-clip
  cover-gasket: Cover gasket
    in breather-cover${line}

fasteners
  cover-clip: Cover clips
    2 of clip

removal
  step: Take the cover off
    remove cover-clip, breather-cover

installation
  step: Fit the cover
    install breather-cover, cover-clip
`;

export const sealNotRenewed = defineDiagnostic<{ readonly name: string }>({
  code: 'L402',
  name: 'seal-not-renewed',
  severity: 'hint',
  message: (d) => `\`${d.name}\` is disturbed and goes back: is it not renewed?`,
  advice: () => '`renew` in its entry fits a new one each time; `accept L402` says why the old one will do',
  why: `A gasket, seal or crush washer has taken the shape of its faces and seldom seals twice (common practice; the maker's sheet decides). A split pin or a rivet is bent or broken when it comes out. A new one costs less than the second job.`,
  wrong: job('').replace('cover-gasket: Cover gasket', 'cover-gasket: Cover gasket\n# ^^^^^^^^^^^^ L402'),
  right: job(', renew'),
});
