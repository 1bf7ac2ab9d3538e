import { type PropertyClass, proofLoad } from './bolt.ts';
import { FRICTION } from './friction.ts';
import { SHEAR_STRENGTH, STRIPPING_SCATTER, strippingLoad, type TappedMetal } from './stripping.ts';
import { COARSE_THREADS, parseThread, type Thread } from './thread.ts';
import { breakingTorque, clampLoad, tighteningTorque } from './tightening.ts';
import { TORQUE_UNITS, type TorqueUnit } from './torque-units.ts';
import { type Metre, type Newton, type NewtonMetre, newton, newtonMetre } from './units.ts';

/** What the bolt is screwed into. */
export type HoleMaterial = TappedMetal | 'plastic insert';

/** A torque with the bolt it is meant for. */
export interface TorqueQuestion {
  /** As on a drawing: "M6", "M8x1". */
  readonly thread: string;
  readonly propertyClass: PropertyClass;
  readonly torque: NewtonMetre;
  readonly into: HoleMaterial;
  /** Length of thread that carries, m. Left out: as long as this bolt needs, so that the hole is not judged by it. */
  readonly engagement?: Metre;
}

/** What the verdict rests on, for the sentence that explains it. */
export interface TorqueFigures {
  readonly thread: string;
  /** Usual torque for this bolt in this hole, N·m: dry to lightly oiled, no maker's figure at hand. */
  readonly usual: { readonly lowest: NewtonMetre; readonly highest: NewtonMetre };
  /** Torque that uses 90 % of the bolt's yield strength at friction 0.16, N·m. */
  readonly classLimit: NewtonMetre;
  /** Clamp load of the torque asked about, from a dry thread (0.16) to an oiled one (0.10), N. */
  readonly clampLoad: { readonly lowest: Newton; readonly highest: Newton };
  readonly proofLoad: Newton;
  /** Load that shears the thread out of the hole, N; where the engagement is known and the hole is metal. */
  readonly strippingLoad?: Newton;
}

/** Why a torque cannot belong to the bolt. */
export type TorqueRefusal =
  | 'no bolt of this thread'
  | 'no bolt of this class'
  | 'strips the hole'
  | 'pulls the insert out';

/** Why a torque wants a second look. */
export type TorqueDoubt =
  | 'above what this class takes'
  | 'above what a hole in aluminium usually takes'
  | 'above what an insert in plastic usually takes'
  | 'may strip the hole'
  | 'far below the usual';

/** Verdict on a torque. `limit` is the torque that was crossed. */
export type TorquePlausibility =
  | { readonly verdict: 'unknown thread'; readonly thread: string }
  | { readonly verdict: 'possible'; readonly figures: TorqueFigures }
  | {
      readonly verdict: 'doubtful';
      readonly because: TorqueDoubt;
      readonly limit: NewtonMetre;
      readonly figures: TorqueFigures;
    }
  | {
      readonly verdict: 'impossible';
      readonly because: TorqueRefusal;
      readonly limit: NewtonMetre;
      readonly figures: TorqueFigures;
      /** Coarse threads of the same class for which this torque is usual: the thread may be the slip. */
      readonly fitsThreads: readonly string[];
      /** Units in which the bare number would be usual: the unit may be the slip. */
      readonly fitsUnits: readonly TorqueUnit[];
    };

/** Beyond this multiple of the limit at 90 % of yield the strongest bolt has broken whatever its friction and its steel. */
const BEYOND_BREAKING = 1.5;

/** Share of the friction-0.14 torque that makers use; common practice, no source. */
const USUAL_SHARE = { metal: [0.5, 1], 'plastic insert': [0.3, 0.6] } as const;

/** Below this share of the usual highest a joint is hardly clamped; common practice, no source. */
const HARDLY_CLAMPED = 0.25;

/**
 * Says whether a torque can belong to a bolt, and if not, why and what would be usual.
 *
 * Limits by VDI 2230 with the yield strengths of ISO 898-1; refused above 1.5 times the figure at friction 0.16 of
 * class 12.9 (no bolt of the thread), where the least strength of the bolt's own class breaks at friction 0.14, and where a dry thread already strips the hole; doubted where
 * an oiled one strips a hole at the weak end of its scatter. In aluminium a
 * bolt stronger than 8.8 counts as 8.8, since the hole does not get stronger with the bolt. The usual range is
 * common practice and is no substitute for the maker's figure.
 * @throws OutOfRange on a torque above 100,000 N·m or an engagement that is no length
 */
export function torquePlausibility(question: TorqueQuestion): TorquePlausibility {
  const thread = parseThread(question.thread);
  if (!thread) return { verdict: 'unknown thread', thread: question.thread };
  const { torque, into, propertyClass } = question;
  const figures = figuresFor(thread, question);
  const refusal = findRefusal(thread, question, figures);
  if (refusal) {
    // A hole that gives way is no slip of the pen, whatever else the number would suit.
    if (refusal.because === 'strips the hole')
      return { verdict: 'impossible', ...refusal, figures, fitsThreads: [], fitsUnits: [] };
    const fitsThreads = COARSE_THREADS.filter((name) => name !== thread.name && isUsual(name, question));
    return {
      verdict: 'impossible',
      ...refusal,
      figures,
      fitsThreads,
      fitsUnits: unitsThatFit(torque, figures),
    };
  }
  const doubt = findDoubt(thread, question, figures, heldClass(propertyClass, into));
  return doubt ? { verdict: 'doubtful', ...doubt, figures } : { verdict: 'possible', figures };
}

function figuresFor(
  thread: Thread,
  { torque, into, propertyClass, engagement }: TorqueQuestion,
): TorqueFigures {
  return {
    thread: thread.name,
    usual: usualTorque(thread, propertyClass, into),
    classLimit: tighteningTorque(thread, propertyClass, FRICTION.dry.coefficient),
    clampLoad: {
      lowest: clampLoad(thread, torque, FRICTION.dry.coefficient),
      highest: clampLoad(thread, torque, FRICTION.oiled.coefficient),
    },
    proofLoad: proofLoad(thread, propertyClass),
    ...(into !== 'plastic insert' &&
      engagement !== undefined && { strippingLoad: strippingLoad(thread, engagement, into) }),
  };
}

function findRefusal(
  thread: Thread,
  { torque, into, propertyClass }: TorqueQuestion,
  figures: TorqueFigures,
): { because: TorqueRefusal; limit: NewtonMetre } | undefined {
  const strongest = newtonMetre(BEYOND_BREAKING * tighteningTorque(thread, '12.9', FRICTION.dry.coefficient));
  if (torque > strongest) return { because: 'no bolt of this thread', limit: strongest };
  const own = breakingTorque(thread, propertyClass, FRICTION.usual.coefficient);
  if (torque > own) return { because: 'no bolt of this class', limit: own };
  if (into === 'plastic insert') {
    const limit = tighteningTorque(thread, heldClass(propertyClass, into), FRICTION.dry.coefficient);
    return torque > limit ? { because: 'pulls the insert out', limit } : undefined;
  }
  // Dry, and the hole as strong as reckoned: past that it holds by luck only.
  const strips = torqueForLoad(thread, figures.strippingLoad, FRICTION.dry.coefficient);
  return torque > strips ? { because: 'strips the hole', limit: strips } : undefined;
}

function findDoubt(
  thread: Thread,
  { torque, into }: TorqueQuestion,
  figures: TorqueFigures,
  held: PropertyClass,
): { because: TorqueDoubt; limit: NewtonMetre } | undefined {
  const { classLimit, usual } = figures;
  if (torque > classLimit) return { because: 'above what this class takes', limit: classLimit };
  const holeLimit = tighteningTorque(thread, held, FRICTION.dry.coefficient);
  if (into === 'aluminium' && torque > holeLimit)
    return { because: 'above what a hole in aluminium usually takes', limit: holeLimit };
  if (into === 'plastic insert' && torque > usual.highest)
    return { because: 'above what an insert in plastic usually takes', limit: usual.highest };
  const weakest =
    figures.strippingLoad === undefined ? undefined : newton(figures.strippingLoad * (1 - STRIPPING_SCATTER));
  const strips = torqueForLoad(thread, weakest, FRICTION.oiled.coefficient);
  if (torque > strips) return { because: 'may strip the hole', limit: strips };
  const hardly = newtonMetre(HARDLY_CLAMPED * usual.highest);
  return torque < hardly ? { because: 'far below the usual', limit: hardly } : undefined;
}

/** Class that the hole lets a bolt act as. */
function heldClass(propertyClass: PropertyClass, into: HoleMaterial): PropertyClass {
  const weakHole = into === 'aluminium' || into === 'plastic insert';
  return weakHole && propertyClass !== '5.8' ? '8.8' : propertyClass;
}

function usualTorque(
  thread: Thread,
  propertyClass: PropertyClass,
  into: HoleMaterial,
): TorqueFigures['usual'] {
  const most = tighteningTorque(thread, heldClass(propertyClass, into), FRICTION.usual.coefficient);
  const [lowest, highest] = USUAL_SHARE[into === 'plastic insert' ? into : 'metal'];
  return { lowest: newtonMetre(lowest * most), highest: newtonMetre(highest * most) };
}

function isUsual(name: string, { torque, propertyClass, into }: TorqueQuestion): boolean {
  const thread = parseThread(name);
  if (!thread) return false;
  const { lowest, highest } = usualTorque(thread, propertyClass, into);
  return torque >= lowest && torque <= highest;
}

function unitsThatFit(torque: NewtonMetre, { usual }: TorqueFigures): readonly TorqueUnit[] {
  const units = Object.keys(TORQUE_UNITS) as TorqueUnit[];
  return units.filter((unit) => {
    const read = torque * TORQUE_UNITS[unit];
    return read >= usual.lowest && read <= usual.highest;
  });
}

/** Torque that brings a load at a friction; no limit where there is no load to reach. */
function torqueForLoad(thread: Thread, load: Newton | undefined, friction: number): NewtonMetre {
  if (load === undefined) return Number.POSITIVE_INFINITY as NewtonMetre;
  return newtonMetre(load / clampLoad(thread, newtonMetre(1), friction));
}

/** Materials a hole may be of. */
export const HOLE_MATERIALS: readonly HoleMaterial[] = [
  ...(Object.keys(SHEAR_STRENGTH) as TappedMetal[]),
  'plastic insert',
];
