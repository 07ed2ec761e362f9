import type { SentencePart } from '#golf/player/own-sentence.ts'

/** What a page says of a hole: the club large, then start line and safe side (`stroke`), what comes next, what never to do. Empty words are left out. */
export type Advice = Readonly<Record<SentencePart, string>> & { readonly club: string }

/** Its sentences one after the other. */
export function adviceWords({ stroke, next, never }: Advice): string {
  return [stroke, next, never]
    .filter((words) => words !== '')
    .map((words, index, all) => (index < all.length - 1 && !/[.!?:;,…]$/.test(words) ? `${words}.` : words))
    .join(' ')
}

/** One part of it as a person reads it: the stroke with its club. */
export function partWords(advice: Advice, part: SentencePart): string {
  return part === 'stroke' && advice.club !== '' ? `${advice.club}: ${advice.stroke}` : advice[part]
}
