/** Gathers what the search needs to answer with complaints, from the shelf. */
import { CALCULATORS } from '../../../calculators/catalogue.ts';
import { knowledgeOf } from '../../../library/recognition.ts';
import { KINDS, type Kind } from '../../../model/kinds.ts';
import { pack } from '../../../recogniser/packed.ts';
import { guides } from '../../guides/guides.ts';
import { entriesOf, hrefOf, titleOf } from '../../shelf/record-pages.ts';
import { shelf } from '../../shelf/shelf.ts';
import { bookingFor, commonestCase } from '../../walk/build/booking.ts';
import type { ComplaintData, PageLink } from '../complaint-data.ts';

/** Kinds whose names are words of the trade. A vehicle or a note is found by its text. */
const NAMED: readonly Kind[] = ['code', 'cause', 'test', 'procedure', 'tool', 'coolant', 'caution'];

/** The shelf's complaints, what the recogniser has learnt of them, and the names that are looked for whole. */
export function makeComplaintData(): ComplaintData {
  const symptoms = entriesOf('symptom');
  return {
    knowledge: pack(knowledgeOf(shelf), shelf.words.groups),
    cards: Object.fromEntries(
      symptoms.map(({ id, data }) => [
        id,
        {
          title: data.title,
          drive: data.drive.may,
          minutes: Math.round(bookingFor(commonestCase(id)).nineInTen),
        },
      ]),
    ),
    questions: symptoms.flatMap(({ id, data }) =>
      Object.entries(data['told-apart'] ?? {}).map(([other, { ask, here, there }]) => ({
        ask,
        answers: [
          { text: here, means: id },
          { text: there, means: other },
        ],
      })),
    ),
    pages: [...recordPages(), ...guidePages(), ...calculatorPages()],
    guides: Object.entries(shelf.words.guides ?? {}).map(([id, phrases]) => ({
      address: guideAddress(id),
      phrases,
    })),
  };
}

function recordPages(): PageLink[] {
  return NAMED.flatMap((kind) =>
    entriesOf(kind).map(({ id }) => ({
      kind: KINDS[kind].one,
      title: titleOf(kind, id),
      address: hrefOf(kind, id).slice(1),
    })),
  );
}

function guidePages(): PageLink[] {
  return guides.map(({ id, title }) => ({ kind: 'guide', title, address: guideAddress(id) }));
}

function guideAddress(id: string): string {
  return `guides/${id}.html`;
}

function calculatorPages(): PageLink[] {
  return CALCULATORS.map(({ id, title }) => ({
    kind: 'calculator',
    title,
    address: `calculators/${id}.html`,
  }));
}
