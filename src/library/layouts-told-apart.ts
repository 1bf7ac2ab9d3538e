import {
  type KnownLayout,
  LAYOUT,
  LAYOUT_FEATURES,
  type LayoutCondition,
  type LayoutFeature,
  layoutAllows,
  layoutIsPossible,
} from '../model/layout.ts';

/**
 * The layouts that some records tell apart, one for each group of vehicles they treat alike. Vehicles with no thermostat
 * have no engine that warms the coolant: the trees are not priced for them.
 * @param branches features a tree branches on
 * @param conditions layout conditions of causes and tests
 */
export function layoutsToldApart(
  branches: readonly LayoutFeature[],
  conditions: readonly (LayoutCondition | undefined)[],
): KnownLayout[] {
  const features = LAYOUT_FEATURES.filter(
    (feature) => branches.includes(feature) || conditions.some((each) => each?.[feature]),
  );
  const signs = signReader(branches, conditions);
  let layouts: KnownLayout[] = [{}];
  for (const feature of features)
    layouts = layouts
      .flatMap((layout) => LAYOUT[feature].map((value) => ({ ...layout, [feature]: value })))
      .filter(
        (layout) =>
          layout.thermostat !== 'none' && layout.power !== 'battery electric' && layoutIsPossible(layout),
      );
  return [...new Map(layouts.map((layout) => [signs(layout), layout] as const).reverse()).values()].reverse();
}

/** What records see of a layout: two layouts with the same sign are the same to them. */
export function signReader(
  branches: readonly LayoutFeature[],
  conditions: readonly (LayoutCondition | undefined)[],
): (layout: KnownLayout) => string {
  return (layout) =>
    [
      ...branches.map((feature) => layout[feature] ?? ''),
      ...conditions.map((condition) => (layoutAllows(condition, layout) ? '+' : '-')),
    ].join();
}

/** A layout in words, for messages: `thermostat: inlet side, pump: electric`. */
export function knownLayoutWords(known: KnownLayout): string {
  return Object.entries(known)
    .map(([feature, value]) => `${feature}: ${value}`)
    .join(', ');
}
