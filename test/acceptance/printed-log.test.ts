import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { parseLog } from '#golf/round/parse-log.ts'
import { FINISH_LETTERS } from '#golf/round/round.ts'
import { readSource } from '#outside/formats/read-source.ts'
import { readPart } from '#outside/print/read-part.ts'
import { printedLetters } from '#outside/print/type-setter.ts'
import { inventedFacts } from '#paper/book/invented-book.fixture.ts'
import { logSheets } from '#paper/book/log-sheet.ts'
import type { Page } from '#paper/book/page.ts'
import { outside, overlaps, textBoxes } from '#paper/book/text-boxes.fixture.ts'

const file = 'examples/sandrel-ness.course.geojson'
const { course } = assembleCourse(readSource(readFileSync(file), file).features, {})
const holes = course.holes.map(({ ref }) => holeFromCourse(course, ref))
const letters = printedLetters(readPart)

describe('the printed log', () => {
  it.each(['a4', 'letter'] as const)('has a line a hole and every letter explained, on %s', (paper) => {
    const bare = holes.map((hole) => ({ hole, plan: null, missing: '', received: null }))
    const [page, ...others] = logSheets(inventedFacts(letters, bare, { paper })) as [Page]
    expect(others).toEqual([])
    const boxes = textBoxes(page.drawing, letters)
    const said = boxes.map(({ text }) => text).join(' ')
    for (const hole of holes) expect(said).toContain(`${hole.ref}: par ${hole.par}`)
    for (const [letter, means] of Object.entries(FINISH_LETTERS)) expect(said).toContain(`${letter} ${means}`)
    expect(overlaps(boxes)).toEqual([])
    expect(outside(page.drawing, boxes)).toEqual([])
    // The example on the sheet is what the parser takes.
    const example = /Like: (.*?2 putts)/.exec(said)?.[1] ?? ''
    expect(parseLog(`7: ${example}`, 'sheet').faults).toEqual([])
  })

  it('is typed in under 8 minutes at 40 words a minute', () => {
    // A common round of 90: three strokes and two putts a hole, as the sheet shows it. Our assumption.
    const lines = holes.map(({ ref }) => `${ref}: driver f-180 / 5i r-25 / sw g-18ft / 2 putts`)
    const text = `date 2026-05-02\ntee drift\n${lines.join('\n')}\n`
    expect(parseLog(text, 'log').faults).toEqual([])
    // Five key strokes are a word, as typing is measured.
    const minutes = text.length / 5 / 40
    expect(minutes).toBeLessThan(8)
    // The shortest spelling that is read says the same.
    const short = text
      .replaceAll(' / ', '/')
      .replaceAll('-1', '1')
      .replaceAll('-25', '25')
      .replaceAll('2 putts', '2p')
    const strokesIn = (log: string) =>
      parseLog(log, 'log').round.holes.map(({ strokes, putts }) => ({
        putts,
        strokes: strokes.map(({ club, finish }) => ({ club, finish })),
      }))
    expect(strokesIn(short)).toEqual(strokesIn(text))
    console.info(`18 holes typed: ${text.length} strokes of keys, ${minutes.toFixed(1)} min`)
  })
})
