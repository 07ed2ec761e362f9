import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { type Json, marram, marramJson } from './run-cli.ts'

// `marram plan --objective` as people and programs outside use it: README.md.

const folder = mkdtempSync(join(tmpdir(), 'marram-objective-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const file = (name: string, content: string): string => {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}

const COURSE = file(
  'two-short.csv',
  `hole,what,side,from_m,to_m,near_m,far_m,note
1,green,,92,108,0,16,"par 3, index 2"
2,water-red,across,70,84,-40,40,
2,green,,90,106,0,16,"par 3, index 1"
1,out,left,,,40,,
1,out,right,,,40,,
2,out,left,,,60,,
2,out,right,,,60,,
`,
)
const player = (name: string, handicapIndex: number): string =>
  file(
    `${name}.player.json`,
    JSON.stringify({
      schema: 'player/1',
      name,
      hand: 'right',
      handicapIndex,
      clubs: [
        { name: '9-iron', carry_m: 100 },
        { name: 'sand-wedge', carry_m: 70 },
      ],
      bag: 'as-listed',
    }),
  )
const EBB = player('ebb', 8)
const FLO = player('flo', 30)
const plan = (...words: readonly string[]): readonly string[] => [
  'plan',
  COURSE,
  '--player',
  EBB,
  '--hole',
  '1',
  '--no-flips',
  '--draws',
  '2',
  ...words,
]

/** What the scores of an option are worth. */
function worthOf({ scores }: Json, worth: (strokes: number) => number): number {
  return Object.entries(scores as Record<string, number>).reduce(
    (sum, [strokes, chance]) => sum + chance * worth(Number(strokes)),
    0,
  )
}

describe('marram plan --objective', () => {
  it('plans for points: options are worth the points of their scores, with strokes received', () => {
    const { status, document } = marramJson(...plan('--objective', 'points', '--strokes-received', '1'))
    expect(status).toBe(0)
    expect(document.situation.objective).toBe('points')
    expect(document.format).toMatchObject({ aim: 'points', played: 0, received: 1, match: null, notes: [] })
    // Rules of Golf 2023, 21.1b: par 3 with a stroke received, so 2 points for a four.
    for (const option of document.options)
      expect(option.worth).toBeCloseTo(
        worthOf(option, (strokes) => Math.max(0, 6 - strokes)),
        6,
      )
    expect(document.format.value).toBe(document.options[0].worth)
    expect(document.options[0].cost).toBe(0)
    expect(document.sentence.startsWith(document.format.sentence)).toBe(true)
  })

  it('plans a hole of a match against a player, and says on whose word', () => {
    const { status, document } = marramJson(...plan('--objective', 'match', '--opponent', FLO))
    expect(status).toBe(0)
    const { win, halve, lose } = document.format.match
    expect(win + halve + lose).toBeCloseTo(1, 6)
    // An index of 8 against 30 without handicap strokes, which the typed card does not tell.
    expect(win).toBeGreaterThan(lose)
    expect(document.format.received).toBe(0)
    expect(document.format.value).toBeCloseTo(win + halve / 2, 6)
    expect(document.format.notes.join(' ')).toMatch(/No handicap strokes .+ flo is taken to play /)
  })

  it('adds up the points of a round', () => {
    const words = plan('--objective', 'points').map((word) => (word === '1' ? 'all' : word))
    const { status, document } = marramJson(...words)
    expect(status).toBe(0)
    const values = document.plans.map((one: Json) => one.format.value)
    expect(values).toHaveLength(2)
    expect(document.value.points).toBeCloseTo(values[0] + values[1], 12)
  })

  it('counts a target over the holes that follow, on a page of plain words', () => {
    const run = marram(...plan('--objective', 'at-most:7', '--through', '2'))
    expect(run).toMatchObject({ status: 0, err: '' })
    expect(run.out).toMatch(/^7 or better on holes 1 to 2: \d+ in 100, between \d+ and \d+ in 100\./m)
    expect(run.out).toMatch(/^The holes after this one are planned for the same target\.$/m)
    expect(run.out).toMatch(/^club +aim +score +made % +costs %/m)
  })
})
