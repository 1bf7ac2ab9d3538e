/** Places of a cooling circuit where a test is done: what they are called, and which vehicles have them. */
import { type KnownLayout, type LayoutCondition, type LayoutFeature, layoutAllows } from './layout.ts';

interface Place {
  name: string;
  /** Vehicles that have it, and where it may be worked at; without it, all. */
  layout?: LayoutCondition;
  /** False where the drawing of a circuit has no place for it: it is worth naming where the vehicle's record says something of it. */
  isDrawn?: false;
  /** Where the same thing sits on different vehicles: words after the name, by the value of one feature. */
  sits?: { feature: LayoutFeature; words: { readonly [value: string]: string } };
}

/** On a battery-electric drive only what is clear of the high-voltage parts is pointed at. */
const WITH_ENGINE = ['combustion', 'hybrid'] as const satisfies LayoutCondition['power'];
const ENGINE: LayoutCondition = { power: [...WITH_ENGINE] };
const HEADER_TANK: LayoutCondition = { ...ENGINE, reservoir: ['header tank'] };
const ELECTRIC_FAN: LayoutCondition = {
  ...ENGINE,
  fan: ['electric, one stage', 'electric, two stages', 'electric, pulse-width'],
};

export const CIRCUIT_PLACES = {
  'hose-to-radiator': { name: 'Hose from engine to radiator', layout: ENGINE },
  'hose-from-radiator': { name: 'Hose from radiator to engine', layout: ENGINE },
  'engine-outlet-hose': { name: 'Hose at the engine outlet', layout: ENGINE },
  'by-pass': {
    name: 'By-pass',
    layout: { ...ENGINE, thermostat: ['inlet side', 'outlet side', 'valve block'] },
  },
  'heater-feed': { name: 'Heater hose from the engine', layout: ENGINE },
  'heater-return': { name: 'Heater hose back to the pump', layout: ENGINE },
  'heater-core': { name: 'Heater core, behind the bulkhead', layout: ENGINE },
  'heater-valve': { name: 'Heater valve', layout: { ...ENGINE, heater: ['valve-controlled'] } },
  'heater-pump': {
    name: 'Heater pump and its plug',
    layout: { ...ENGINE, 'heater-pump': ['in a heater hose'] },
  },
  'rear-heater': {
    name: 'Rear heater and its pipes',
    isDrawn: false,
    layout: { ...ENGINE, 'rear-heater': ['on the circuit'] },
  },
  'vent-line': { name: 'Vent line from the radiator to the tank', layout: HEADER_TANK },
  'engine-vent-line': { name: 'Vent line from the engine to the tank', layout: HEADER_TANK },
  'bleed-screws': { name: 'Bleed screws', isDrawn: false, layout: ENGINE },
  'header-tank': { name: 'Header tank', layout: { reservoir: ['header tank'] } },
  'recovery-bottle': { name: 'Recovery bottle', layout: { reservoir: ['recovery bottle'] } },
  'level-sensor': { name: 'Level sensor in the tank', layout: ENGINE },
  cap: {
    name: 'Pressure cap',
    layout: ENGINE,
    sits: {
      feature: 'cap-place',
      words: {
        'on the tank': 'on the tank',
        'on the radiator': 'on the radiator',
        'on the engine': 'on the engine',
      },
    },
  },
  'radiator-neck': {
    name: 'Radiator neck, under its cap',
    layout: { ...ENGINE, reservoir: ['recovery bottle'], 'cap-place': ['on the radiator'] },
  },
  'radiator-core': { name: 'Radiator, its face' },
  'radiator-drain': { name: 'Radiator drain, or the hose at the bottom where it has none', layout: ENGINE },
  fan: { name: 'Radiator fan' },
  'fan-plug': {
    name: 'Fan plug',
    layout: ELECTRIC_FAN,
    sits: {
      feature: 'fan-electronics',
      words: { 'in a module': 'at the fan’s module', 'in the motor': 'at the motor with its electronics' },
    },
  },
  'fan-switch': {
    name: 'Fan switch in the radiator',
    layout: { ...ENGINE, 'fan-switched-by': ['switch in the radiator'] },
  },
  'fan-clutch': { name: 'Fan clutch', layout: { fan: ['viscous clutch'] } },
  'fan-fuse': { name: 'Fan fuse', isDrawn: false, layout: ELECTRIC_FAN },
  'fan-relay': { name: 'Fan relay', isDrawn: false, layout: ELECTRIC_FAN },
  'coolant-sensor': { name: 'Coolant sensor and its plug', layout: ENGINE },
  'second-sensor': { name: 'Radiator outlet, where a second sensor sits if it has one', layout: ENGINE },
  thermostat: {
    name: 'Thermostat',
    layout: { ...ENGINE, thermostat: ['inlet side', 'outlet side'] },
    sits: {
      feature: 'thermostat',
      words: {
        'inlet side': 'where the coolant comes back from the radiator',
        'outlet side': 'where the coolant leaves the engine',
      },
    },
  },
  'thermostat-plug': {
    name: 'Plug of the thermostat’s heater or of the coolant valve',
    layout: { ...ENGINE, 'thermostat-kind': ['map-controlled', 'electric valve'] },
  },
  pump: { name: 'Coolant pump', layout: ENGINE },
  'pump-plug': { name: 'Plug of the electric coolant pump', layout: { ...ENGINE, pump: ['electric'] } },
  'pump-pulley': { name: 'Pump pulley and its belt', layout: { ...ENGINE, pump: ['accessory belt'] } },
  'pump-weep-hole': {
    name: 'Weep hole under the pump',
    layout: { ...ENGINE, pump: ['accessory belt', 'timing belt', 'chain or gears'] },
  },
  'after-run-pump': {
    name: 'After-run pump and its plug',
    isDrawn: false,
    layout: { ...ENGINE, 'after-run-pump': ['fitted'] },
  },
  cylinders: { name: 'Cylinders, through the plug holes', layout: ENGINE },
  'core-plugs': { name: 'Core plugs in the block', layout: ENGINE },
  'oil-filler': { name: 'Oil filler', layout: ENGINE },
  sump: { name: 'Dipstick and sump', layout: ENGINE },
  turbo: { name: 'Turbocharger and its coolant pipes', layout: { ...ENGINE, turbo: ['on the circuit'] } },
  'egr-cooler': { name: 'Exhaust-gas cooler', layout: { ...ENGINE, 'egr-cooler': ['on the circuit'] } },
  'oil-cooler': {
    name: 'Oil cooler on the circuit',
    layout: { ...ENGINE, 'oil-cooler': ['on the circuit', 'on the circuit and air-cooled'] },
  },
  'transmission-cooler': {
    name: 'Transmission cooler in the radiator',
    layout: { ...ENGINE, 'transmission-cooler': ['in the radiator', 'in the radiator and air-cooled'] },
  },
  'charge-air-loop': {
    name: 'Loop of the charge-air cooler',
    isDrawn: false,
    layout: { ...ENGINE, 'charge-air': ['water-cooled'] },
  },
  'gas-vaporiser': {
    name: 'Gas vaporiser',
    isDrawn: false,
    layout: { ...ENGINE, 'gas-vaporiser': ['on the circuit'] },
  },
} as const satisfies Record<string, Place>;

export type CircuitPlace = keyof typeof CIRCUIT_PLACES;
/** Those that the drawing of a circuit has a place for. */
export type DrawnPlace = {
  [P in CircuitPlace]: (typeof CIRCUIT_PLACES)[P] extends { isDrawn: false } ? never : P;
}[CircuitPlace];
// Marked so that scripts which do not use it leave it out, with the table.
export const CIRCUIT_PLACE_NAMES = /* @__PURE__ */ Object.keys(CIRCUIT_PLACES) as CircuitPlace[];

/** Whether a place of the circuit is called so. */
export function isCircuitPlace(name: string): name is CircuitPlace {
  return Object.hasOwn(CIRCUIT_PLACES, name);
}

/** Whether a vehicle is known to have this place. What nobody has looked at is not pointed at. */
export function hasPlace(layout: KnownLayout, name: CircuitPlace): boolean {
  const { layout: needs }: Place = CIRCUIT_PLACES[name];
  const features = Object.keys(needs ?? {}) as LayoutFeature[];
  return features.every((feature) => layout[feature] !== undefined) && layoutAllows(needs, layout);
}

/** What a place is called on this vehicle, with where it sits: "Pressure cap, on the tank". */
export function placeName(layout: KnownLayout, name: CircuitPlace): string {
  const { name: words, sits }: Place = CIRCUIT_PLACES[name];
  const where = sits?.words[layout[sits.feature] ?? ''];
  return where === undefined ? words : `${words}, ${where}`;
}

/** Whether the drawing of a circuit has a place for it. */
export function isDrawn(name: CircuitPlace): name is DrawnPlace {
  const { isDrawn }: Place = CIRCUIT_PLACES[name];
  return isDrawn ?? true;
}

/** A feature that no vehicle can have both as the place and as the record want it; undefined where some vehicle fits both. */
export function placeAgainst(
  condition: LayoutCondition | undefined,
  name: CircuitPlace,
): LayoutFeature | undefined {
  const { layout: needs = {} }: Place = CIRCUIT_PLACES[name];
  return (Object.keys(needs) as LayoutFeature[]).find((feature) => {
    const has: readonly string[] | undefined = condition?.[feature];
    const wanted: readonly string[] = needs[feature] ?? [];
    return has !== undefined && !has.some((value) => wanted.includes(value));
  });
}
