/** Frequency words in records; the numbers behind them stand in one table, src/diagnosis/words.ts. */
import { z } from 'zod';
import { LIKELIHOOD_WORDS, type LikelihoodWord, PRIOR_WORDS, type PriorWord } from '../diagnosis/words.ts';

const priorWords = Object.keys(PRIOR_WORDS) as [PriorWord, ...PriorWord[]];
const likelihoodWords = Object.keys(LIKELIHOOD_WORDS) as [LikelihoodWord, ...LikelihoodWord[]];

/** How often something is met beside others of its like, the commonest first. */
export const priorWordSchema = z.enum(priorWords);

/** How often a cause is behind a symptom: a word, or a weight. */
export const priorSchema = z.union([priorWordSchema, z.number().positive().max(1000)]);

/** How often an outcome is seen under a cause: a word, or a probability. */
export const likelihoodSchema = z.union([z.enum(likelihoodWords), z.number().min(0).max(1)]);
