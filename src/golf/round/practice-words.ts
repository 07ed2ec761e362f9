import { capital } from '#golf/strategy/capital.ts'
import type { PracticePart } from './improved-player.ts'
import type { PracticeItem } from './practice.ts'

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
export function itemWords(item: PracticeItem, hours: number): string {
  const saved = Math.max(0.05, Math.round(item.strokesAnHour * hours * 20) / 20)
  const span = hours === 1 ? 'an hour' : `${hours} hours`
  return `${capital(PART_WORDS[item.part])}: ${span} of it are worth about ${saved.toFixed(2)} of a stroke a round here.`
}
