/** Where a circuit is felt and measured, and what each place tells on this layout. Common practice, no source. */
import type { Layout } from '../../model/layout.ts';

export interface CircuitPoint {
  /** As drawn: F1, F2 … to feel, M1, M2 … to measure. */
  mark: string;
  by: 'feel' | 'measure';
  name: string;
  tells: string;
}

export type PlaceName =
  | 'hose to radiator'
  | 'hose from radiator'
  | 'heater supply'
  | 'heater return'
  | 'by-pass'
  | 'vent line'
  | 'sensor'
  | 'outlet hose'
  | 'radiator face'
  | 'header tank'
  | 'recovery bottle'
  | 'fan switch';

interface Place {
  place: PlaceName;
  by: CircuitPoint['by'];
  name: string;
  tells: string;
}

/** A numbered point and the place in the drawing it belongs to. */
export type PlacedPoint = CircuitPoint & { place: PlaceName };

/**
 * The points of a layout, numbered in the order they are drawn.
 *
 * On a battery-electric drive only what is clear of the high-voltage parts is left.
 */
export function circuitPoints(layout: Layout): PlacedPoint[] {
  const places =
    layout.power === 'battery electric'
      ? [radiatorFace(layout), reservoir(layout)]
      : [...hoses(layout), ...heaterHoses(layout), ...lines(layout), ...readings(layout)];
  const counts = { feel: 0, measure: 0 };
  return places.map((each) => {
    counts[each.by] += 1;
    return { ...each, mark: `${each.by === 'feel' ? 'F' : 'M'}${counts[each.by]}` };
  });
}

function hoses(layout: Layout): Place[] {
  const toRadiator = {
    'outlet side':
      'Cool while the thermostat is shut, then hot within a minute once it starts. Warm along with the engine from the start: coolant gets past the thermostat.',
    'inlet side':
      'Warms early from the engine end, because hot coolant stands in it; that alone proves nothing here.',
    'valve block':
      'Warm when the controller lets it: the valve opens for load as well as for heat. Hold it against the valve’s place in the data.',
    none: 'Warms with the engine: nothing holds the coolant back from the radiator.',
  };
  const fromRadiator = {
    'outlet side':
      'Warms last, when the radiator has filled with hot coolant. Cold with the other hose hot for minutes: the radiator passes little.',
    'inlet side':
      'Cold until the thermostat lets coolant through, then warm in waves. Warm along with the engine from the start: coolant gets past the thermostat.',
    'valve block':
      'Cold while the valve is shut, then cooler than the hose to the radiator by what the radiator takes out.',
    none: 'Cooler than the hose to the radiator by what the radiator takes out.',
  };
  return [
    {
      place: 'hose to radiator',
      by: 'feel',
      name: 'Hose from engine to radiator',
      tells: toRadiator[layout.thermostat],
    },
    {
      place: 'hose from radiator',
      by: 'feel',
      name: 'Hose from radiator to engine',
      tells: fromRadiator[layout.thermostat],
    },
  ];
}

function heaterHoses(layout: Layout): Place[] {
  const needs = [
    ...(layout.heater === 'valve-controlled' ? ['its valve open'] : []),
    ...(layout['heater-pump'] === 'in a heater hose' ? ['its pump running'] : []),
  ];
  const when =
    needs.length === 0
      ? 'Hot soon after the engine is'
      : `With the heater set to hot and ${needs.join(' and ')}, hot soon after the engine is`;
  return [
    {
      place: 'heater supply',
      by: 'feel',
      name: 'Heater hose from the engine',
      tells: `${when}. Cool on a hot engine: no flow, air in the branch, or low coolant.`,
    },
    {
      place: 'heater return',
      by: 'feel',
      name: 'Heater hose back to the pump',
      tells:
        'Nearly as hot as the supply. Clearly cooler: the core passes little, or holds air. Both hot with cold air in the cabin: look at the air side.',
    },
  ];
}

function lines(layout: Layout): Place[] {
  const found: Place[] = [];
  if (hasByPass(layout)) {
    found.push({
      place: 'by-pass',
      by: 'feel',
      name: 'By-pass',
      tells: closesByPass(layout)
        ? 'Hot first of all after a cold start. The open thermostat shuts it off.'
        : 'Hot first of all after a cold start, and stays hot: it is never shut off.',
    });
  }
  if (layout.reservoir === 'header tank') {
    found.push({
      place: 'vent line',
      by: 'feel',
      name: 'Vent line to the header tank',
      tells:
        'A thin, steady run into the tank with the engine revved. Nothing, or bubbles without end: see vent-line and gas tests.',
    });
  }
  return found;
}

function readings(layout: Layout): Place[] {
  const found: Place[] = [
    {
      place: 'sensor',
      by: 'measure',
      name: 'Coolant sensor, by scan tool',
      tells:
        'After a night outdoors the same as intake and outside air. Warm, close to the reading beside it.',
    },
    {
      place: 'outlet hose',
      by: 'measure',
      name: 'Hose at the engine outlet, by infrared',
      tells:
        'What the coolant really is, a few degrees low. On rubber or a matt patch: bare aluminium shows far too little.',
    },
    radiatorFace(layout),
    reservoir(layout),
  ];
  if (layout['fan-switched-by'] === 'switch in the radiator') {
    found.push({
      place: 'fan switch',
      by: 'measure',
      name: 'Fan switch in the radiator',
      tells:
        'Temperature beside it when the fan starts and when it stops. This is the cool end of the radiator, not the engine.',
    });
  }
  return found;
}

function radiatorFace(layout: Layout): Place {
  const way = layout.radiator === 'cross-flow' ? 'from one side to the other' : 'from top to bottom';
  return {
    place: 'radiator face',
    by: 'measure',
    name: 'Radiator face, by infrared',
    tells: `Falls evenly ${way}. A cold stripe or corner: blocked tubes, or coolant that does not move there.`,
  };
}

function reservoir(layout: Layout): Place {
  return layout.reservoir === 'header tank'
    ? {
        place: 'header tank',
        by: 'measure',
        name: 'Level in the header tank, cold',
        tells: 'Between the marks on a cold engine. The cap holds gauge pressure: opened cold only.',
      }
    : {
        place: 'recovery bottle',
        by: 'measure',
        name: 'Level in the recovery bottle',
        tells:
          'Rises as the engine warms and is drawn back as it cools. Full and not drawn back: cap valve, or air in the system.',
      };
}

/** Whether what regulates sits where the coolant leaves the engine. */
export function regulatesAtOutlet(layout: Layout): boolean {
  return layout.thermostat === 'outlet side' || layout.thermostat === 'valve block';
}

/** Whether there is a thermostat and so a by-pass for it. */
export function hasByPass(layout: Layout): boolean {
  return layout.thermostat !== 'none' && layout.power !== 'battery electric';
}

/** Whether the open thermostat shuts the by-pass off: all but the plain one. */
export function closesByPass(layout: Layout): boolean {
  return layout['thermostat-kind'] !== 'plain wax' && layout['thermostat-kind'] !== 'none';
}
