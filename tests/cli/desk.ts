// A small library for the release desk: two guides that share one catalogue.
export const CATALOGUE = `catalogue: Mirrors

sources
  MS-1: Mirror sheet, issue 2

parts
  door-mirror: Door mirror
    number DM-114
    held by mirror-bolt
    once

fasteners
  mirror-bolt: Mirror bolts
    3 of M6x1.0, class 8.8, hex 10 mm
    torque 9 N·m, per "MS-1"
    once
`;

export const guide = (
  number: string,
  title: string,
  more = 'status released by KM, TR on 2026-10-05',
): string =>
  `procedure ${number}: ${title}

use "catalogue/mirrors.bay"

labour 20 min
${more}
revision 1 on 2026-10-05: First issue.

removal
  step: Take the mirror off
    remove mirror-bolt, door-mirror

installation
  step: Fit the mirror
    install door-mirror, mirror-bolt
    torque mirror-bolt
`;

export const SHOP: Readonly<Record<string, string>> = {
  'baywright.json': '{ "release": { "by": ["TR"], "provedBy": ["KM", "TR"] } }',
  'catalogue/mirrors.bay': CATALOGUE,
  'M-1.bay': guide('M-1', 'Door mirror, replace'),
  'M-2.bay': guide('M-2', 'Door mirror, paint'),
};
