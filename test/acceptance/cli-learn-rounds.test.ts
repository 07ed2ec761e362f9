import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { SHORT_HOLES, THREE_CLUBS } from '../fixtures/short-holes.ts'
import { type Json, marram, marramJson } from './run-cli.ts'

// `marram pattern --round` as people and programs outside use it: README.md, docs/recap.md, docs/errors.md.

const folder = mkdtempSync(join(tmpdir(), 'marram-learn-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const file = (name: string, content: string): string => {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}
const course = file('short.csv', SHORT_HOLES)
const player = file('three.player.json', THREE_CLUBS)
const round = (name: string, more: object, left: number): string =>
  file(
    `${name}.round.json`,
    JSON.stringify({
      schema: 'round/1',
      ...more,
      holes: [
        {
          ref: '1',
          strokes: [
            { club: '7-iron', aim_offset_m: 0, to: { x_m: 4, y_m: left } },
            { club: '7-iron', to: { letter: 'g', left_m: 4 } },
          ],
          putts: 1,
        },
      ],
    }),
  )
const onCourse = ['--course', course, '--workers', '0'] as const

describe('marram pattern with rounds', () => {
  const rounds = [
    '--round',
    round('may', { id: 'r-may' }, 128),
    '--round',
    round('june', { date: '2026-06-02' }, 131),
  ]
  const out = join(folder, 'learned.player.json')

  it('takes plan numbers of nobody but its player', () => {
    const strange = { from: 'card', date: '2026-05-01', player: { ...JSON.parse(THREE_CLUBS), name: 'Four' } }
    const { document } = marramJson(
      ...['pattern', player, ...onCourse, '--round', round('strange', { plan_numbers: strange }, 128)],
    )
    expect(document.faults).toMatchObject([{ code: 'MAR-ROUND-015', severity: 'warning' }])
  })

  it('learns from them, says what was left out and why, and which plans change', () => {
    const { status, document } = marramJson('pattern', player, ...rounds, ...onCourse, '--out', out)
    expect(status).toBe(0)
    expect(document).toMatchObject({
      schema: 'pattern/1',
      shots: { rows: 0, used: 4, unused: 0 },
      rounds: {
        ...{ rounds: 2, without_day: 2, shots: 4, putts: 2, short_strokes: 0, without_line: 2 },
        unused: { length: 0, fringe: 0, 'near-green': 0, places: 0 },
      },
      near_green: { putts: 2, short_shots: 0, putting_direction_sd_deg: {}, strokes_lost: {} },
      plans: { compared: 2 },
    })
    const iron = document.clubs.find(({ club }: Json) => club === '7-iron')
    expect(iron).toMatchObject({ shots: 4 })
    const page = marram('pattern', player, ...rounds, ...onCourse)
    expect(page.out).toContain('2 rounds: 4 full shots, 2 of them without a line')
    expect(page.out).toContain('putts from 2 places, 0 strokes near the green.')
    expect(page.out).not.toContain('Strokes not learned from')
    expect(page.out).toMatch(
      /Putting and short game[\s\S]*putts start off line by, degrees +\d\.\d\d +\d\.\d\d/,
    )
    expect(page.out).toMatch(/no plan changes on 2 holes|Compared on 2 holes/)
  })

  it('counts no round twice: not in one call, and not in a later one from the player it wrote', () => {
    const copy = round('may-from-another-phone', { id: 'r-may' }, 120)
    const twice = marram('pattern', player, ...rounds, '--round', copy, ...onCourse)
    expect([twice.status, twice.err.includes('MAR-ROUND-020')]).toEqual([2, true])
    expect(JSON.parse(readFileSync(out, 'utf8')).learnedRounds).toHaveLength(2)
    const again = marramJson('pattern', out, ...rounds, ...onCourse)
    expect(again.document.rounds).toMatchObject({ rounds: 0, shots: 0 })
    expect(again.document.faults.map(({ code }: Json) => code)).toEqual(['MAR-ROUND-021', 'MAR-ROUND-021'])
    for (const club of again.document.clubs) expect(club.carry_m.after).toBeCloseTo(club.carry_m.before, 0)
  })

  it('adds them to shots of a table', () => {
    const shots = file(
      'range.csv',
      'club,lie,carry_m,offline_m\n7-iron,fairway,128,3\n7-iron,fairway,124,-5\n',
    )
    const { document } = marramJson(
      'pattern',
      player,
      '--shots',
      shots,
      ...rounds,
      ...onCourse,
      '--hole',
      '1',
    )
    expect(document.shots).toMatchObject({ rows: 2, used: 6 })
    expect(document.plans.compared).toBe(1)
  })

  it('asks for what is missing, before any work', () => {
    const refused = (...words: string[]): unknown[] => {
      const { status, err } = marram('pattern', player, ...words)
      return [status, /MAR-[A-Z]+-\d+/.exec(err)?.[0]]
    }
    expect(refused(...rounds)).toEqual([2, 'MAR-USAGE-002'])
    expect(refused('--course', course)).toEqual([2, 'MAR-USAGE-001'])
    expect(refused('--shots', 'x.csv', '--course', course, '--tee', 'white')).toEqual([2, 'MAR-USAGE-002'])
    expect(marram('pattern', player, '--round', 'none.round.json', ...onCourse).err).toContain('MAR-FILE-001')
  })
})
