import pc from 'picocolors'
import { FOURSOME_BASIS, foursomeTable } from '#golf/round/foursome-table.ts'
import { splitWords } from '#golf/strategy/foursome-words.ts'
import type { Foursome } from './foursomes-command.ts'
import type { Machine } from './machine.ts'
import { wordTableLines } from './table.ts'
import { lengthNumber, type ReaderUnits } from './units-of-the-reader.ts'

/** The pair's round as a page of plain words: who takes which tees, then a line a hole. */
export function foursomesPage(
  { course, names, holes, split }: Foursome,
  units: ReaderUnits,
  machine: Machine,
): string[] {
  const colours = pc.createColors(machine.hasColour)
  const refs = holes.map(({ ref }) => ref)
  const length = {
    sign: units === 'yards' ? 'yd' : 'm',
    figure: (metres: number) => lengthNumber(metres, units),
  }
  return [
    colours.bold(`Foursomes · ${course.name}`),
    `${names.join(' and ')}, one ball by turns`,
    '',
    ...splitWords(names, refs, split),
    '',
    ...wordTableLines(foursomeTable(holes, names, split, length)),
    '',
    FOURSOME_BASIS,
  ]
}
