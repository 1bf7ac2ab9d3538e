/**
 * Words that people write for the words of a record: the trade's other names, and those of another country. A word stands
 * here only where it can mean one thing in the list that a field takes. Common practice, no source.
 */
const ALIASES: Readonly<Record<string, readonly string[]>> = {
  'header tank': [
    'expansion tank',
    'header',
    'degas bottle',
    'surge tank',
    'pressurised tank',
    'pressurized tank',
  ],
  'recovery bottle': ['overflow bottle', 'overflow tank', 'recovery tank', 'catch bottle', 'catch tank'],
  petrol: ['gasoline'],
  'petrol hybrid': ['gasoline hybrid', 'hybrid petrol'],
  'plain wax': ['wax', 'conventional', 'ordinary wax'],
  'by-pass closing': ['bypass closing', 'double acting', 'two plates'],
  'map-controlled': ['map controlled', 'heated', 'electrically heated'],
  aluminium: ['alloy', 'aluminum', 'alu', 'light alloy'],
  'cast iron': ['iron', 'grey iron', 'gray iron'],
  manual: ['workshop manual', 'service manual', 'handbook'],
  'plate on the vehicle': ['plate', 'label', 'sticker', 'stamp'],
  'measured here': ['measured', 'own measurement'],
  'parts list': ['parts catalogue', 'parts catalog'],
  'read off the source': ['read off', 'read from the source'],
  'measured once': ['once'],
  'measured twice': ['twice'],
  'second hand': ['hearsay', 'told'],
  'battery electric': ['ev', 'bev', 'full electric'],
  combustion: ['combustion engine', 'ice'],
  saloon: ['sedan'],
  estate: ['wagon', 'station wagon'],
  'off-roader': ['suv', '4x4', 'off road'],
  coupé: ['coupe'],
  pickup: ['pick up', 'pick-up'],
  'viscous clutch': ['viscous', 'viscous fan', 'fan clutch'],
  'engine controller': ['ecu', 'ecm', 'engine computer', 'control unit'],
  'switch in the radiator': ['radiator switch', 'thermoswitch', 'thermo switch', 'thermal switch'],
  'accessory belt': ['drive belt', 'serpentine belt', 'fan belt', 'v belt', 'ribbed belt', 'auxiliary belt'],
  'timing belt': ['cam belt', 'cambelt', 'toothed belt'],
  'valve-controlled': ['tap', 'heater tap', 'water valve', 'heater valve'],
  'always flowing': ['no valve', 'air mix', 'blend flap'],
  'in the radiator': ['radiator'],
};

const TARGETS = new Map<string, string[]>();
for (const [word, others] of Object.entries(ALIASES))
  for (const other of others) TARGETS.set(loosely(other), [...(TARGETS.get(loosely(other)) ?? []), word]);

/** Case, accents, and whether parts are joined by a hyphen, say nothing. */
function loosely(word: string): string {
  return word
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ')
    .trim();
}

/**
 * The word of a list that is meant by another spelling or name of it; undefined where none is, where the list has the word
 * as it stands, or where two could be meant.
 */
export function wordMeant(written: string, words: readonly string[]): string | undefined {
  if (words.includes(written)) return undefined;
  const loose = loosely(written);
  const same = words.filter((word) => loosely(word) === loose);
  const meant = same.length > 0 ? same : (TARGETS.get(loose) ?? []).filter((word) => words.includes(word));
  return meant.length === 1 ? meant[0] : undefined;
}
