import type { RoundsRead } from './read-rounds.ts'
import { UNLEARNED, type Unlearned } from './shots-of-hole.ts'

/** What was taken from rounds and what was not. */
export function readRoundsWords({
  rounds,
  shots,
  putts,
  strokes,
  withoutLine,
  unused,
  withoutDay,
}: RoundsRead): string[] {
  const count = rounds === 1 ? 'One round' : `${rounds} rounds`
  const left = UNLEARNED.filter((why) => unused[why] > 0).map(
    (why) => `${unused[why]} ${UNLEARNED_WORDS[why]}`,
  )
  return [
    `${count}: ${shots.length} full shots${withoutLine === 0 ? '' : `, ${withoutLine} of them without a line, which say how far and not how straight`}; putts from ${putts.length} places, ${strokes.length} ${strokes.length === 1 ? 'stroke' : 'strokes'} near the green.`,
    ...(left.length === 0 ? [] : [`Strokes not learned from: ${left.join(', ')}.`]),
    ...(withoutDay === 0
      ? []
      : [`Without the day of their date, and taken for played on a calm, normal day: ${withoutDay}.`]),
  ]
}

const UNLEARNED_WORDS: Readonly<Record<Unlearned, string>> = {
  length: 'putts without a length',
  fringe: 'from the fringe, where a putt may be as good as a chip',
  'near-green': 'near the green of which nobody wrote how far they stopped',
  places: 'between places that were not logged',
  club: 'without a club of the bag',
  swing: 'that may have been no full swing',
  line: 'that came to grief without a line',
  unlike: 'that end where no strike of the club does',
}
