import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { parseLog } from '#golf/round/parse-log.ts'
import { parseRound } from '#golf/round/parse-round.ts'
import { scoreOf } from '#golf/round/round.ts'
import { SHORT_HOLES, THREE_CLUBS } from '../fixtures/short-holes.ts'
import { type Json, marram, marramJson } from './run-cli.ts'

// `marram recap` as people and programs outside use it: README.md, docs/recap.md.

const folder = mkdtempSync(join(tmpdir(), 'marram-recap-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const file = (name: string, content: string): string => {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}
const course = file('short.csv', SHORT_HOLES)
const player = file('three.player.json', THREE_CLUBS)
const log = file(
  'sunday.log.txt',
  'date 2026-05-02\nunit m\n1: sw f-110 / 7i g-4 / 1 putt\n2: 5w r-30 / spoon g-6 / 2 putts\n3: 7i g-2 / 1 putt\n',
)
const common = ['recap', course, '--player', player, '--workers', '0'] as const

describe('marram recap', () => {
  it('answers with recap/1: every stroke split, sums that add up to the score, and what cannot be told', () => {
    const { status, document } = marramJson(...common, '--round', log)
    // The third hole is not on the course, and a spoon is no club here: both are told, and the rest is there.
    expect(status).toBe(1)
    expect(document.faults.map(({ code, place }: Json) => `${code} ${place}`)).toEqual([
      'MAR-COURSE-001 hole 3',
      'MAR-ROUND-007 line 4, stroke 2, column 14',
    ])
    expect(document).toMatchObject({ schema: 'recap/1', player: 'Three', date: '2026-05-02', score: 7 })
    expect(document.holes.map((one: Json) => one.hole)).toEqual(['1', '2'])
    for (const sum of [document, ...document.holes]) {
      expect(Math.abs(sum.adds_up)).toBeLessThan(1e-9)
      expect(Math.abs(sum.score - sum.value - sum.decision - sum.execution - sum.luck)).toBeLessThan(1e-9)
    }
    const [first, second] = document.holes
    expect(first.strokes.map((one: Json) => [one.club, one.part, one.used, one.to === 'holed'])).toEqual([
      ['sand-wedge', 'approach', 1, false],
      ['7-iron', 'approach', 1, false],
      ['putter', 'putting', 1, true],
    ])
    // A birdie keeps the cost of its choice, and a holed putt is mostly luck.
    expect(first.strokes[0].decision).toBeGreaterThan(0.2)
    expect(document.costly[0]).toMatchObject({ hole: '1', stroke: 1, club: 'sand-wedge' })
    expect(first.strokes[2].luck).toBeLessThan(first.strokes[2].execution)
    expect(second.strokes[1]).toMatchObject({ club: null, chosen: null, decision: 0 })
    expect(second.strokes[2]).toMatchObject({ count: 2, used: 2 })
    expect(document.unsplit.club).toBe(1)
  })

  it('says it in plain words, of one hole where one is named', () => {
    const { status, out } = marram(...common, '--round', log, '--hole', '1', '--units', 'metres')
    expect(status).toBe(1)
    expect(out).toMatch(/Three, 2026-05-02: 3 strokes on 1 hole/)
    expect(out).toMatch(/From plan to score\n {2}expected, with the plan +\d\.\d\d\n {2}choices +\+0\.\d\d\n/)
    expect(out).toMatch(
      /Choices that cost most\n {2}hole 1, stroke 1, sand wedge from the tee: \+0\.\d\d; the plan is/,
    )
    expect(out).toMatch(
      /Best strokes\n {2}hole 1, stroke 2, .*\n {2}hole 1, stroke 3, putter from the green, holed, 4 m: −0\.\d\d, −0\.\d\d of it luck/,
    )
    expect(out).not.toMatch(/NaN|undefined|\[object|Infinity/)
  })

  it('holds a round against the numbers of the card that it carries, and against those of today when asked', () => {
    const { round } = parseRound(
      JSON.stringify({ schema: 'round/1', holes: [{ ref: '1', strokes: [{ club: '7-iron' }] }] }),
      'round',
    )
    expect(round.holes).toHaveLength(1)
    const holes = [
      { ref: '1', strokes: [{ club: '7-iron', to: { letter: 'g', left_m: 4 } }], putts: 2, firstPutt_m: 4 },
    ]
    const then = { ...JSON.parse(THREE_CLUBS), handicapIndex: 30 }
    const card = { from: 'card', date: '2026-05-01', player: then }
    const plain = { schema: 'round/1', date: '2026-05-02', holes }
    const bare = file('bare.round.json', JSON.stringify(plain))
    const carries = file('carries.round.json', JSON.stringify({ ...plain, plan_numbers: card }))
    const thenPlayer = file('then.player.json', JSON.stringify(then))
    const splitOf = ({ document }: ReturnType<typeof marramJson>): unknown => [document.value, document.holes]
    const byCard = marramJson(...common, '--round', carries)
    expect(byCard.document.against).toEqual({ from: 'card', date: '2026-05-01' })
    expect(splitOf(byCard)).toEqual(
      splitOf(marramJson('recap', course, '--player', thenPlayer, '--workers', '0', '--round', bare)),
    )
    const today = marramJson(...common, '--round', carries, '--today')
    expect(today.document.against).toBeNull()
    expect(splitOf(today)).toEqual(splitOf(marramJson(...common, '--round', bare)))
    expect(today.document.value).not.toBeCloseTo(byCard.document.value, 2)
    expect(marram(...common, '--round', carries).out).toContain(
      'Against the plan of the card of 2026-05-01, for a calm, normal day.',
    )
    const wind = file('wind.day.json', '{"schema":"day/1","wind":{"speed_mps":9,"from_deg":0}}')
    const windy = marramJson(...common, '--round', carries, '--day', wind)
    expect(windy.document.against).toEqual({ from: 'card', date: '2026-05-01' })
    expect(windy.document.value).not.toBeCloseTo(byCard.document.value, 2)
    expect(marramJson(...common, '--round', carries, '--day', 'nothere.json').status).toBe(2)
    // Numbers of somebody else are told and not taken.
    const other = { ...plain, plan_numbers: { ...card, player: { ...then, name: 'Four' } } }
    const strange = marramJson(...common, '--round', file('other.round.json', JSON.stringify(other)))
    expect(strange.document.against).toBeNull()
    expect(strange.document.faults).toMatchObject([{ code: 'MAR-ROUND-015', severity: 'warning' }])
    const torn = file(
      'torn.round.json',
      JSON.stringify({ ...plain, plan_numbers: { player: { schema: 'x' } } }),
    )
    expect(marramJson(...common, '--round', torn).document.faults).toMatchObject([
      { code: 'MAR-ROUND-016', severity: 'warning' },
    ])
  })

  it('refuses a round without holes, and a hole that was not logged', () => {
    const none = marramJson(...common, '--round', file('empty.log.txt', 'nothing\n'))
    expect([none.status, none.document.error.code]).toEqual([2, 'MAR-ROUND-008'])
    const other = marramJson(...common, '--round', log, '--hole', '9')
    expect([other.status, other.document.error.code]).toEqual([2, 'MAR-COURSE-001'])
  })
})

describe('the example round', () => {
  it('is read without a fault, from its file and from its paper log, with the same clubs and scores', () => {
    const [file, log] = [
      parseRound(readFileSync('examples/tobin-skell.round.json', 'utf8'), 'file'),
      parseLog(readFileSync('examples/tobin-skell.log.txt', 'utf8'), 'log'),
    ]
    expect([...file.faults, ...log.faults]).toEqual([])
    const told = ({ round }: typeof file): unknown =>
      round.holes.map((hole) => [hole.ref, scoreOf(hole), hole.strokes.map(({ club }) => club)])
    expect(told(log)).toEqual(told(file))
    expect([log.round.date, log.round.tee]).toEqual([file.round.date, file.round.tee])
  })
})
