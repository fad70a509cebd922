// The marks that the checks themselves look for, beside those of the starter pack and of the usual cautions.

export const CHECK_MARKS: Readonly<Record<string, string>> = {
  wheel:
    'A road wheel: the vehicle is lowered with it on and its nuts snug; its nuts are judged as wheel nuts.',
  tyre: 'A tyre: its pressure is judged as one.',
  'holds-load': 'A tool that holds what it lifts, as a lift does: nothing more is needed under the vehicle.',
  'engine-cover': 'A part that must be on before the engine runs.',
  'front-axle': 'Sits at the front axle: the guide shows the corners that are worked on.',
  'rear-axle': 'Sits at the rear axle: the guide shows the corners that are worked on.',
  gasket: 'A one-time seal, as are `seal`, `o-ring`, `crush-washer`: disturbed, it is renewed.',
};
