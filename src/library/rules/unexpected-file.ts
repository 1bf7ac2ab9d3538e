import { KIND_NAMES, KINDS } from '../../model/kinds.ts';
import { nearestOf } from '../nearest.ts';
import type { FileRule } from '../rule.ts';

export const unexpectedFile: FileRule = {
  id: 'unexpected-file',
  level: 'error',
  on: 'file',
  ends: true,
  check: ({ file, path, role }) => {
    if (role.is !== 'unexpected') return [];
    const [folder = '', ...rest] = path.split('/');
    const nearest = rest.length > 0 && !FOLDERS.includes(folder) ? nearestOf(folder, FOLDERS) : undefined;
    return [
      {
        at: { file, start: 0, end: 0 },
        found: 'Nothing on the shelf belongs here.',
        expected: nearest
          ? `Nearest folder: "${nearest.word}".`
          : folder === 'notes'
            ? 'A note is notes/<year>/<id>.yaml.'
            : 'A record is <folder of its kind>/<id>.yaml, a guide guides/<id>.mdx.',
        byHand: 'move the file, or delete it',
      },
    ];
  },
};

const FOLDERS: string[] = [...KIND_NAMES.map((kind) => KINDS[kind].folder), 'guides'];
