/** Questions, answers and causes of a walk in words. */
import { NOT_IT, PROVEN, SKIPPED } from './answers.ts';
import type { WalkData } from './walk-data.ts';

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
    if (key.startsWith('prove.')) return this.cause(key.slice('prove.'.length));
    return this.say(this.titles.questions[key] ?? key);
  }

  answer(key: string, value: string): string {
    if (value === SKIPPED) return 'can’t test that now';
    if (value === PROVEN) return 'proven';
    if (value === NOT_IT) return 'not this';
    return this.say(this.titles.outcomes[key]?.[value] ?? value);
  }

  cause(id: string): string {
    return this.titles.causes[id] ?? id;
  }

  test(id: string): string {
    return this.titles.tests[id] ?? id;
  }
}
