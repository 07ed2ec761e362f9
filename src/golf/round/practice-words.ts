import { capital } from '#golf/strategy/capital.ts'
import type { PracticePart } from './improved-player.ts'
import type { Practice, PracticeItem } from './practice.ts'
import type { PracticeNotes } from './practice-notes.ts'

/** What practice is worth, with what is told beside it. */
export interface ToldPractice {
  readonly practice: Practice
  readonly notes: PracticeNotes
  readonly hours: number
  readonly weeks: number
  /** Of the re-test, `2027-01-06`; `null` when no first day was given. */
  readonly retest: string | null
}

const PART_WORDS: Readonly<Record<PracticePart, string>> = {
  'long-direction': 'direction with driver, woods and hybrids',
  'iron-direction': 'direction with irons and wedges',
  'iron-distance': 'distance with irons and wedges',
  mishits: 'solid contact',
  'short-game': 'chips, pitches and sand',
  'putting-line': 'the start line of putts',
  'putting-pace': 'the pace of putts',
}

/** What tells whether it got better: the same for everybody, so that two dates can be compared. */
const RETEST_WORDS: Readonly<Record<PracticePart, string>> = {
  'long-direction': 'twenty marked finishes with the driver and twenty with a wood or hybrid',
  'iron-direction': 'twenty marked finishes with each of two irons',
  'iron-distance': 'twenty marked finishes with each of two irons, carry written down',
  mishits: 'forty full shots, each written down as solid or mishit',
  'short-game': 'the short-game stations of the test day',
  'putting-line': 'the putting stations of the test day',
  'putting-pace': 'the putting stations of the test day',
}

/** A part of the profile in words. */
export function practiceWords(part: PracticePart): string {
  return PART_WORDS[part]
}

/** How it is tested whether a part got better. */
export function retestWords(part: PracticePart): string {
  return RETEST_WORDS[part]
}

/** What so many hours of one part are worth on the course: `Ten hours on …: about 0.25 of a stroke a round.` */
function itemWords(item: PracticeItem, hours: number): string {
  const saved = Math.max(0.05, Math.round(item.strokesAnHour * hours * 20) / 20)
  const span = hours === 1 ? 'an hour' : `${hours} hours`
  return `${capital(PART_WORDS[item.part])}: ${span} of it are worth about ${saved.toFixed(2)} of a stroke a round here.`
}

/** One thing to practise, three sentences: what it is worth, the drill, when and how it is seen whether it helped. */
export function itemSentences({ notes, hours, weeks, retest }: ToldPractice, item: PracticeItem): string[] {
  const when = retest === null ? `in ${weeks} ${weeks === 1 ? 'week' : 'weeks'}` : `on ${retest}`
  return [
    itemWords(item, hours),
    notes.drills[item.part] ?? 'Drill: the professional’s own.',
    `Re-test ${when}: ${RETEST_WORDS[item.part]}.`,
  ]
}

/** Where no part brings enough. */
export const NOTHING_TO_PRACTISE =
  'No part of the game brings enough for an hour of practice to be worth saying.'

/** What the figures are, and are not. */
export const PRACTICE_BASIS: readonly string[] = [
  'How much an hour helps is an assumption, not a measurement: put your own experience in its place.',
  'Each figure is what the expected score of the plan on these holes loses when that part alone gets better.',
]
