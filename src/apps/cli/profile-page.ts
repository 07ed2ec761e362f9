import { clubWords } from '#golf/player/club-words.ts'
import type { SureClub, SureNumber } from '#golf/player/how-sure.ts'
import type { SureNearGreen } from '#golf/player/how-sure-near-green.ts'
import type { Player } from '#golf/player/player.ts'
import { profileWords } from '#golf/player/profile-words.ts'
import { type Column, tableLines } from './table.ts'
import { lengthNumber, type ReaderUnits } from './units-of-the-reader.ts'

/** A new profile for a person: what was made of the answers, how sure each club is, and what ten shots would change. */
export function profilePage(
  player: Player,
  clubs: readonly SureClub[],
  nearGreen: SureNearGreen,
  units: ReaderUnits,
): string[] {
  const unit = units === 'yards' ? 'yd' : 'm'
  const columns: Column[] = [
    { heading: 'club' },
    { heading: `carry ${unit}`, isFigure: true },
    { heading: 'eight in ten', isFigure: true },
    { heading: 'ten shots', isFigure: true },
    { heading: 'known' },
    { heading: `sideways ± ${unit}`, isFigure: true },
    { heading: 'eight in ten', isFigure: true },
    { heading: 'ten shots', isFigure: true },
    { heading: 'mishits %', isFigure: true },
    { heading: 'eight in ten', isFigure: true },
    { heading: 'ten shots', isFigure: true },
  ]
  const length = (metres: number): string => lengthNumber(metres, units)
  const percent = (share: number): string => String(Math.round(100 * share))
  const between = ({ low, high }: SureNumber['then'], words: (value: number) => string): string =>
    `${words(low)} to ${words(high)}`
  const rows = clubs.map(({ name, carryMetres, spreadMetres, mishitShare }) => [
    clubWords(name),
    length(carryMetres.value),
    between(carryMetres, length),
    between(carryMetres.then, length),
    carryMetres.isGuess ? 'guess' : 'said',
    length(spreadMetres.value),
    between(spreadMetres, length),
    between(spreadMetres.then, length),
    percent(mishitShare.value),
    between(mishitShare, percent),
    between(mishitShare.then, percent),
  ])
  return [
    ...profileWords(player, clubs, nearGreen, units).flatMap((paragraph) => [paragraph, '']),
    ...tableLines(columns, rows),
    '',
    'Eight in ten: where the number lies for eight in ten such players. Ten shots: the same after ten measured shots with the club.',
  ]
}
