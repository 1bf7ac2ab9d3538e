/** How a feature of the layout is asked in a walk, and how each answer is told at the car. Common practice, no source. */
import type { LayoutFeature } from '../../model/layout.ts';

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
      none: 'No engine, no thermostat: battery electric.',
    },
  },
  'thermostat-kind': {
    asks: 'What kind of thermostat is it?',
    tell: {
      'plain wax': 'No plug on the housing, one plate.',
      'by-pass closing': 'No plug, two plates: the second shuts the by-pass.',
      'map-controlled': 'A two-pin plug on the thermostat housing.',
      'electric valve': 'A motor valve with several pins in place of a thermostat.',
      none: 'No thermostat at all.',
    },
  },
  heater: {
    asks: 'How is the heater fed?',
    tell: {
      'always flowing': 'Both heater hoses run straight to the bulkhead; warm or cold is made by a flap.',
      'valve-controlled': 'A tap in one heater hose, with a cable, a vacuum line or a plug.',
      'auxiliary pump': 'A small electric pump in a heater hose.',
    },
  },
  reservoir: {
    asks: 'Header tank or recovery bottle?',
    tell: {
      'header tank': 'The pressure cap is on the plastic tank; a thin vent line runs into it.',
      'recovery bottle': 'The pressure cap is on the radiator; the bottle only catches and gives back.',
    },
  },
  fan: {
    asks: 'What turns the radiator fan?',
    tell: {
      'electric, one stage': 'Electric motor, one relay, one speed.',
      'electric, two stages': 'Electric, with a resistor or a second relay for the slow speed.',
      'electric, pulse-width': 'Electric, a control module with thick cables at the fan, any speed.',
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
  pump: {
    asks: 'What drives the coolant pump?',
    tell: {
      'accessory belt': 'Its pulley is on the outer belt.',
      'timing belt': 'No pulley to be seen: it sits behind the timing cover.',
      electric: 'A pump with a plug and no pulley.',
    },
  },
  radiator: {
    asks: 'Which way does the radiator flow?',
    tell: { 'cross-flow': 'Tanks at the sides.', 'down-flow': 'Tanks at top and bottom.' },
  },
  turbo: { asks: 'Is a turbocharger on the circuit?', tell: {} },
  'egr-cooler': { asks: 'Is an exhaust-gas cooler on the circuit?', tell: {} },
  'oil-cooler': { asks: 'Is an oil cooler on the circuit?', tell: {} },
  'transmission-cooler': { asks: 'Is a transmission cooler in the radiator?', tell: {} },
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
