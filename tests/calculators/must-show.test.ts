/** What each calculator was made to show, asked the way a reader asks. */
import { describe, expect, test } from 'vitest';
import { benchTestCalculator } from '../../src/calculators/bench-test.ts';
import { boilMarginCalculator } from '../../src/calculators/boil-margin.ts';
import { correctMixtureCalculator } from '../../src/calculators/correct-mixture.ts';
import { estimate } from '../../src/calculators/estimate.ts';
import { fillAccount } from '../../src/calculators/fill-account.ts';
import { heatBalance } from '../../src/calculators/heat-balance.ts';
import { level } from '../../src/calculators/level.ts';
import { mixture } from '../../src/calculators/mixture.ts';
import { pressureDecay } from '../../src/calculators/pressure-decay.ts';
import { sensor } from '../../src/calculators/sensor.ts';
import { torque } from '../../src/calculators/torque.ts';
import { voltageDropCalculator } from '../../src/calculators/voltage-drop.ts';
import { answerOf, faultsOf, figureOf } from './ask.ts';

describe('torque', () => {
  const bolt = (thread: string, value: string, more = {}) =>
    answerOf(torque, { thread, class: '8.8', into: 'aluminium', torque: value, ...more });

  test('refuses 50 N·m on an M6 of class 8.8, says why and what is usual', () => {
    const { tone, sentence } = bolt('M6', '50 N·m');
    expect(tone).toBe('stop');
    expect(sentence).toMatch(
      /^Do not use 50 N·m here: no M6 of any class takes more than \d+ N·m before it breaks\. Usual is 6 to 11 N·m\./,
    );
  });

  test('names the slip when another thread or unit would make it usual', () => {
    expect(bolt('M6', '88 N·m').sentence).toContain(
      'It would suit an M12 or an M14, and 88 lbf·in or 88 kgf·cm would suit this one',
    );
  });

  test('passes 25 N·m on an M8', () => {
    const { tone, sentence } = bolt('M8', '25 N·m');
    expect(tone).toBe('fine');
    expect(sentence).toContain('25 N·m fits an M8 of class 8.8 in aluminium');
  });

  test('says nothing of strength for a plug of brass', () => {
    const { tone, sentence } = answerOf(torque, { class: 'none', torque: '15' });
    expect(tone).toBe('look');
    expect(sentence).toContain('cannot be judged by a standard');
  });

  test('turns a short engagement into a stripped hole', () => {
    expect(bolt('M8', '25', { engagement: '3 mm' }).sentence).toContain('strips');
  });

  test('offers the joints of a vehicle with bolt and hole, and a plug as one that no class describes', () => {
    const quantity = { dimension: 'torque', low: 8, high: 12, unit: 'N·m', decimals: 0 } as const;
    const sets = torque.sets?.of({
      figures: { 'torque.thermostat-housing': { quantity }, 'torque.bleed-screw': { quantity } },
      bolts: {
        'thermostat-housing': { bolt: 'M6', class: '8.8', into: 'aluminium' },
        'bleed-screw': { bolt: 'M10', class: 'plastic', into: 'plastic' },
        'water-pump': { bolt: 'M8', class: '8.8', into: 'aluminium' },
      },
    });
    // Emptied too, so that nothing of the joint before stays.
    const oneStage = { second: '', angle: '', again: '' };
    expect(sets).toEqual([
      {
        id: 'thermostat-housing',
        label: 'Thermostat or water-outlet housing',
        fields: { torque: '10 N·m', thread: 'M6', class: '8.8', into: 'aluminium', ...oneStage },
      },
      {
        id: 'bleed-screw',
        label: 'Bleed screw',
        fields: { torque: '10 N·m', thread: 'M10', class: 'none', ...oneStage },
      },
    ]);
  });

  test('fills in the stages of a joint, and names the first where there are more than fit', () => {
    const quantity = { dimension: 'torque', low: 10, high: 10, unit: 'N·m', decimals: 0 } as const;
    const to = { ...quantity, low: 20, high: 20 };
    const turn = { dimension: 'angle', low: Math.PI / 2, high: Math.PI / 2, unit: '°', decimals: 0 } as const;
    const sets = torque.sets?.of({
      figures: { 'torque.water-pump': { quantity }, 'torque.front-cover': { quantity } },
      bolts: {
        'water-pump': { bolt: 'M8', class: '8.8', into: 'aluminium', stages: [{ to }, { turn }, { turn }] },
        'front-cover': { bolt: 'M8', class: '8.8', into: 'aluminium', stages: [{ turn }, { to }] },
      },
    });
    expect(sets?.map(({ fields }) => [fields.second, fields.angle, fields.again])).toEqual([
      ['20 N·m', '90°', '90°'],
      ['', '', ''],
    ]);
    expect(sets?.map(({ label }) => label.endsWith(', first stage'))).toEqual([false, true]);
  });
});

describe('fill account', () => {
  test('finds about 1.7 l of air in a 4.6 l system that gave 4.0 and took 2.3, and sends to the vent path', () => {
    const { tone, sentence } = answerOf(fillAccount, {
      capacity: '4.6',
      before: 'mark',
      drained: '4.0',
      refilled: '2.3',
    });
    expect(tone).toBe('stop');
    expect(sentence).toContain('About 1.7 l of air is still inside. Look at the vent path first');
  });
});

describe('mixture', () => {
  test('shows undiluted ethylene glycol freezing warmer than one third, and why', () => {
    const { tone, sentence, notes } = answerOf(mixture, { strength: '100 %' });
    expect(tone).toBe('stop');
    expect(sentence).toMatch(
      /at −13 to −12 °C it freezes warmer than a mixture of one third \(−\d+ to −\d+ °C\)/,
    );
    expect(sentence).toContain('never fill it undiluted');
    expect(notes.join(' ')).toContain('the glycol itself begins to freeze out');
  });

  test.each(['61', '65', '70', '80', '90', '100'])(
    'gives only a range in whole degrees at %s %% by mass',
    (strength) => {
      const { figures } = answerOf(mixture, { strength, by: 'mass' });
      const line = figures.find(({ label }) => label === 'First crystals at');
      expect(line?.value).toMatch(/^−\d+ to −\d+ °C$/);
      expect(line?.note).toBe('sources disagree this strong; a range, no figure');
    },
  );

  test('goes back from a freezing point, on its own scale and on the other', () => {
    const own = answerOf(mixture, { known: 'freezing', freezes: '-37 °C' });
    expect(own.sentence).toMatch(/^Protected down to −37 °C\. .*about 48 to 49 % concentrate by volume/);
    const wrong = answerOf(mixture, { known: 'freezing', freezes: '-20 °C', glycol: 'propylene' });
    expect(wrong.notes[0]).toContain('Read on the wrong scale');
  });

  test('gives no strength below the end of the correlation', () => {
    expect(faultsOf(mixture, { known: 'freezing', freezes: '-55 °C' })[0]?.name).toBe('freezes');
  });
});

describe('thermostat in a pot', () => {
  test('refuses an open pot at 2,500 m for a 92 °C thermostat', () => {
    const { tone, sentence } = answerOf(benchTestCalculator, { stamp: '92', altitude: '2500' });
    expect(tone).toBe('stop');
    expect(sentence).toMatch(/^Do not test it in a pot here: water boils at 91\.\d °C/);
  });

  test('never promises full opening above 88 °C, even at the sea', () => {
    for (const stamp of ['89', '92', '95'])
      expect(answerOf(benchTestCalculator, { stamp, altitude: '0' }).sentence).not.toContain('A pot will do');
  });
});

describe('boil margin', () => {
  test('gives the margin, the flash temperature, and does not call a cooler system safe', () => {
    const running = answerOf(boilMarginCalculator, { now: '118', cap: '1.0 bar' });
    expect(running.sentence).toMatch(/to boiling.*Leave the cap on: opened now it would flash/);
    const cooler = answerOf(boilMarginCalculator, { now: '85' });
    expect(cooler.sentence).toContain('not flashing is not safe to open');
    expect(cooler.notes[0]).toContain('follow the maker’s procedure');
  });

  test('says stop where it boils', () => {
    expect(answerOf(boilMarginCalculator, { now: '112', cap: '0' }).tone).toBe('stop');
  });
});

describe('correct the mixture', () => {
  test('drains and adds: 6 l from 30 to 50 % by concentrate is 1.7 l', () => {
    expect(answerOf(correctMixtureCalculator, {}).sentence).toBe(
      'Drain 1.7 l cold, measured, and fill 1.7 l of concentrate.',
    );
  });

  test('weakens with water', () => {
    expect(answerOf(correctMixtureCalculator, { is: '70', wanted: '50' }).sentence).toContain('of water');
  });

  test('says a ready mix cannot strengthen beyond itself', () => {
    expect(faultsOf(correctMixtureCalculator, { adding: 'ready', wanted: '55' })).toEqual([
      {
        name: 'adding',
        message: 'A ready mix of 50 % cannot bring it up to 55 %. Use concentrate, or want less.',
      },
    ]);
  });

  test('counts the remainder of a part drain, and says when it is too weak to correct', () => {
    const flushed = { system: 'drained', capacity: '6', is: '0', wanted: '50' };
    expect(answerOf(correctMixtureCalculator, { ...flushed, drained: '4' }).sentence).toContain(
      'Fill 3.0 l of concentrate first, then 1.0 l of water',
    );
    expect(answerOf(correctMixtureCalculator, { ...flushed, drained: '2' }).sentence).toMatch(
      /comes to 33 %, not 50 %. Drain 1\.0 l more/,
    );
  });

  test('counts flushes with the fill: two thirds out each time leaves under a tenth after two rinses and the fill', () => {
    const answer = answerOf(correctMixtureCalculator, {
      system: 'flush',
      capacity: '6',
      drained: '4',
      below: '10',
    });
    expect(figureOf(answer, 'Rinses with water')).toBe(2);
    expect(figureOf(answer, 'Old coolant left after the fill')).toBeCloseTo(3.7, 9);
  });
});

describe('level', () => {
  test('stands above the cold mark when hot and below it in frost', () => {
    expect(answerOf(level, { now: '80' }).sentence).toContain('above the cold mark');
    expect(answerOf(level, { now: '-35' }).sentence).toContain('below the cold mark');
  });

  test('says when the bottle has no room', () => {
    expect(answerOf(level, { room: '0.1 l' }).sentence).toContain('no room');
  });
});

describe('pressure test', () => {
  test('takes cooling for no leak, where the gas law alone would call one', () => {
    const warm = {
      start: '1.0 bar',
      'start-temperature': '80',
      'end-temperature': '77',
      air: '1.0 l',
      took: '10 min',
    };
    const tight = figureOf(answerOf(pressureDecay, warm), 'A tight system would show');
    expect(tight).toBeLessThan(0.97);
    expect(answerOf(pressureDecay, { ...warm, end: `${tight} bar` }).tone).toBe('fine');
    expect(answerOf(pressureDecay, { ...warm, end: '0.5 bar' }).tone).toBe('stop');
  });

  test('cannot tell after a wide change, and says when it rose', () => {
    const cooled = {
      start: '1.0 bar',
      'start-temperature': '80',
      'end-temperature': '60',
      air: '1.0 l',
      end: '0.58 bar',
    };
    expect(answerOf(pressureDecay, cooled).sentence).toContain('Cannot tell');
    expect(answerOf(pressureDecay, { end: '1.3 bar' }).sentence).toContain('It rose');
  });
});

describe('sensor', () => {
  const read = (typed: Record<string, string>) => answerOf(sensor, typed).sentence;

  test('says which of three lies', () => {
    expect(read({})).toContain('All three agree');
    expect(read({ scan: '110 °C' })).toContain('The scan tool shows fiction');
    expect(read({ infrared: '50 °C' })).toContain('Too far below');
    expect(read({ infrared: '93 °C' })).toContain('It reads low');
    expect(read({ resistance: '900 Ω' })).toContain('The resistance is out');
    expect(read({ scan: '110 °C', infrared: '20 °C' })).toContain('No two agree');
  });

  test('believes no infrared on bare metal', () => {
    expect(read({ surface: 'metal', infrared: '40 °C' })).toContain('Infrared on bare metal proves nothing');
  });

  test('knows an open wire and a short on the scan tool', () => {
    expect(read({ scan: '-40 °C' })).toContain('An open wire');
    expect(read({ scan: '150 °C', infrared: '' })).toContain('A short');
  });

  test('asks for at least one reading, and for points that fall', () => {
    expect(faultsOf(sensor, { resistance: '', scan: '', infrared: '' })[0]?.name).toBe('resistance');
    expect(faultsOf(sensor, { 'r-80': '3 kΩ' })[0]?.message).toContain('must fall as it warms');
  });
});

describe('voltage drop', () => {
  test('judges by place, and calls heat in one spot', () => {
    expect(answerOf(voltageDropCalculator, { drop: '0.3', current: '25' }).sentence).toContain(
      'Bad joint: 0.30 V lost where 0.10 V',
    );
    expect(answerOf(voltageDropCalculator, { drop: '0.3', place: 'supply side' }).tone).toBe('fine');
  });

  test('tells the current of a fuse with its doubt, and says when it is over', () => {
    const fuse = { measured: 'fuse', fuse: '20' };
    expect(answerOf(voltageDropCalculator, { ...fuse, 'fuse-drop': '60 mV' }).sentence).toBe(
      'About 14 to 21 A flows: near the 20 A of the fuse, which in the long run bears about 16 A. Put a clamp on the wire, and if it is so, find what draws it before the fuse gives way.',
    );
    expect(answerOf(voltageDropCalculator, { ...fuse, 'fuse-drop': '100 mV' }).sentence).toContain(
      'do not fit a larger fuse',
    );
  });
});

describe('heat balance', () => {
  test('tells flow from air side', () => {
    expect(answerOf(heatBalance, { cold: '50' }).sentence).toContain('Too little flow');
    expect(answerOf(heatBalance, { cold: '82' }).sentence).toContain('air side');
  });
});

describe('estimate', () => {
  test('books quarters of an hour and prices by the rate given', () => {
    const given = {
      find: '40',
      'find-nine': '75',
      repair: '60',
      extra: '30',
      parts: '45',
      rate: '60',
      currency: 'EUR',
    };
    expect(answerOf(estimate, given).sentence).toBe(
      'Book 2 h 45 min. Tell the customer 175 EUR, up to 210 EUR if it hides.',
    );
    expect(answerOf(estimate, { ...given, rate: '' }).sentence).toBe('Book 2 h 45 min.');
    // A quarter begun is booked: less would promise more than the time that was worked out.
    expect(answerOf(estimate, { ...given, extra: '31', rate: '' }).sentence).toBe('Book 3 h.');
    expect(answerOf(estimate, { ...given, extra: '44', rate: '' }).sentence).toBe('Book 3 h.');
  });
});
