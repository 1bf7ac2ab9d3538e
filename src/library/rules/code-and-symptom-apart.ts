import type { Fault } from '../finding.ts';
import { listed } from '../nearest.ts';
import type { ShelfRule } from '../rule.ts';

/**
 * A code and the symptoms it leads to name each other, and each cause of a code is one that the walk of some of its symptoms can
 * find: a code that points at a cause which no walk behind it knows leads astray.
 */
export const codeAndSymptomApart: ShelfRule = {
  id: 'code-and-symptom-apart',
  level: 'error',
  on: 'shelf',
  check: ({ records }) => {
    const faults: Fault[] = [];
    for (const { id, file, data } of records.symptom.values())
      for (const [at, code] of data.codes.entries()) {
        const leads = records.code.get(code);
        if (!leads || leads.data.symptoms.includes(id)) continue;
        faults.push({
          at: { file, path: ['codes', at] },
          found: `The code "${code}" does not lead to this symptom.`,
          byHand: `add "${id}" to the symptoms in ${leads.file}, or take the code off this list`,
        });
      }
    for (const { id, file, data } of records.code.values()) {
      const symptoms = data.symptoms.flatMap((symptom) => records.symptom.get(symptom) ?? []);
      for (const [at, symptom] of data.symptoms.entries()) {
        const entry = records.symptom.get(symptom);
        if (!entry || entry.data.codes.includes(id)) continue;
        faults.push({
          at: { file, path: ['symptoms', at] },
          found: `The symptom "${symptom}" does not list this code.`,
          byHand: `add "${id}" to the codes in ${entry.file}, or take the symptom off this list`,
        });
      }
      for (const [at, cause] of data.causes.entries()) {
        if (symptoms.length === 0 || symptoms.some((symptom) => Object.hasOwn(symptom.data.causes, cause)))
          continue;
        faults.push({
          at: { file, path: ['causes', at] },
          found: `None of the symptoms that this code leads to lists the cause "${cause}".`,
          expected: `It leads to ${listed(symptoms.map((symptom) => symptom.id))}.`,
          byHand:
            'add the symptom whose walk finds it, add the cause to one of these, or take it off this list',
        });
      }
    }
    return faults;
  },
};
