import type { Fault, Finding } from './finding.ts';
import { Places } from './place.ts';
import type { FileRule, RecordRule, Rule, ShelfRule, TextRule } from './rule.ts';
import { MOST_FINDINGS } from './size-limits.ts';
import type { SourceFile } from './source-file.ts';

/** Runs rules and turns their faults into findings. */
export class RuleRun {
  readonly files: ReadonlyMap<string, SourceFile>;
  readonly findings: Finding[] = [];
  /** Files with an error. */
  readonly faulty = new Set<string>();
  private readonly rules: readonly Rule[];
  private readonly places: Places;

  constructor(files: ReadonlyMap<string, SourceFile>, rules: readonly Rule[]) {
    this.files = files;
    this.rules = rules;
    this.places = new Places(files);
  }

  rulesOn(stage: 'file'): FileRule[];
  rulesOn(stage: 'text'): TextRule[];
  rulesOn(stage: 'record'): RecordRule[];
  rulesOn(stage: 'shelf'): ShelfRule[];
  rulesOn(stage: Rule['on']): Rule[] {
    return this.rules.filter((rule) => rule.on === stage);
  }

  /** @returns how many faults the rule found */
  apply(rule: Rule, check: () => Fault[], file: string): number {
    let faults: Fault[];
    try {
      faults = check();
    } catch (error) {
      this.findings.push({
        rule: 'rule-broke',
        level: 'error',
        place: this.places.placeOf({ file, start: 0, end: 0 }),
        found: `The rule "${rule.id}" broke down here and has checked nothing: ${String(error)}.`,
        byHand: `mend src/library/rules/${rule.id}.ts; the record may be right`,
      });
      return 1;
    }
    const told = new Map<string, number>();
    for (const fault of faults) {
      const { file: where } = fault.at;
      if (rule.level === 'error') this.faulty.add(where);
      const count = (told.get(where) ?? 0) + 1;
      told.set(where, count);
      // Finding the place of each costs a way through the record: thousands of the same say no more than fifty.
      if (count <= MOST_FINDINGS) this.findings.push(this.finding(rule, fault));
    }
    for (const [where, count] of told)
      if (count > MOST_FINDINGS) this.findings.push(this.more(rule, where, count - MOST_FINDINGS));
    return faults.length;
  }

  private more({ id, level }: Rule, file: string, left: number): Finding {
    return {
      rule: id,
      level,
      place: this.places.placeOf({ file, start: 0, end: 0 }),
      found: `${left} more of "${id}" in this file are not shown.`,
      byHand: `mend the ${MOST_FINDINGS} that are, and check again`,
    };
  }

  private finding(rule: Rule, { at, found, expected, byHand, replaceBy, edits }: Fault): Finding {
    // A name mended to one that is there already would only be the next fault.
    const can = replaceBy !== undefined && !this.places.hasBeside(at, replaceBy);
    const mend = edits ?? (can ? [{ ...this.places.spanOf(at), text: replaceBy }] : undefined);
    return {
      rule: rule.id,
      level: rule.level,
      place: this.places.placeOf(at),
      found,
      ...(expected !== undefined && { expected }),
      ...(byHand !== undefined && { byHand }),
      ...(mend && { mend }),
    };
  }
}
