/** Whether a torque can belong to a bolt, what to set with a crow-foot on, and the torque in other units. */

import { isJoint, JOINTS } from '../model/figures.ts';
import { isPropertyClass, PROPERTY_CLASSES } from '../physics/bolt.ts';
import { parseThread } from '../physics/thread.ts';
import {
  HOLE_MATERIALS,
  type HoleMaterial,
  type TorqueFigures,
  type TorquePlausibility,
  torquePlausibility,
} from '../physics/torque-plausibility.ts';
import { TORQUE_UNITS } from '../physics/torque-units.ts';
import { metre, newtonMetre } from '../physics/units.ts';
import { wrenchSetting } from '../physics/wrench-extension.ts';
import type {
  Answer,
  AnswerFigure,
  Calculator,
  FieldSet,
  QuantityFormatter,
  Refusal,
  Values,
  VehicleFacts,
} from './declaration.ts';
import { refuse } from './refuse.ts';
import {
  ANGLE_NOTES,
  fieldsOfStages,
  inOrder,
  LONG_BOLTS_FROM,
  STAGE_INPUTS,
  STAGE_SHARE,
  type Stages,
  stagesOf,
  torqueText,
  turnFigures,
} from './torque-after.ts';
import { LUBRICATED, oilOn, oilOnUnclassed } from './torque-oil.ts';

/** Sizes met on a cooling system, coarse first; fine pitches of plugs, sensors and pulleys. */
const THREADS = [
  'M5',
  'M6',
  'M7',
  'M8',
  'M8x1',
  'M10',
  'M10x1',
  'M10x1.25',
  'M12',
  'M12x1.25',
  'M12x1.5',
  'M14',
  'M14x1.5',
  'M16',
  'M16x1.5',
];
/** A plug, sensor or screw that no class of ISO 898-1 describes. */
const NO_CLASS = 'none';

const ANGLES: Readonly<Record<string, number>> = { 'in-line': 0, across: Math.PI / 2, back: Math.PI };

export const torque: Calculator = {
  id: 'torque',
  title: 'Torque',
  settles:
    'whether a torque can be meant for this bolt, with stages, an angle or oil, and what to set with a crow-foot on',
  also: [
    'bolt torque',
    'crow-foot',
    'crowfoot extension',
    'N·m to lbf·ft',
    'stripped thread',
    'torque converter',
    'clamp load',
    'torque plus angle',
    'angle tightening',
    'oiled thread torque',
    'dry or oiled bolt',
  ],
  sets: { label: 'Joint of this vehicle', of: jointsOf },
  inputs: [
    {
      kind: 'quantity',
      name: 'torque',
      label: 'Torque given',
      dimension: 'torque',
      unit: 'N·m',
      default: '10 N·m',
      limits: ['0.2 N·m', '1000 N·m'],
      reading: true,
    },
    {
      kind: 'choice',
      name: 'thread',
      label: 'Thread',
      hint: 'The thread, not the spanner: a 10 mm head is usually M6, 13 mm M8.',
      default: 'M6',
      options: THREADS.map((name) => ({ value: name, label: name })),
    },
    {
      kind: 'choice',
      name: 'class',
      label: 'On its head',
      default: '8.8',
      options: [
        ...PROPERTY_CLASSES.map((name) => ({ value: name, label: name })),
        { value: NO_CLASS, label: 'nothing: brass, plastic, a sensor' },
      ],
    },
    {
      kind: 'choice',
      name: 'into',
      label: 'Screwed into',
      default: 'aluminium',
      options: HOLE_MATERIALS.map((name) => ({ value: name, label: name })),
      when: { class: PROPERTY_CLASSES },
    },
    {
      kind: 'quantity',
      name: 'engagement',
      label: 'Thread in the hole',
      hint: 'Length that carries, if you know it: a repaired or half-stripped hole has less.',
      dimension: 'length',
      unit: 'mm',
      default: '',
      limits: ['2 mm', '60 mm'],
      optional: true,
      when: { class: PROPERTY_CLASSES },
    },
    ...STAGE_INPUTS,
    LUBRICATED,
    {
      kind: 'choice',
      name: 'foot',
      label: 'Crow-foot on the wrench',
      default: 'no',
      options: [
        { value: 'no', label: 'none' },
        { value: 'in-line', label: 'in line with the wrench' },
        { value: 'across', label: 'at a right angle' },
        { value: 'back', label: 'pointing back to the hand' },
      ],
    },
    {
      kind: 'quantity',
      name: 'wrench',
      label: 'Wrench, grip to drive',
      hint: 'From the middle of the grip.',
      dimension: 'length',
      unit: 'mm',
      default: '300 mm',
      limits: ['80 mm', '1500 mm'],
      when: { foot: Object.keys(ANGLES) },
    },
    {
      kind: 'quantity',
      name: 'extension',
      label: 'Crow-foot, drive to bolt',
      dimension: 'length',
      unit: 'mm',
      default: '40 mm',
      limits: ['5 mm', '600 mm'],
      when: { foot: Object.keys(ANGLES) },
    },
  ],
  answer(values, show): Answer | Refusal {
    const stages = stagesOf(values, show);
    if ('refused' in stages) return stages;
    const given = stages.last;
    const setting = settingOf(values, given);
    if (setting === 'under the hand')
      return refuse(
        'extension',
        'Pointing back so far, the bolt would sit under the hand and no setting is right. Turn the crow-foot across or use a shorter one.',
      );
    const set =
      setting === undefined
        ? []
        : [
            {
              label: given > stages.first ? 'Set on the wrench, second stage' : 'Set on the wrench',
              value: show.quantity(setting, 'N·m', 1),
              note: 'pulled at the middle of the grip',
            },
          ];
    const figures = [...set, ...turnFigures(stages), ...inUnits(given, show)];
    const thread = values.choice('thread');
    const propertyClass = values.choice('class');
    if (!isPropertyClass(propertyClass)) return withoutClass(values, stages, setting, figures, show);
    const into = HOLE_MATERIALS.find((each) => each === values.choice('into')) ?? 'aluminium';
    const engagement = values.optional('engagement');
    const found = torquePlausibility({
      thread,
      propertyClass,
      torque: given,
      into,
      ...(engagement !== undefined && { engagement: metre(engagement) }),
    });
    if (found.verdict === 'unknown thread')
      return refuse('thread', `${thread} is not a thread known here. Choose one of the list.`);
    const bolt = { propertyClass, into };
    const plain = isStaged(stages) ? sayStaged(found, stages, bolt, show) : say(found, given, bolt, show);
    const oil =
      plain.tone === 'stop' ? undefined : oilOn(values, given, { name: thread, propertyClass }, show);
    const said = oil === undefined ? plain : withOil(oil, plain, stages);
    const isRefused = said.tone === 'stop';
    return {
      ...said,
      sentence: isRefused ? said.sentence : `${setSentence(setting, show)}${said.sentence}`,
      figures: [
        ...(oil?.figures ?? []),
        ...(isRefused ? inUnits(given, show) : figures),
        ...boltFigures(found.figures, propertyClass, isRefused, stages.total > 0, show),
      ],
      notes: [
        ...(stages.total > 0 ? ANGLE_NOTES : []),
        ...engagementNote(thread, into, engagement, show),
        'The usual range is common practice for a joint with no figure at hand. The maker’s figure, his order and his angle turns stand above it.',
        'Clean and dry unless the maker says oiled: oil on a thread raises the clamp load by half at the same torque. A bolt tightened by angle is replaced once undone, if the maker says so.',
        WRENCH_NOTE,
      ],
    };
  },
  method: {
    formula:
      'torque at 90 % of yield = preload × (0.16 P + 0.58 d₂ μ + rₕ μ); refused where the least tensile strength of its class is used up at μ = 0.14, or where a dry thread strips the hole; looked at again where an oiled one may, the hole 15 % weaker; with oil or paste the torque that clamps as much at μ = 0.10 or 0.08 for a dry 0.16, refused past 90 % of yield; setting = torque × L / (L + E cos angle)',
    sources: [
      'ISO 898-1, strength of bolts',
      'VDI 2230 part 1, torque and preload',
      'ISO 261 and ISO 724, threads',
      'NIST SP 811 (2008), units',
      'VDI 2230 part 1, table A5, classes of friction (A 0.04 to 0.10, B 0.08 to 0.16, C 0.14 to 0.24; from memory), measured by ISO 16047',
      'stage before an angle up to four fifths of the usual highest, half a turn and more for long bolts only: common practice, no source',
      'usual range, half to all of the figure at μ = 0.14: common practice, no source',
    ],
    valid: 'metric threads M5 to M16 with a hexagon or flange head, classes 5.8 to 12.9; straight crow-feet',
    error:
      'bolt limits within 1 % of the printed tables of VDI 2230; holes good to about 15 %; a real joint scatters by 25 to 30 % in clamp load at the same torque; no clamp load is given after an angle',
  },
};

const WRENCH_NOTE =
  'A click wrench is read from one fifth of its range upwards. Below about 5 N·m use a small one or a screwdriver type.';

function jointsOf(vehicle: VehicleFacts): FieldSet[] {
  return Object.entries(vehicle.bolts).flatMap(([joint, { bolt, class: propertyClass, into, stages }]) => {
    const after = fieldsOfStages(stages);
    const stage = after === undefined ? ', first stage' : '';
    const given = vehicle.figures[`torque.${joint}`]?.quantity;
    if (!given || !THREADS.includes(bolt)) return [];
    const known =
      propertyClass !== undefined &&
      isPropertyClass(propertyClass) &&
      HOLE_MATERIALS.some((each) => each === into);
    const middle = (given.low + given.high) / 2;
    return [
      {
        id: joint,
        label: (isJoint(joint) ? JOINTS[joint].label : joint.replaceAll('-', ' ')) + stage,
        fields: {
          torque: `${Number(middle.toFixed(2))} N·m`,
          thread: bolt,
          class: known ? propertyClass : NO_CLASS,
          ...(after ?? fieldsOfStages([])),
          ...(known && { into }),
        },
      },
    ];
  });
}

function settingOf(values: Values, torque: number): number | undefined | 'under the hand' {
  const angle = ANGLES[values.choice('foot')];
  if (angle === undefined) return undefined;
  const wrench = values.number('wrench');
  const extension = values.number('extension');
  // The lever rule has no answer where the bolt comes within a quarter of the wrench of the hand.
  if (wrench + extension * Math.cos(angle) < wrench / 4) return 'under the hand';
  return wrenchSetting(newtonMetre(torque), metre(wrench), metre(extension), angle);
}

/** What has no class on it: only what even the strongest bolt would not bear is refused. */
function withoutClass(
  values: Values,
  stages: Stages,
  setting: number | undefined,
  figures: AnswerFigure[],
  show: QuantityFormatter,
): Answer {
  const given = stages.last;
  const thread = values.choice('thread');
  const strongest = torquePlausibility({ thread, propertyClass: '12.9', torque: given, into: 'steel' });
  if (strongest.verdict === 'impossible')
    return {
      sentence: `Do not use ${show.quantity(given, 'N·m', 0)} here: the strongest steel bolt, an ${thread} of class 12.9, breaks before ${show.quantity(strongest.limit, 'N·m', 0)}, and what has no class on it bears less. Look for a slip in thread or unit.`,
      tone: 'stop',
      figures: inUnits(given, show),
      notes: ['Brass and plastic threads strip far below what steel of the same size takes.', WRENCH_NOTE],
    };
  const oil = oilOnUnclassed(values);
  return {
    sentence: `${setSentence(setting, show)}${oil === undefined ? '' : `${oil} `}A plug, sensor or screw with no class on it cannot be judged by a standard: hold ${isStaged(stages) ? inOrder(stages, show) : show.quantity(given, 'N·m', 1)} to the maker’s figure only.`,
    tone: 'look',
    figures,
    notes: ['Brass and plastic threads strip far below what steel of the same size takes.', WRENCH_NOTE],
  };
}

function setSentence(setting: number | undefined, show: QuantityFormatter): string {
  return setting === undefined ? '' : `Set the wrench to ${show.quantity(setting, 'N·m', 1)}. `;
}

/** For a wrench marked otherwise; who reads US units has none in newton metres. */
function inUnits(given: number, show: QuantityFormatter): AnswerFigure[] {
  const round = (value: number) => String(Number(value.toPrecision(3)));
  const isMetric = show.quantity(given, 'N·m', 1).endsWith('N·m');
  return [
    ...(isMetric ? [{ label: 'In newton metres', value: `${round(given)}\u00a0N·m` }] : []),
    { label: 'In pound-force feet', value: `${round(given / TORQUE_UNITS.lbf·ft)}\u00a0lbf·ft` },
    { label: 'In pound-force inches', value: `${round(given / TORQUE_UNITS.lbf·in)}\u00a0lbf·in` },
  ];
}

function isStaged({ first, last, total }: Stages): boolean {
  return last > first || total > 0;
}

/** A torque in stages or with an angle: the order of the work, then what stands against it. */
function sayStaged(
  found: Exclude<TorquePlausibility, { verdict: 'unknown thread' }>,
  stages: Stages,
  bolt: { propertyClass: string; into: HoleMaterial },
  show: QuantityFormatter,
): Pick<Answer, 'sentence' | 'tone'> {
  const order = `Tighten to ${inOrder(stages, show)}.`;
  const { last, total } = stages;
  // What only seats the joint before an angle is meant to be low.
  const isLowStage = total > 0 && found.verdict === 'doubtful' && found.because === 'far below the usual';
  if (found.verdict !== 'possible' && !isLowStage) return say(found, last, bolt, show);
  if (total === 0) return { sentence: `${order} ${say(found, last, bolt, show).sentence}`, tone: 'fine' };
  if (bolt.into === 'plastic insert')
    return {
      sentence: `Look again at the source: an insert in plastic is not tightened by angle, it turns with the bolt. The angle belongs to another joint.`,
      tone: 'look',
    };
  if (last > STAGE_SHARE * found.figures.usual.highest)
    return {
      sentence: `Look again at the source: ${torqueText(last, show)} is the whole torque of an ${found.figures.thread} of class ${bolt.propertyClass}, no stage before an angle. Usual without one is ${show.range(found.figures.usual.lowest, found.figures.usual.highest, 'N·m', 0)}.`,
      tone: 'look',
    };
  if (total > LONG_BOLTS_FROM + 1e-9)
    return {
      sentence: `${order} So far only long bolts are turned, of a head or a crank pulley: look again at the source before a short one is. New bolts.`,
      tone: 'look',
    };
  return {
    sentence: `${order} Mark head and part before the turn. New bolts, unless the maker lets them be used again.`,
    tone: 'fine',
  };
}

/** Oil beside what is said of the torque: the graver of the two leads. */
function withOil(
  oil: Pick<Answer, 'sentence' | 'tone'>,
  plain: Pick<Answer, 'sentence' | 'tone'>,
  { total }: Stages,
): Pick<Answer, 'sentence' | 'tone'> {
  const stage = total > 0 ? ' That is the stage; the angle stays as it is.' : '';
  return {
    sentence: `${oil.sentence}${stage}${plain.tone === 'look' ? ` ${plain.sentence}` : ''}`,
    tone: oil.tone,
  };
}

/** Thread a hole wants, as a multiple of the diameter. Common practice, no source. */
const ENGAGEMENT: Readonly<Record<HoleMaterial, number>> = {
  aluminium: 1.5,
  'cast iron': 1.2,
  steel: 1,
  'plastic insert': 1.5,
};

function engagementNote(
  thread: string,
  into: HoleMaterial,
  engagement: number | undefined,
  show: QuantityFormatter,
): string[] {
  const diameter = parseThread(thread)?.diameter;
  const wants = ENGAGEMENT[into] * (diameter ?? 0);
  if (engagement === undefined || engagement >= wants - 1e-9) return [];
  return [
    `A hole in ${into} wants ${ENGAGEMENT[into]} times the diameter of thread, ${show.quantity(wants, 'mm', 0)} for ${thread}; here are ${show.quantity(engagement, 'mm', 0)}. A thread insert or a longer bolt, where the hole is deep enough. Common practice, no source.`,
  ];
}

function boltFigures(
  figures: TorqueFigures,
  propertyClass: string,
  isRefused: boolean,
  isStage: boolean,
  show: QuantityFormatter,
): AnswerFigure[] {
  const kilonewton = (force: number) => `${(force / 1000).toFixed(1)}`;
  const { clampLoad, proofLoad, strippingLoad } = figures;
  return [
    {
      label: `Usual for ${figures.thread} ${propertyClass}`,
      value: show.range(figures.usual.lowest, figures.usual.highest, 'N·m', 0),
      note: 'common practice',
    },
    // What cannot be tightened clamps with nothing.
    ...(isRefused
      ? []
      : [
          {
            label: isStage ? 'Clamps with before the angle, dry to oiled' : 'Clamps with, dry to oiled',
            value: `${kilonewton(clampLoad.lowest)} to ${kilonewton(clampLoad.highest)}\u00a0kN`,
            note: `proof load ${kilonewton(proofLoad)} kN (ISO 898-1)`,
          },
        ]),
    ...(strippingLoad === undefined
      ? []
      : [
          {
            label: 'The hole strips at',
            value: `${kilonewton(strippingLoad)}\u00a0kN`,
            note: 'good to 15 %',
          },
        ]),
  ];
}

function say(
  found: Exclude<TorquePlausibility, { verdict: 'unknown thread' }>,
  given: number,
  { propertyClass, into }: { propertyClass: string; into: HoleMaterial },
  show: QuantityFormatter,
): Pick<Answer, 'sentence' | 'tone'> {
  const asked = show.quantity(given, 'N·m', given < 20 && given % 1 !== 0 ? 1 : 0);
  const { thread, usual } = found.figures;
  const usually = `Usual is ${show.range(usual.lowest, usual.highest, 'N·m', 0)}.`;
  const bolt = `an ${thread} of class ${propertyClass} in ${into}`;
  if (found.verdict === 'possible') {
    const sentence =
      given < usual.lowest
        ? `${asked} is low for ${bolt} and can be meant, as over a gasket or a plastic part. ${usually}`
        : given > usual.highest
          ? `${asked} is high for ${bolt} and still within what it bears. ${usually}`
          : `${asked} fits ${bolt}. ${usually}`;
    return { sentence, tone: 'fine' };
  }
  const whole = show.quantity(found.limit, 'N·m', 0);
  const limit = whole === asked ? show.quantity(found.limit, 'N·m', 1) : whole;
  if (found.verdict === 'doubtful') {
    const because = {
      'above what this class takes': `it is above the ${limit} that uses up 90 % of an ${thread} of class ${propertyClass}`,
      'above what a hole in aluminium usually takes': `it is above the ${limit} that a hole in aluminium usually takes`,
      'above what an insert in plastic usually takes': `it is above the ${limit} that an insert in plastic usually takes`,
      'may strip the hole': `with so little thread the hole may strip from ${limit}, a drop of oil and the scatter of a casting counted`,
      'far below the usual': `it hardly clamps an ${thread}; a unit or a thread may be a slip`,
    }[found.because];
    return {
      sentence: `Look again at the source before using ${asked}: ${because}. ${usually}`,
      tone: 'look',
    };
  }
  const because = {
    'no bolt of this thread': `no ${thread} of any class takes more than ${limit} before it breaks`,
    'no bolt of this class': `the weakest ${thread} allowed in class ${propertyClass} breaks at about ${limit}`,
    'strips the hole': `the thread in the hole strips from about ${limit}`,
    'pulls the insert out': `an insert in plastic is pulled out from about ${limit}`,
  }[found.because];
  const bolts = found.fitsThreads.map((name) => `an ${name}`).join(' or ');
  const units = found.fitsUnits.map((unit) => `${Number(given.toPrecision(3))} ${unit}`).join(' or ');
  const slips = [
    ...(bolts === '' ? [] : [`it would suit ${bolts}`]),
    ...(units === '' ? [] : [`${units} would suit this one`]),
  ].join(', and ');
  const slip =
    slips === ''
      ? ''
      : ` ${slips.charAt(0).toUpperCase()}${slips.slice(1)}: look for a slip in thread or unit.`;
  return { sentence: `Do not use ${asked} here: ${because}. ${usually}${slip}`, tone: 'stop' };
}
