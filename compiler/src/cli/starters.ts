// The texts that `baywright new` starts a file with: small, whole, clean under `check`, with comments that say how
// to go on. Figures in them are invented and stand for the shop's own.

export interface Starter {
  readonly summary: string;
  text(title: { readonly number: string; readonly title: string; readonly day: string }): string;
}

export const STARTERS = {
  procedure: {
    summary: 'a job, with a part that comes off and goes back on',
    text: ({ number, title, day }) => `procedure ${number}: ${title}

# Left of the first colon of a line the checker reads, right of it the technician reads.
# Change the names and figures to those of the job. A ? stands where a figure is not known yet.

labour 30 min
status draft
revision 1 on ${day}: First draft.

# Where the figures come from: a sheet, a manual, a drawing.
sources
  HS-1: House sheet, issue 1

# What comes off, and what holds it.
parts
  cover: Cover
    held by cover-bolt

# How many, which thread and head, and the torque with its source.
fasteners
  cover-bolt: Cover bolts
    4 of M6x1.0, class 8.8, hex 10 mm
    torque 9 N·m, per "HS-1"

removal
  step: Take the cover off
    remove cover-bolt, cover

inspection
  step: Look at the cover
    inspect cover
      reject: cracks, a bent edge
      if rejected
        renew cover

# What was taken off goes back on, and is torqued: \`baywright check\` tells what is missing.
installation
  step: Fit the cover
    install cover, cover-bolt
    torque cover-bolt
`,
  },
  catalogue: {
    summary: 'vehicles, sources, parts and fasteners that procedures share',
    text: ({ title }) => `catalogue: ${title}

# Procedures take this in with a line such as: use "../catalogue/name.bay"

sources
  HS-1: House sheet, issue 1

vehicles
  van-1: Delivery van
    years 2018 to 2025

parts
  wheel: Road wheel
    held by wheel-nut

fasteners
  wheel-nut: Wheel nuts
    5 of M12x1.5, hex 19 mm
    torque 110 N·m, order star, per "HS-1"
`,
  },
  rules: {
    summary: 'house rules that every procedure must keep',
    text: ({ title }) => `catalogue: ${title}

# A rule holds in every procedure that takes this file in. It says when, and what must be done or must not.

rules
  chocks-first: Chock the wheels before the vehicle goes up.
    before raise vehicle
    require chock any place
`,
  },
} as const satisfies Readonly<Record<string, Starter>>;

export type StarterKind = keyof typeof STARTERS;
export const STARTER_KINDS = ['procedure', 'catalogue', 'rules'] as const satisfies readonly StarterKind[];
