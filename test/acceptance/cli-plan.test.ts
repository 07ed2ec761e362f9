import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { type Json, marram, marramJson } from './run-cli.ts'

// `marram plan` as people and programs outside use it: README.md, docs/errors.md.

const COURSE = 'examples/sandrel-ness.course.geojson'
const PLAYER = 'examples/aldous-brack.player.json'
const folder = mkdtempSync(join(tmpdir(), 'marram-plan-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const file = (name: string, content: string): string => {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}
/** A player with four clubs: what is asked of the same plan in other ways is worked out in a third of the time. */
const FOUR_CLUBS = file(
  'four.player.json',
  JSON.stringify({
    schema: 'player/1',
    name: 'Four',
    hand: 'right',
    handicapIndex: 18,
    bag: 'as-listed',
    clubs: [
      { name: 'driver', carry_m: 190 },
      { name: '6-iron', carry_m: 140 },
      { name: '9-iron', carry_m: 110 },
      { name: 'sand-wedge', carry_m: 65 },
    ],
  }),
)
const plan = (...words: readonly string[]): readonly string[] => planOf(PLAYER, words)
const planOf = (player: string, words: readonly string[]): readonly string[] => [
  'plan',
  COURSE,
  '--player',
  player,
  '--hole',
  '7',
  '--no-flips',
  '--draws',
  '0',
  ...words,
]

const round: readonly string[] = ['plan', COURSE, '--player', PLAYER, '--hole', 'all']

const sum = (shares: Record<string, number>): number =>
  Object.values(shares).reduce((total, share) => total + share, 0)

describe('marram plan', () => {
  it('answers with plan/1: options by cost, shares that add up, a sentence', () => {
    const { status, document } = marramJson(...plan())
    expect(status).toBe(0)
    expect(document).toMatchObject({
      schema: 'plan/1',
      course: 'Sandrel Ness',
      hole: { ref: '7', par: 4 },
      player: 'Aldous Brack',
      situation: { x_m: 0, y_m: 0, lie: 'tee', objective: 'strokes' },
      overruled: null,
      flips: [],
    })
    const costs = document.options.map((option: Json) => option.cost)
    expect(costs[0]).toBe(0)
    expect(costs).toEqual([...costs].sort((a, b) => a - b))
    expect(document.value.strokes).toBeCloseTo(document.options[0].strokes, 9)
    for (const option of document.options) {
      expect(sum(option.outcomes)).toBeCloseTo(1, 9)
      expect(sum(option.scores)).toBeCloseTo(1, 6)
      expect(option.leave_m.p10).toBeLessThanOrEqual(option.leave_m.p50)
      expect(option.leave_m.p50).toBeLessThanOrEqual(option.leave_m.p90)
    }
    const clubs = document.options.map((option: Json) => option.club)
    expect(new Set(clubs).size).toBe(clubs.length)
    expect(document.sentence).toMatch(/[a-z]/)
    expect(document.cautions.length).toBeGreaterThan(0)
    expect(document.method.converged).toBe(true)
    expect(document.method.milliseconds).toBeGreaterThan(0)
  })

  it('says the price of a club that the player likes better, as a page and as a picture', () => {
    const picture = join(folder, 'seven.svg')
    const run = marram(...planOf(FOUR_CLUBS, ['--club', '9-iron', '--picture', picture]))
    expect(run).toMatchObject({ status: 0, err: '' })
    expect(run.out).toMatch(/^Hole 7, par 4, \d+ yd/)
    expect(run.out).toMatch(/^9-iron.*\+0\.\d\d/m)
    expect(run.out).toMatch(/costs (about )?\d/)
    expect(run.out).not.toMatch(/NaN|undefined|\[object/)
    const svg = readFileSync(picture, 'utf8')
    expect(svg).toMatch(/^(<\?xml[^>]*>\s*)?<svg /)
    expect(svg).not.toContain('NaN')
  })

  it('plans from where the ball lies, in the wind', () => {
    const { status, document } = marramJson(
      ...planOf(FOUR_CLUBS, ['--from', '0,150yd', '--lie', 'rough', '--wind', 'into:7']),
    )
    expect(status).toBe(0)
    expect(document.situation).toMatchObject({ x_m: 0, y_m: 137.16, lie: 'rough' })
    expect(document.options.map((option: Json) => option.club)).not.toContain('driver')
  })

  it('plans a chip from near the green: landing spot, roll, leave, worst case, and a picture from the side', () => {
    const picture = join(folder, 'chip.svg')
    const asked = plan('--from', '0,322', '--lie', 'rough')
    const { status, document } = marramJson(...asked)
    expect(status).toBe(0)
    expect(document.schema).toBe('plan/1')
    expect(document.situation).toMatchObject({ x_m: 0, y_m: 322, lie: 'rough' })
    expect(document.options.map((option: Json) => option.club)).not.toContain('driver')
    for (const option of document.options) {
      const { landing, carry_m, roll_m, worst } = option.short
      expect(sum(option.outcomes)).toBeCloseTo(1, 9)
      expect(sum(option.scores)).toBeCloseTo(1, 9)
      expect(Math.hypot(landing.x_m, landing.y_m - 322)).toBeCloseTo(carry_m, 6)
      expect(roll_m).toBeGreaterThan(0)
      expect(worst.strokes).toBeGreaterThan(option.strokes)
    }
    expect(document.cautions[0]).toMatch(/counting round/)
    const run = marram(...asked, '--picture', picture)
    expect(run).toMatchObject({ status: 0, err: '' })
    expect(run.out).toMatch(/^club +lands +carry paces +roll paces/m)
    expect(run.out).not.toMatch(/NaN|undefined|\[object/)
    const svg = readFileSync(picture, 'utf8')
    expect(svg).toContain('from the side')
    expect(svg).not.toContain('NaN')
  })

  it('plans a putt from the green, with the putter alone', () => {
    const { document } = marramJson(...plan('--from', '6,327', '--lie', 'green'))
    expect(document.options.map((option: Json) => option.club)).toEqual(['putter'])
    expect(document.value.strokes).toBeGreaterThan(1)
  })

  it.each([
    ['a missing course', 'MAR-FILE-001', ['plan', 'no.geojson', '--player', PLAYER, '--hole', '7']],
    ['a missing player', 'MAR-FILE-001', ['plan', COURSE, '--player', 'no.json', '--hole', '7']],
    ['no player', 'MAR-USAGE-001', ['plan', COURSE, '--hole', '7']],
    ['no hole', 'MAR-USAGE-001', ['plan', COURSE, '--player', PLAYER]],
    ['an unknown option', 'MAR-USAGE-001', plan('--clubs', 'driver')],
    ['an unknown hole', 'MAR-COURSE-001', ['plan', COURSE, '--player', PLAYER, '--hole', '19']],
    ['an unknown tee', 'MAR-COURSE-002', plan('--tee', 'platinum')],
    ['an unknown club', 'MAR-PLAN-003', plan('--club', 'banjo')],
    ['a pin off the green', 'MAR-COURSE-005', plan('--pin', '60,20')],
    ['a pin that is none', 'MAR-USAGE-002', plan('--pin', 'somewhere')],
    ['a wind that is none for a whole round', 'MAR-DAY-006', [...round, '--wind', 'north:7']],
    ['a tee that no hole of the round has', 'MAR-COURSE-002', [...round, '--tee', 'nobody']],
    ['a club without a name', 'MAR-USAGE-002', plan('--club', ' ')],
    ['a place that is none', 'MAR-USAGE-002', plan('--from', 'here')],
    ['a place off the hole', 'MAR-PLAN-004', plan('--from', '0,2000')],
    ['a green where there is none', 'MAR-PLAN-007', plan('--from', '0,100', '--lie', 'green')],
    [
      'a putter out of the rough',
      'MAR-PLAN-003',
      plan('--from', '0,322', '--lie', 'rough', '--club', 'putter'),
    ],
    ['a lie that is none', 'MAR-USAGE-002', plan('--from', '0,100', '--lie', 'plugged')],
    ['a lie without a place', 'MAR-USAGE-002', plan('--lie', 'rough')],
    ['a wind that is none', 'MAR-DAY-006', plan('--wind', 'strong')],
    ['an objective that is none', 'MAR-USAGE-002', plan('--objective', 'glory')],
    ['at most a number that is none', 'MAR-USAGE-002', plan('--objective', 'at-most:few')],
    ['a match against nobody', 'MAR-USAGE-002', plan('--objective', 'match')],
    ['a last hole before this one', 'MAR-USAGE-002', plan('--objective', 'at-most:9', '--through', '6')],
    [
      'a match to come against a score',
      'MAR-USAGE-002',
      plan('--objective', 'match', '--opponent-score', '4', '--through', '8'),
    ],
    ['holes up without a match', 'MAR-USAGE-002', plan('--objective', 'at-most:4', '--up', '1')],
    ['an opponent without a match', 'MAR-USAGE-002', plan('--opponent-score', '4')],
    ['handicap strokes without points', 'MAR-USAGE-002', plan('--strokes-received', '1')],
    ['a score for a whole round', 'MAR-USAGE-002', [...round, '--objective', 'at-most:90']],
    ['draws that are none', 'MAR-USAGE-002', plan('--draws', '-3')],
    ['a picture of a round', 'MAR-USAGE-002', [...round, '--picture', 'x.svg']],
    ['a day that is no day', 'MAR-DAY-002', plan('--day', PLAYER)],
  ])('refuses %s with %s', (_what, code, words) => {
    const run = marram(...words)
    expect(run.err).toMatch(new RegExp(`^${code} .+\n$`))
    expect(run).toMatchObject({ status: 2, out: '' })
  })

  it.each([
    ['words', 'Aldous, 17.6'],
    ['another schema', '{"schema":"player/9","name":"A","hand":"right","handicapIndex":3}'],
    ['no hand', '{"schema":"player/1","name":"A","handicapIndex":3}'],
    ['neither index nor carry', '{"schema":"player/1","name":"A","hand":"left"}'],
    [
      'a negative carry',
      '{"schema":"player/1","name":"A","hand":"left","clubs":[{"name":"7-iron","carry_m":-120}]}',
    ],
    [
      'an unknown club',
      '{"schema":"player/1","name":"A","hand":"left","clubs":[{"name":"banjo","carry_m":120}]}',
    ],
  ])('refuses a player file with %s', (what, content) => {
    const path = file(`${what.replaceAll(' ', '-')}.player.json`, content)
    const { status, document } = marramJson('plan', COURSE, '--player', path, '--hole', '7')
    expect(status).toBe(2)
    expect(document.error.code).toMatch(/^MAR-PLAYER-\d{3}$/)
    expect(document.error.where).toContain(path)
  })
})
