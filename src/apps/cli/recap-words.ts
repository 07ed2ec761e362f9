import { clubWords } from '#golf/player/club-words.ts'
import type { StrokeSplit, Unsplit } from '#golf/round/recap.ts'
import type { RoundRecap, StrokeOfHole } from '#golf/round/recap-round.ts'
import { metresToFeet } from '#numbers/units/units.ts'
import { costText } from './plan-words.ts'
import { lengthText, type ReaderUnits } from './units-of-the-reader.ts'

/** `hole 7, stroke 1 from the tee: driver, the plan was 5-wood: +0.18`. */
export function costlyText({ hole, stroke }: StrokeOfHole, units: ReaderUnits): string {
  const { club, plan } = stroke
  const instead =
    plan === null || plan === club
      ? 'the plan is the same club on another line'
      : `the plan is the ${clubWords(plan)}`
  return `hole ${hole}, ${strokeText(stroke, units)}: ${costText(stroke.decision)}; ${instead}`
}

/** `hole 4, stroke 5, putter from 12 ft, holed: −0.81, luck −0.45 of it`. */
export function bestText({ hole, stroke }: StrokeOfHole, units: ReaderUnits): string {
  const luck = stroke.unsplit.includes('luck') ? '' : `, ${costText(stroke.luck)} of it luck`
  const cost = stroke.decision >= 0.005 ? `; the choice itself cost ${stroke.decision.toFixed(2)}` : ''
  return `hole ${hole}, ${strokeText(stroke, units)}: ${costText(stroke.execution + stroke.luck)}${luck}${cost}`
}

function strokeText(stroke: StrokeSplit, units: ReaderUnits): string {
  const { number, count, club, from, to } = stroke
  const which = count === 1 ? `stroke ${number}` : `strokes ${number} to ${number + count - 1}`
  const what = club === null ? 'a club not logged' : clubWords(club)
  const metres = Math.hypot(from.point[0], from.point[1])
  const place = from.lie === 'tee' && metres < 1 ? 'from the tee' : `from the ${lieWords(from.lie)}`
  return `${which}, ${what} ${place}${to === null ? ', holed' : ''}${puttLength(stroke, units)}`
}

function puttLength({ from, pinMetres }: StrokeSplit, units: ReaderUnits): string {
  if (from.lie !== 'green') return ''
  return units === 'yards'
    ? `, ${Math.round(metresToFeet(pinMetres))} ft`
    : `, ${lengthText(pinMetres, units)}`
}

function lieWords(lie: string): string {
  return lie.replace('-', ' ').replace('bunker', 'sand').replace('heavy', 'heavy grass')
}

const LACKING: Readonly<Record<Unsplit, (count: string) => string>> = {
  club: (count) =>
    `${count}: what was chosen is not logged or not in the player’s bag there, so the choice stays in how it was struck`,
  line: (count) => `${count}: the line is not logged, so the club is judged on its best line`,
  places: (count) => `${count}: where the ball lay in between is not logged, so these strokes are one`,
  luck: (count) =>
    `${count}: how the ball was struck cannot be told from the log, so luck stays in how it was struck`,
}

/** What the log lacks, with how many strokes lack it. */
export function unsplitLines({ unsplit }: RoundRecap): string[] {
  return (Object.keys(LACKING) as Unsplit[]).flatMap((what) => {
    const count = unsplit[what]
    return count === 0 ? [] : [LACKING[what](`${count} ${count === 1 ? 'stroke' : 'strokes'}`)]
  })
}
