/** Questions, answers and causes of a walk in words. */
import { NOT_IT, PROVEN, SKIPPED } from '../answers.ts';
import type { WalkData } from '../walk-data.ts';
import type { TrailEntry } from './replay.ts';

/** Questions, answers and causes of a walk in words. */
export class WalkWords {
  private readonly titles: WalkData['titles'];
  private readonly say: (text: string) => string;

  /** @param say writes the vehicle's figures into a text */
  constructor(titles: WalkData['titles'], say: (text: string) => string) {
    this.titles = titles;
    this.say = say;
  }

  /** What the answer of this key answers. */
  asked(key: string): string {
    if (key.startsWith('layout.')) return this.titles.layout[key.slice('layout.'.length)] ?? key;
    if (key.startsWith('prove.')) return `Is it this: ${this.cause(key.slice('prove.'.length))}?`;
    return this.say(this.titles.questions[key] ?? key);
  }

  answer(key: string, value: string): string {
    if (value === SKIPPED) return 'Can’t test that now';
    if (value === PROVEN) return 'Proven';
    if (value === NOT_IT) return 'Not this';
    // As its row has it.
    if (key.startsWith('layout.')) return value.charAt(0).toUpperCase() + value.slice(1);
    return this.say(this.titles.outcomes[key]?.[value] ?? value);
  }

  /** What an answer says of the cause that was to be proven; undefined where the answer itself says it. */
  conclusion({ key, proves }: Pick<TrailEntry, 'key' | 'proves'>): string | undefined {
    if (!proves || proves.verdict === SKIPPED || key.startsWith('prove.')) return undefined;
    return `${this.cause(proves.cause)}: ${proves.verdict === PROVEN ? 'proven' : 'not this'}`;
  }

  cause(id: string): string {
    return this.titles.causes[id] ?? id;
  }

  test(id: string): string {
    return this.titles.tests[id] ?? id;
  }
}
