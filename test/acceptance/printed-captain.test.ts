import { describe, expect, it } from 'vitest'
import type { PairedHole } from '#golf/round/foursome-table.ts'
import { splitTees } from '#golf/strategy/split-tees.ts'
import { readPart } from '#outside/print/read-part.ts'
import { printedLetters } from '#outside/print/type-setter.ts'
import { captainSheet } from '#paper/book/captain-sheet.ts'
import { checkPages } from '#paper/book/check-pages.ts'
import { inventedFacts, inventedHoles } from '#paper/book/invented-book.fixture.ts'
import { outside, overlaps, textBoxes } from '#paper/book/text-boxes.fixture.ts'

// The captain's sheet: what stands on it by geometry, with the longest names. The limits of a page are tested in printed-pins.

const letters = printedLetters(readPart)
const facts = inventedFacts(letters, inventedHoles(18))
const WATER = { ground: 'penalty-yellow', name: 'the long ditch by the old sea wall', polygon: [] } as never
const holes = facts.holes.map(
  ({ hole }, index): PairedHole => ({
    hole,
    ref: hole.ref,
    place: index,
    turns: [0, 1].map((turn) => ({
      strokes: 4.5 + 0.1 * ((index + turn) % 3),
      best: { shot: { club: turn === 0 ? 'driver' : 'pitching-wedge', shape: 'three-quarter' }, heading: 0 },
      hazard: { area: WATER, side: 'across' },
    })) as never,
  }),
)

describe('the captain’s sheet', () => {
  it.each([
    ['a4', ['Ebbe', 'Wren']],
    ['letter', ['Maximiliana Featherstonehaugh', 'Bartholomew Winterbottom-Ashe']],
  ] as const)('has every hole, nothing cut and no words on others: %s', (paper, names) => {
    const pages = captainSheet({ ...facts, paper }, names, holes, splitTees(holes))
    const boxes = pages.map(({ drawing }) => textBoxes(drawing, letters))
    for (const [index, { drawing }] of pages.entries()) {
      expect(overlaps(boxes[index] ?? [])).toEqual([])
      expect(outside(drawing, boxes[index] ?? [])).toEqual([])
    }
    const words = boxes.flat().map(({ text }) => text)
    for (const { ref } of holes) expect(words).toContain(ref)
    expect(words.join(' ')).toMatch(/saves 0\.\d0|saves 0\.\d\d/)
    expect(words.join(' ')).toContain('the long ditch')
    expect(words.join(' ')).toMatch(/par 4, \d+ yd/)
    expect(checkPages(pages, 'counting', [])).toEqual([])
  })
})
