/** What a circuit has besides what is drawn of it, in words: no feature of a layout is left unsaid. */
import type { Layout, LayoutFeature } from '../../model/layout.ts';

/** Words by feature and value; a value without words has a place in the drawing, or means that nothing is there. */
const WORDS: { readonly [F in LayoutFeature]?: { readonly [value: string]: string } } = {
  'second-thermostat': {
    'in the block': 'a second thermostat in the block',
    'beside the first': 'a second thermostat beside the first',
  },
  'rear-heater': { 'on the circuit': 'a rear heater in the heater hoses' },
  'extra-heat': {
    'fuel burner': 'a fuel burner in the heater hoses',
    'electric, in the coolant': 'an electric heater in the coolant',
    'electric, in the air': 'an electric element in the heater’s air',
    'heat pump': 'a heat pump',
  },
  'fan-electronics': {
    'in a module': 'a module at the fan',
    'in the motor': 'electronics inside the fan motor',
  },
  'clutch-control': { electric: 'a fan clutch that the controller asks' },
  'second-fan': {
    'second electric fan': 'a second electric fan',
    'condenser fan': 'a fan of the condenser’s own',
  },
  'grille-shutter': { fitted: 'a shutter in the grille' },
  'pump-switch': {
    sleeve: 'a sleeve that shuts the pump while cold',
    clutch: 'a clutch at the pump’s pulley',
  },
  'after-run-pump': { fitted: 'a small pump that runs on' },
  'charge-air': { 'water-cooled': 'charge air cooled by water in a loop of its own' },
  'low-temperature-loop': {
    'own tank': 'a low-temperature loop with its own tank',
    'shared tank': 'a low-temperature loop on the same tank',
    'divided tank': 'a low-temperature loop in the other chamber of the tank',
  },
  'oil-cooler': {
    'in the radiator': 'engine oil through a tank of the radiator',
    'air-cooled': 'engine oil cooled by air',
    'on the circuit and air-cooled': 'engine oil cooled by coolant and by air',
  },
  'transmission-cooler': {
    'on the gearbox': 'a cooler on the gearbox',
    'on the gearbox, with a valve': 'a cooler on the gearbox with a valve of its own',
    'air-cooled': 'gearbox oil cooled by air',
    'in the radiator and air-cooled': 'gearbox oil through the radiator and then by air',
  },
  'gas-vaporiser': { 'on the circuit': 'a gas vaporiser in the heater hoses' },
};

/** Phrases for what is not drawn, in the order of the layout; empty where all is drawn. */
export function alsoOn(layout: Layout): string[] {
  const phrases = (Object.keys(WORDS) as LayoutFeature[]).flatMap((feature) => {
    const value = layout[feature];
    const words = value === undefined ? undefined : WORDS[feature]?.[value];
    return words === undefined ? [] : [words];
  });
  const cap = layout['cap-place'];
  const drawn = layout.reservoir === 'header tank' ? 'on the tank' : 'on the radiator';
  return cap === undefined || cap === drawn ? phrases : [...phrases, `the pressure cap ${cap}`];
}
