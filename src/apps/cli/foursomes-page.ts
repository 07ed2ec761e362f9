import pc from 'picocolors'
import { splitWords } from '#golf/strategy/foursome-words.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { teeingOff } from '#golf/strategy/split-tees.ts'
import type { Foursome } from './foursomes-command.ts'
import type { Machine } from './machine.ts'
import { tableLines } from './table.ts'
import { lengthNumber, type ReaderUnits } from './units-of-the-reader.ts'

/** The pair's round as a page of plain words: who takes which tees, then a line a hole. */
export function foursomesPage(
  { course, names, holes, split }: Foursome,
  units: ReaderUnits,
  machine: Machine,
): string[] {
  const colours = pc.createColors(machine.hasColour)
  const rows = holes.map(({ hole, turns }, index) => [
    hole.ref,
    String(hole.par),
    lengthNumber(hole.lengthMetres, units),
    names[teeingOff(split.odd, index)],
    ...turns.flatMap(({ strokes, best }) => [strokes.toFixed(2), clubWords(best.shot)]),
    split.hasSay[index] ? savedText(split.saves[index] ?? 0) : '',
  ])
  return [
    colours.bold(`Foursomes · ${course.name}`),
    `${names.join(' and ')}, one ball by turns`,
    '',
    ...splitWords(
      names,
      holes.map(({ ref }) => ref),
      split,
    ),
    '',
    ...tableLines(
      [
        { heading: 'hole', isFigure: true },
        { heading: 'par', isFigure: true },
        { heading: units === 'yards' ? 'yd' : 'm', isFigure: true },
        { heading: 'tees off' },
        { heading: 'if', isFigure: true },
        { heading: `${names[0]} tees off` },
        { heading: 'if', isFigure: true },
        { heading: `${names[1]} tees off` },
        { heading: 'saves', isFigure: true },
      ],
      rows,
    ),
    '',
    'Near the pin a place counts as the mean of what it costs the two alone. Rule 22.3: partners tee off alternately, whatever came of the hole before.',
  ]
}

function savedText(strokes: number): string {
  return strokes < 0 ? `−${(-strokes).toFixed(2)}` : strokes.toFixed(2)
}
