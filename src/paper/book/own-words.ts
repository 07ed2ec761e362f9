import type { OwnSentence, SentenceReader } from '#golf/player/own-sentence.ts'
import { rulerOf } from '../draw/ruler.ts'
import { type Advice, partWords } from './advice.ts'
import type { BookFacts } from './book-facts.ts'
import { proposedJunior } from './junior-advice.ts'
import type { BookHole } from './planned-hole.ts'
import { proposedAdvice } from './stroke-advice.ts'

/** What the plan proposes for a hole on the card of a reader. */
export function proposedFor(reader: SentenceReader, one: BookHole, facts: BookFacts): Advice {
  return reader === 'junior' ? proposedJunior(one) : proposedAdvice(one, facts)
}

/** What stands on the page: what a person wrote, and what the plan proposes where nobody wrote anything. */
export function adviceOf(reader: SentenceReader, one: BookHole, facts: BookFacts): Advice {
  const own = ownSentences(facts, reader).filter(({ hole }) => hole === one.hole.ref)
  const proposed = proposedFor(reader, one, facts)
  const written = Object.fromEntries(own.map(({ part, words }) => [part, words]))
  const club = own.find(({ part }) => part === 'stroke')?.club ?? proposed.club
  return { ...proposed, ...written, club }
}

/** The sentences that a person wrote for these holes and this reader. */
export function ownSentences(
  { player, course, holes }: BookFacts,
  reader: SentenceReader,
): readonly OwnSentence[] {
  const refs = new Set(holes.map(({ hole }) => hole.ref))
  return (player.sentences ?? []).filter(
    (sentence) => sentence.course === course && sentence.reader === reader && refs.has(sentence.hole),
  )
}

/** A sentence under which something has changed since it was written. */
export interface ChangedSentence {
  readonly sentence: OwnSentence
  /** What the plan proposes now, in the units of the page. */
  readonly proposed: string
  /** The plan has changed, or only the page speaks other units than the sentence. */
  readonly why: 'plan' | 'units'
}

/** The sentences to be looked at again; a hole that is not planned yet says nothing of its own. */
export function changedSentences(facts: BookFacts, reader: SentenceReader): ChangedSentence[] {
  return ownSentences(facts, reader).flatMap((sentence): ChangedSentence[] => {
    const one = facts.holes.find(({ hole }) => hole.ref === sentence.hole)
    if (one === undefined || (one.plan === null && one.missing === '')) return []
    const isSame = wordsUnder(sentence, one, facts) === sentence.under
    if (isSame && sentence.units === facts.ruler.word) return []
    const proposed = partWords(proposedFor(reader, one, facts), sentence.part)
    return [{ sentence, proposed, why: isSame ? 'units' : 'plan' }]
  })
}

/** What the plan proposes at the place of a sentence, as a sentence remembers it: for practice, in its own units. */
export function wordsUnder(
  { reader, part, units }: Pick<OwnSentence, 'reader' | 'part' | 'units'>,
  one: BookHole,
  facts: BookFacts,
): string {
  const asWritten: BookFacts = { ...facts, purpose: 'practice', ruler: rulerOf(units) }
  return partWords(proposedFor(reader, one, asWritten), part)
}
