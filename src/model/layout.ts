/** How a vehicle's cooling circuit is laid out: it decides what a test means (see the guide on layouts). */

/** Every feature of a layout and what it can be. The order is the order of the page. */
export const LAYOUT = {
  power: ['combustion', 'hybrid', 'battery electric'],
  thermostat: ['inlet side', 'outlet side', 'none'],
  'thermostat-kind': ['plain wax', 'by-pass closing', 'map-controlled', 'electric valve', 'none'],
  heater: ['always flowing', 'valve-controlled', 'auxiliary pump'],
  reservoir: ['header tank', 'recovery bottle'],
  fan: [
    'electric, one stage',
    'electric, two stages',
    'electric, pulse-width',
    'viscous clutch',
    'hydraulic',
  ],
  'fan-switched-by': ['switch in the radiator', 'engine controller', 'none'],
  pump: ['accessory belt', 'timing belt', 'electric'],
  radiator: ['cross-flow', 'down-flow'],
  turbo: ['on the circuit', 'none'],
  'egr-cooler': ['on the circuit', 'none'],
  'oil-cooler': ['on the circuit', 'none'],
  'transmission-cooler': ['in the radiator', 'none'],
} as const;

export type LayoutFeature = keyof typeof LAYOUT;
// Marked so that scripts which do not use it leave it out, with the table.
export const LAYOUT_FEATURES = /* @__PURE__ */ Object.keys(LAYOUT) as LayoutFeature[];

/** Labels for people. */
export const LAYOUT_LABELS: Record<LayoutFeature, string> = {
  power: 'Drive',
  thermostat: 'Thermostat sits on the',
  'thermostat-kind': 'Kind of thermostat',
  heater: 'Heater',
  reservoir: 'Reservoir',
  fan: 'Radiator fan',
  'fan-switched-by': 'Fan switched by',
  pump: 'Coolant pump driven by',
  radiator: 'Radiator',
  turbo: 'Turbocharger cooling',
  'egr-cooler': 'Exhaust-gas cooler',
  'oil-cooler': 'Oil cooler',
  'transmission-cooler': 'Transmission cooler',
};

/** The layout of one vehicle: every feature stated. */
export type Layout = { [F in LayoutFeature]: (typeof LAYOUT)[F][number] };

/** A condition: the record holds only for vehicles whose layout has one of these values in each named feature. */
export type LayoutCondition = { [F in LayoutFeature]?: (typeof LAYOUT)[F][number][] | undefined };

/** What is known of a layout: a whole one, a part answered in the walk, or nothing. */
export type KnownLayout = Partial<Record<LayoutFeature, string>>;

/** Whether a condition can hold: features not known yet do not rule it out. */
export function layoutAllows(condition: LayoutCondition | undefined, known: KnownLayout): boolean {
  // By the condition's own features: the pages of a walk need not carry the table of all.
  return (Object.keys(condition ?? {}) as LayoutFeature[]).every((feature) => {
    const wanted: readonly string[] | undefined = condition?.[feature];
    const actual = known[feature];
    return wanted === undefined || actual === undefined || wanted.includes(actual);
  });
}

/**
 * Whether a vehicle can have these values together: what is not there has no kind, an electric fan is switched by
 * something and a viscous clutch by nothing.
 */
export function layoutIsPossible(known: KnownLayout): boolean {
  const { thermostat, fan } = known;
  const kind = known['thermostat-kind'];
  const switched = known['fan-switched-by'];
  if (thermostat !== undefined && kind !== undefined && (thermostat === 'none') !== (kind === 'none'))
    return false;
  if (fan === 'hydraulic') return switched !== 'switch in the radiator';
  if (fan === undefined || switched === undefined) return true;
  return (fan === 'viscous clutch') === (switched === 'none');
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
