/** How a vehicle's cooling circuit is laid out: it decides what a test means (see the guide on layouts). */

/**
 * Every feature of a layout and what it can be. The order is the order of the page. A feature says one thing about the
 * car, so that what can be combined on a car can be combined here: a heater valve and a heater pump are two features.
 */
export const LAYOUT = {
  power: ['combustion', 'hybrid', 'battery electric'],
  thermostat: ['inlet side', 'outlet side', 'valve block', 'none'],
  'thermostat-kind': ['plain wax', 'by-pass closing', 'map-controlled', 'electric valve', 'none'],
  'second-thermostat': ['none', 'in the block', 'beside the first'],
  heater: ['always flowing', 'valve-controlled'],
  'heater-pump': ['none', 'in a heater hose'],
  'rear-heater': ['none', 'on the circuit'],
  'extra-heat': ['none', 'fuel burner', 'electric, in the coolant', 'electric, in the air', 'heat pump'],
  reservoir: ['header tank', 'recovery bottle'],
  'cap-place': ['on the tank', 'on the radiator', 'on the engine'],
  fan: [
    'electric, one stage',
    'electric, two stages',
    'electric, pulse-width',
    'viscous clutch',
    'hydraulic',
  ],
  'fan-switched-by': ['switch in the radiator', 'engine controller', 'none'],
  'fan-electronics': ['none', 'in a module', 'in the motor'],
  'clutch-control': ['none', 'bimetal', 'electric'],
  'second-fan': ['none', 'second electric fan', 'condenser fan'],
  'grille-shutter': ['none', 'fitted'],
  pump: ['accessory belt', 'timing belt', 'chain or gears', 'electric'],
  'pump-switch': ['none', 'sleeve', 'clutch'],
  'after-run-pump': ['none', 'fitted'],
  radiator: ['cross-flow', 'down-flow'],
  turbo: ['on the circuit', 'none'],
  'charge-air': ['none', 'air-cooled', 'water-cooled'],
  'low-temperature-loop': ['none', 'own tank', 'shared tank', 'divided tank'],
  'egr-cooler': ['on the circuit', 'none'],
  'oil-cooler': ['on the circuit', 'in the radiator', 'air-cooled', 'on the circuit and air-cooled', 'none'],
  'transmission-cooler': [
    'in the radiator',
    'on the gearbox',
    'on the gearbox, with a valve',
    'air-cooled',
    'in the radiator and air-cooled',
    'none',
  ],
  'gas-vaporiser': ['none', 'on the circuit'],
} as const;

export type LayoutFeature = keyof typeof LAYOUT;
// Marked so that scripts which do not use it leave it out, with the table.
export const LAYOUT_FEATURES = /* @__PURE__ */ Object.keys(LAYOUT) as LayoutFeature[];

/** Whether a layout has a feature of this name. */
export function isLayoutFeature(name: unknown): name is LayoutFeature {
  return typeof name === 'string' && Object.hasOwn(LAYOUT, name);
}

/** Labels for people. */
export const LAYOUT_LABELS: Record<LayoutFeature, string> = {
  power: 'Drive',
  thermostat: 'Thermostat sits on the',
  'thermostat-kind': 'Kind of thermostat',
  'second-thermostat': 'Second thermostat',
  heater: 'Heater',
  'heater-pump': 'Heater pump',
  'rear-heater': 'Rear heater',
  'extra-heat': 'Extra heat',
  reservoir: 'Reservoir',
  'cap-place': 'Pressure cap',
  fan: 'Radiator fan',
  'fan-switched-by': 'Fan switched by',
  'fan-electronics': 'Fan electronics',
  'clutch-control': 'Fan clutch controlled by',
  'second-fan': 'Second fan',
  'grille-shutter': 'Grille shutter',
  pump: 'Coolant pump driven by',
  'pump-switch': 'Pump shut off by',
  'after-run-pump': 'After-run pump',
  radiator: 'Radiator',
  turbo: 'Turbocharger cooling',
  'charge-air': 'Charge-air cooler',
  'low-temperature-loop': 'Low-temperature loop',
  'egr-cooler': 'Exhaust-gas cooler',
  'oil-cooler': 'Oil cooler',
  'transmission-cooler': 'Transmission cooler',
  'gas-vaporiser': 'Gas vaporiser',
};

/** Features that a vehicle record may leave out: not looked at yet, or some cars of the record have it and some not. */
export const LEAVABLE_FEATURES = [
  'second-thermostat',
  'heater-pump',
  'rear-heater',
  'extra-heat',
  'cap-place',
  'fan-electronics',
  'clutch-control',
  'second-fan',
  'grille-shutter',
  'pump-switch',
  'after-run-pump',
  'charge-air',
  'low-temperature-loop',
  'gas-vaporiser',
] as const satisfies readonly LayoutFeature[];
export type LeavableFeature = (typeof LEAVABLE_FEATURES)[number];

/** The layout of one vehicle: what nobody has looked at is left out, and a walk that needs it asks. */
export type Layout = {
  [F in Exclude<LayoutFeature, LeavableFeature>]: (typeof LAYOUT)[F][number];
} & { [F in LeavableFeature]?: (typeof LAYOUT)[F][number] | undefined };

/** Whether every value that is known is one that its feature can have. */
export function isOfLayout(known: KnownLayout): known is Partial<Layout> {
  return LAYOUT_FEATURES.every((feature) => {
    const values: readonly string[] = LAYOUT[feature];
    const value = known[feature];
    return value === undefined || values.includes(value);
  });
}

/** Whether every feature is known that a vehicle's record may not leave out. */
export function isWhole(layout: Partial<Layout>): layout is Layout {
  const leavable: readonly LayoutFeature[] = LEAVABLE_FEATURES;
  return LAYOUT_FEATURES.every((feature) => layout[feature] !== undefined || leavable.includes(feature));
}

/** A condition: the record holds only for vehicles whose layout has one of these values in each named feature. */
export type LayoutCondition = { [F in LayoutFeature]?: (typeof LAYOUT)[F][number][] | undefined };

/** What is known of a layout: a whole one, a part answered in the walk, or nothing. */
export type KnownLayout = { readonly [F in LayoutFeature]?: string | undefined };

/** Whether a condition can hold: features not known yet do not rule it out. */
export function layoutAllows(condition: LayoutCondition | undefined, known: KnownLayout): boolean {
  // By the condition's own features: the pages of a walk need not carry the table of all.
  return (Object.keys(condition ?? {}) as LayoutFeature[]).every((feature) => {
    const wanted: readonly string[] | undefined = condition?.[feature];
    const actual = known[feature];
    return wanted === undefined || actual === undefined || wanted.includes(actual);
  });
}

/** What follows from another feature: it need not be asked, and cannot be otherwise. */
const IMPLIED: readonly { when: LayoutCondition; feature: LayoutFeature; value: string }[] = [
  { when: { thermostat: ['none'] }, feature: 'thermostat-kind', value: 'none' },
  { when: { thermostat: ['none'] }, feature: 'second-thermostat', value: 'none' },
  { when: { thermostat: ['valve block'] }, feature: 'thermostat-kind', value: 'electric valve' },
  { when: { fan: ['viscous clutch'] }, feature: 'fan-switched-by', value: 'none' },
  {
    when: { fan: ['electric, one stage', 'electric, two stages', 'viscous clutch', 'hydraulic'] },
    feature: 'fan-electronics',
    value: 'none',
  },
  {
    when: { fan: ['electric, one stage', 'electric, two stages', 'electric, pulse-width', 'hydraulic'] },
    feature: 'clutch-control',
    value: 'none',
  },
  { when: { pump: ['electric'] }, feature: 'pump-switch', value: 'none' },
  { when: { power: ['battery electric'] }, feature: 'gas-vaporiser', value: 'none' },
  { when: { power: ['battery electric'] }, feature: 'charge-air', value: 'none' },
];

/** Values of two features that no vehicle has together. */
const NEVER_TOGETHER: readonly [LayoutCondition, LayoutCondition][] = [
  [{ thermostat: ['inlet side', 'outlet side'] }, { 'thermostat-kind': ['none'] }],
  [{ fan: ['hydraulic'] }, { 'fan-switched-by': ['switch in the radiator'] }],
  [
    { fan: ['electric, one stage', 'electric, two stages', 'electric, pulse-width'] },
    { 'fan-switched-by': ['none'] },
  ],
  [{ fan: ['viscous clutch'] }, { 'clutch-control': ['none'] }],
  [{ fan: ['electric, pulse-width'] }, { 'fan-electronics': ['none'] }],
  [{ reservoir: ['recovery bottle'] }, { 'cap-place': ['on the tank'] }],
  [{ 'charge-air': ['water-cooled'] }, { 'low-temperature-loop': ['none'] }],
];

/** The layout with what follows from it. */
export function withImplied<L extends KnownLayout>(known: L): L {
  const implied = IMPLIED.filter(
    ({ when, feature }) => known[feature] === undefined && isStated(when, known),
  );
  return { ...known, ...Object.fromEntries(implied.map(({ feature, value }) => [feature, value])) };
}

/** The layout with what was left out as most cars have it. For prices and bookings only: a walk asks instead. */
export function asMostAre(layout: Layout): Layout {
  const usual = {
    'second-thermostat': 'none',
    'heater-pump': 'none',
    'rear-heater': 'none',
    'extra-heat': 'none',
    'cap-place': layout.reservoir === 'header tank' ? 'on the tank' : 'on the radiator',
    'fan-electronics': 'in a module',
    'clutch-control': 'bimetal',
    'second-fan': 'none',
    'grille-shutter': 'none',
    'pump-switch': 'none',
    'after-run-pump': 'none',
    'charge-air': 'none',
    'low-temperature-loop': layout['charge-air'] === 'water-cooled' ? 'shared tank' : 'none',
    'gas-vaporiser': 'none',
  } as const satisfies Pick<Required<Layout>, LeavableFeature>;
  const stated = Object.entries(withImplied(layout)).filter(([, value]) => value !== undefined);
  return { ...layout, ...usual, ...Object.fromEntries(stated) };
}

/** Whether every feature a condition names is known and fits; what is not known does not. */
function isStated(condition: LayoutCondition, known: KnownLayout): boolean {
  return (
    layoutAllows(condition, known) &&
    (Object.keys(condition) as LayoutFeature[]).every((feature) => known[feature] !== undefined)
  );
}

/** Two features of a layout that contradict each other, or undefined when a vehicle can have all of it. */
export function contradictionIn(known: KnownLayout): [LayoutFeature, LayoutFeature] | undefined {
  for (const { when, feature, value } of IMPLIED)
    if (known[feature] !== undefined && known[feature] !== value && isStated(when, known))
      return [featureOf(when), feature];
  for (const [one, other] of NEVER_TOGETHER)
    if (isStated(one, known) && isStated(other, known)) return [featureOf(one), featureOf(other)];
  return undefined;
}

function featureOf(condition: LayoutCondition): LayoutFeature {
  const [feature = 'power'] = Object.keys(condition) as LayoutFeature[];
  return feature;
}

/**
 * Whether a vehicle can have these values together: what is not there has no kind, an electric fan is switched by
 * something and a viscous clutch by nothing.
 */
export function layoutIsPossible(known: KnownLayout): boolean {
  return contradictionIn(known) === undefined;
}

/** How common each value of a feature is among the cars that come in, 0 to 1 a feature. */
export type LayoutShares = {
  readonly [F in LayoutFeature]?: { readonly [value: string]: number } | undefined;
};

/**
 * What share of the cars can meet a condition, 0 to 1, taking features as independent of each other.
 * @param known features that are known: they meet it or not
 * @param shares a feature that is not in it counts as met
 */
export function shareWithLayout(
  condition: LayoutCondition | undefined,
  known: KnownLayout,
  shares: LayoutShares,
): number {
  let share = 1;
  for (const feature of Object.keys(condition ?? {}) as LayoutFeature[]) {
    const wanted: readonly string[] | undefined = condition?.[feature];
    if (wanted === undefined) continue;
    const actual = known[feature];
    const common = shares[feature];
    if (actual !== undefined) share *= wanted.includes(actual) ? 1 : 0;
    else if (common) share *= wanted.reduce((sum, value) => sum + (common[value] ?? 0), 0);
  }
  return share;
}

/**
 * The layout that most cars have among those that meet a condition and have an engine, one feature after the other.
 * @param shares by feature; of a feature that is not in it the first value is taken
 */
export function commonestLayout(shares: LayoutShares, condition: LayoutCondition | undefined): Layout {
  let layout: KnownLayout = {};
  for (const feature of LAYOUT_FEATURES) {
    const wanted: readonly string[] | undefined = condition?.[feature];
    const can = LAYOUT[feature].filter(
      (value) =>
        value !== 'battery electric' &&
        (wanted?.includes(value) ?? !(feature === 'thermostat' && value === 'none')) &&
        layoutIsPossible({ ...layout, [feature]: value }),
    );
    const share = (value: string) => shares[feature]?.[value] ?? 0;
    const [commonest] = can.toSorted((a, b) => share(b) - share(a));
    layout = { ...layout, [feature]: commonest ?? LAYOUT[feature][0] };
  }
  return layout as Layout;
}
