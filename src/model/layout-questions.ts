/** How a feature of the layout is asked in a walk, and how each answer is told at the car. Common practice, no source. */
import type { LayoutFeature } from './layout.ts';

interface LayoutQuestion {
  asks: string;
  /** How to tell, by value; values that need no words are left out. */
  tell: Readonly<Record<string, string>>;
}

const LAYOUT_QUESTIONS: Record<LayoutFeature, LayoutQuestion> = {
  power: { asks: 'What drives the car?', tell: {} },
  thermostat: {
    asks: 'Where does the thermostat sit?',
    tell: {
      'outlet side': 'In a housing on the head, where the hose to the top of the radiator leaves.',
      'inlet side':
        'In the return: a housing at the pump or on the block, where the hose from the bottom of the radiator arrives.',
      'valve block':
        'No thermostat: a block with a motor and many pins, from which several large hoses leave; the pump is mostly electric.',
      none: 'No engine, no thermostat: battery electric.',
    },
  },
  'thermostat-kind': {
    asks: 'What kind of thermostat is it?',
    tell: {
      'plain wax': 'No plug on the housing, one plate.',
      'by-pass closing': 'No plug, two plates: the second shuts the by-pass.',
      'map-controlled':
        'A two-pin plug on the thermostat housing, whether or not it shuts a by-pass as well.',
      'electric valve': 'A motor valve with several pins in place of a thermostat.',
      none: 'No thermostat at all.',
    },
  },
  'second-thermostat': {
    asks: 'Is there a second thermostat?',
    tell: {
      none: 'One housing, one thermostat in the parts list.',
      'in the block': 'Block and head are cooled apart: a second one, mostly hotter, holds the block back.',
      'beside the first': 'Two in one housing, or one on each bank; both are changed together.',
    },
  },
  heater: {
    asks: 'How is the heater fed?',
    tell: {
      'always flowing': 'Both heater hoses run straight to the bulkhead; warm or cold is made by a flap.',
      'valve-controlled': 'A tap in one heater hose, with a cable, a vacuum line or a plug.',
    },
  },
  'heater-pump': {
    asks: 'Is there a small electric pump in a heater hose?',
    tell: {
      none: 'Nothing with a plug in either heater hose, down to the bulkhead.',
      'in a heater hose': 'A pump the size of a fist in a heater hose, with a two-pin plug.',
    },
  },
  'rear-heater': {
    asks: 'Is there a second heater in the rear?',
    tell: {
      none: 'No outlets behind the front seats that have their own heat.',
      'on the circuit': 'Two coolant pipes under the floor towards the rear; tees in the heater hoses.',
    },
  },
  'extra-heat': {
    asks: 'What heats besides the engine?',
    tell: {
      none: 'Nothing.',
      'fuel burner': 'A burner with its own exhaust pipe and fuel pump, in the coolant or beside it.',
      'electric, in the coolant': 'An electric heater in a heater hose; orange cables stay shut.',
      'electric, in the air':
        'An element in the heater box with thick cables; the air is lukewarm a minute after a cold start.',
      'heat pump': 'The air-conditioning heats: extra valves and pipes at the bulkhead, named in the book.',
    },
  },
  reservoir: {
    asks: 'Header tank or recovery bottle?',
    tell: {
      'header tank': 'The plastic tank is under pressure; a thin vent line runs into it.',
      'recovery bottle':
        'The bottle only catches and gives back, without pressure; its lid is no pressure cap.',
    },
  },
  'cap-place': {
    asks: 'Where is the pressure cap?',
    tell: {
      'on the tank': 'On the plastic tank.',
      'on the radiator': 'On the neck of the radiator, also where a tank stands apart.',
      'on the engine': 'On a neck at the thermostat housing or the crossover pipe.',
    },
  },
  fan: {
    asks: 'What turns the radiator fan?',
    tell: {
      'electric, one stage': 'Electric motor, one relay, one speed.',
      'electric, two stages': 'Electric, with a resistor or a second relay for the slow speed.',
      'electric, pulse-width': 'Electric, with thick cables and one or two thin wires, any speed.',
      'viscous clutch': 'On the engine, behind a finned hub; turns with the belt.',
      hydraulic: 'Driven by an oil motor with two pressure hoses.',
    },
  },
  'fan-switched-by': {
    asks: 'What switches the fan?',
    tell: {
      'switch in the radiator': 'A two- or three-pin switch screwed into the radiator tank.',
      'engine controller': 'No switch in the radiator; relay or module is wired to the engine controller.',
      none: 'Nothing electric: a clutch on the engine.',
    },
  },
  'fan-electronics': {
    asks: 'Where are the electronics of the fan?',
    tell: {
      none: 'None: the motor has two thick wires and hangs on a relay.',
      'in a module': 'A finned box in the shroud; two thick wires go on from it to the motor.',
      'in the motor':
        'The thick cables and the thin wire go into the motor itself. It is never fed straight from the battery.',
    },
  },
  'clutch-control': {
    asks: 'What makes the fan clutch grip?',
    tell: {
      none: 'No clutch.',
      bimetal: 'A spring or strip on its front, no wire.',
      electric: 'A wire comes to the hub, on a bracket that stands still.',
    },
  },
  'second-fan': {
    asks: 'Is there a second fan?',
    tell: {
      none: 'One fan.',
      'second electric fan':
        'An electric fan that shares the radiator’s work, beside another or beside a clutch fan.',
      'condenser fan':
        'A fan of its own before or behind the condenser that only the air-conditioning calls.',
    },
  },
  'grille-shutter': {
    asks: 'Is there a shutter in the grille?',
    tell: {
      none: 'The fins can be seen through the grille.',
      fitted: 'Slats with a motor before the cores.',
    },
  },
  pump: {
    asks: 'What drives the coolant pump?',
    tell: {
      'accessory belt': 'Its pulley is on the outer belt.',
      'timing belt': 'No pulley to be seen: it sits behind the timing cover.',
      'chain or gears':
        'No pulley to be seen, and the engine has a timing chain: it sits in or behind the front cover.',
      electric: 'A pump with a plug and no pulley.',
    },
  },
  'pump-switch': {
    asks: 'Can the pump be shut off?',
    tell: {
      none: 'It pumps whenever the engine turns.',
      sleeve: 'A vacuum line or a plug at the pump: a sleeve covers the impeller while the engine is cold.',
      clutch: 'A plug at the pulley: a magnet holds it or lets it go.',
    },
  },
  'after-run-pump': {
    asks: 'Does a small pump run on after switch-off?',
    tell: {
      none: 'Nothing hums after a hot stop.',
      fitted: 'A small electric pump, mostly at the turbocharger, that hums for minutes after a hot stop.',
    },
  },
  radiator: {
    asks: 'Which way does the radiator flow?',
    tell: { 'cross-flow': 'Tanks at the sides.', 'down-flow': 'Tanks at top and bottom.' },
  },
  turbo: {
    asks: 'Is a turbocharger on the circuit?',
    tell: {
      'on the circuit': 'Two thin coolant pipes at its bearing housing.',
      none: 'No turbocharger, or one that only oil cools.',
    },
  },
  'charge-air': {
    asks: 'How is the charge air cooled?',
    tell: {
      none: 'No turbocharger, or nothing between it and the engine.',
      'air-cooled': 'Fat air pipes to a core at the front, and back.',
      'water-cooled':
        'A cooler at or in the intake manifold with two coolant hoses; a small radiator of its own at the front.',
    },
  },
  'low-temperature-loop': {
    asks: 'Is there a second, cooler loop?',
    tell: {
      none: 'One radiator, one circuit.',
      'own tank': 'A second radiator and a tank with a cap of its own.',
      'shared tank': 'A second radiator whose thin lines run into the same tank.',
      'divided tank': 'One tank with a wall in it: two chambers, one cap or two.',
    },
  },
  'egr-cooler': {
    asks: 'Is an exhaust-gas cooler on the circuit?',
    tell: {
      'on the circuit': 'A steel box in the exhaust-gas pipe with two coolant hoses.',
      none: 'No coolant hose anywhere on the exhaust-gas pipe.',
    },
  },
  'oil-cooler': {
    asks: 'How is the engine oil cooled?',
    tell: {
      'on the circuit': 'A stack of plates at the filter or on the block, with coolant through it.',
      'in the radiator': 'Two oil lines into a tank of the radiator.',
      'air-cooled': 'Two oil lines to a core in the wind.',
      'on the circuit and air-cooled': 'A stack of plates with coolant, and a core in the wind besides.',
      none: 'No cooler of its own.',
    },
  },
  'transmission-cooler': {
    asks: 'How is the gearbox oil cooled?',
    tell: {
      'in the radiator': 'Two oil lines into a tank of the radiator.',
      'on the gearbox': 'A stack of plates on the gearbox or beside it, with two coolant hoses.',
      'on the gearbox, with a valve':
        'The same, with a valve or a thermostat of its own in its coolant hose.',
      'air-cooled': 'Two oil lines to a core in the wind; no coolant near them.',
      'in the radiator and air-cooled': 'Through the radiator’s tank first, then a core in the wind.',
      none: 'No oil lines leave the gearbox, as on most manual ones.',
    },
  },
  'gas-vaporiser': {
    asks: 'Is a gas vaporiser on the circuit?',
    tell: {
      none: 'No gas on this car.',
      'on the circuit': 'A round or square block with a gas pipe and two heater hoses: LPG or natural gas.',
    },
  },
};

const byFeature: Readonly<Record<string, LayoutQuestion>> = LAYOUT_QUESTIONS;

/**
 * How a walk asks for a feature of the layout.
 * @throws if no layout has the feature
 */
export function layoutQuestion(feature: string): LayoutQuestion {
  const question = byFeature[feature];
  if (question === undefined) throw new Error(`No layout has the feature "${feature}".`);
  return question;
}
