/** Questions, answers and causes of a walk in words. */
import { causeOfRecheck, NOT_IT, PROVEN } from '../../../model/recheck.ts';
import { OTHER, SKIPPED } from '../answers.ts';
import type { WalkData, WalkTexts } from '../walk-data.ts';

/** Questions, answers and causes of a walk in words. */
export class WalkWords {
  private readonly causes: WalkData['causes'];
  private readonly texts: Pick<WalkTexts, 'layout' | 'outcomes' | 'questions' | 'tests'>;
  private readonly say: (text: string) => string;

  /** @param say writes the vehicle's figures into a text */
  constructor(
    causes: WalkData['causes'],
    texts: Pick<WalkTexts, 'layout' | 'outcomes' | 'questions' | 'tests'>,
    say: (text: string) => string,
  ) {
    this.causes = causes;
    this.texts = texts;
    this.say = say;
  }

  /** What the answer of this key answers. */
  asked(key: string): string {
    if (key.startsWith('layout.')) return this.texts.layout[key.slice('layout.'.length)] ?? key;
    const cause = causeOfRecheck(key);
    if (cause !== undefined) return `Proof before a part is bought: ${this.cause(cause)}`;
    return this.say(this.texts.questions[key] ?? key);
  }

  answer(key: string, value: string): string {
    if (value === SKIPPED) return 'Can’t test that now';
    if (value === OTHER) return 'Something else was seen';
    if (causeOfRecheck(key) !== undefined && value === PROVEN) return 'It shows this';
    if (causeOfRecheck(key) !== undefined && value === NOT_IT) return 'It does not';
    // As its row has it.
    if (key.startsWith('layout.')) return value.charAt(0).toUpperCase() + value.slice(1);
    return this.say(this.texts.outcomes[key]?.[value] ?? value);
  }

  cause(id: string): string {
    return this.causes[id] ?? id;
  }

  test(id: string): string {
    return this.texts.tests[id] ?? id;
  }
}
