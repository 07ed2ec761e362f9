import { clubWords } from '#golf/player/club-words.ts'
import type { Club, Player } from '#golf/player/player.ts'
import { clubPattern } from '#golf/strategy/bag-patterns.ts'
import { drawRange } from '#paper/draw/draw-range.ts'
import type { Sheet } from '#paper/draw/sheet.ts'
import type { Reader } from '../desk/desk.ts'
import { length } from '../words.ts'
import type { ShotChoice } from './shot-choices.tsx'
import { lieNamed } from './shot-words.ts'
import type { TapGround } from './tap-chart.tsx'

/** How far the chosen club usually goes, to where it is measured, metres. */
export function usualLength(club: Club, { to }: Pick<ShotChoice, 'to'>): number {
  return to === 'carry' ? club.carryMetres : club.totalMetres
}

/** Draws the range under the shots: rules, scales, and the club's present pattern from the lie with what it rests on. */
export function drawRangeGround(
  sheet: Sheet,
  player: Player,
  club: Club,
  choice: ShotChoice,
  reader: Reader,
): TapGround {
  const pattern = clubPattern(player, club.name, lieNamed(choice.lie), choice.to === 'total')
  const words = clubWords(club.name)
  const goes = `${choice.to} ${length(usualLength(club, choice), reader)}`
  const basis = `${goes}, ${basisWords(club)}`
  return {
    title: `A range for the ${words}`,
    description: `Seen from above, to scale: the lines inside which half and nine in ten of ${player.name}’s balls are expected now; ${basis}.`,
    below: drawRange(sheet, {
      units: reader.units,
      club: words,
      basis,
      pattern: pattern === null ? null : { ...pattern, club: club.name },
    }),
    above: [],
  }
}

/** What a club's pattern rests on. */
function basisWords({ shots, isGuess }: Club): string {
  if (shots > 0) return `from ${shots} shot${shots === 1 ? '' : 's'}`
  return isGuess ? 'a guess' : 'the carry known, the spread a guess'
}
