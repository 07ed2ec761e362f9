import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { expectPlain } from './expect-plain.ts'
import { type Json, marram, marramJson } from './run-cli.ts'

// `marram pattern` as people and programs outside use it: README.md, docs/shots.md, docs/errors.md.

const folder = mkdtempSync(join(tmpdir(), 'marram-pattern-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const file = (name: string, content: string): string => {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}

const player = file(
  'two.player.json',
  JSON.stringify({
    schema: 'player/1',
    name: 'Two Clubs',
    hand: 'right',
    handicapIndex: 14,
    bag: 'as-listed',
    clubs: [{ name: '7-iron', carry_m: 130 }, { name: '52-wedge' }],
  }),
)
/** Forty shots of a 7-iron ten metres longer than the file says, and a few of a wedge under another name. */
const rows = [
  ...Array.from(
    { length: 40 },
    (_, i) => `2026-05-0${1 + (i % 9)},7i,fairway,${140 + ((i * 7) % 19) - 9},,${((i * 5) % 17) - 8},,`,
  ),
  ...Array.from({ length: 6 }, (_, i) => `2026-05-01,GW,fairway,${84 + 2 * i},,${3 - i},,`),
]
const HEADER = 'date,club,lie,carry_m,total_m,offline_m,planned,strike'
const shots = file('season.csv', [HEADER, ...rows].join('\n'))

describe('marram pattern', () => {
  it('answers with pattern/1: what was read, every club before and after, the gaps', () => {
    const { status, document } = marramJson('pattern', player, '--shots', shots)
    expect(status).toBe(0)
    expect(document).toMatchObject({
      schema: 'pattern/1',
      player: 'Two Clubs',
      out: null,
      shots: {
        rows: 46,
        used: 46,
        unused: 0,
        repeated: 0,
        set_aside: 0,
        unread: 0,
        from: '2026-05-01',
        to: '2026-05-09',
      },
      added_clubs: [],
      gaps: [
        { club: '7-iron', next: '52-wedge', verdict: 'hole' },
        { club: '52-wedge', next: null, gap_m: 0, verdict: 'even' },
      ],
      faults: [],
    })
    const [iron, wedge] = document.clubs
    expect(iron).toMatchObject({ club: '7-iron', shots: 40 })
    expect(wedge).toMatchObject({ club: '52-wedge', shots: 6 })
    expect(iron.carry_m.before).toBe(130)
    expect(iron.carry_m.after).toBeGreaterThan(133)
    expect(iron.carry_m.after).toBeLessThan(142)
    expect(iron.carry_m.chance_of_change).toBeGreaterThan(0.8)
    for (const number of Object.values<Json>(iron).filter((value) => typeof value === 'object')) {
      const [low, high] = number.ninety
      expect(low).toBeLessThanOrEqual(number.half[0])
      expect(number.half[0]).toBeLessThan(number.half[1])
      expect(number.half[1]).toBeLessThanOrEqual(high)
    }
  })

  it('says what a lie does to the shots from there, and writes it into the player file', () => {
    const fromRough = Array.from(
      { length: 30 },
      (_, i) => `2026-05-0${1 + (i % 9)},7i,rough,${112 + ((i * 7) % 19) - 9},,${((i * 5) % 17) - 8},,`,
    )
    const both = file('both.csv', [HEADER, ...rows, ...fromRough].join('\n'))
    const out = join(folder, 'rough.player.json')
    const { document } = marramJson('pattern', player, '--shots', both, '--out', out)
    const [rough] = document.lies
    expect(rough).toMatchObject({ lie: 'rough', shots: 30 })
    // The shots go 0.8 as far as those from the fairway; the assumed factor is nearer to 1.
    expect(rough.carry.before).toBeGreaterThan(0.93)
    expect(rough.carry.after).toBeLessThan(0.87)
    expect(rough.carry.ninety[0]).toBeLessThan(rough.carry.after)
    expect(marram('pattern', player, '--shots', both).out).toMatch(
      /^ {2}rough +30 {2}95 → 8\d \(\d\d to \d\d\) /m,
    )
    const { lies } = (JSON.parse(readFileSync(out, 'utf8')) as Json).clubs[0]
    expect(lies.rough.shots).toBeGreaterThan(25)
    expect(marramJson('pattern', out, '--shots', both).status).toBe(0)
  })

  it('draws the bag with its gaps', () => {
    const picture = join(folder, 'bag.svg')
    expect(marram('pattern', player, '--shots', shots, '--picture', picture).status).toBe(0)
    const drawn = readFileSync(picture, 'utf8')
    expect(drawn).toContain('The bag of Two Clubs')
    expect(drawn).toMatch(/>no club {2}\d+</)
  })

  it('draws one club before and after, by any of its names, and says what has really changed', () => {
    const picture = join(folder, 'seven.svg')
    const { status } = marram('pattern', player, '--shots', shots, '--picture', picture, '--club', '7i')
    expect(status).toBe(0)
    const drawn = readFileSync(picture, 'utf8')
    expect(drawn).toContain('7-iron of Two Clubs')
    expect(drawn).toMatch(/>The carry: \d+ yd longer than was known; \d\d chances in 100/)
    expect(drawn).toContain('>half before<')
    expect(drawn).toMatch(/>carries \d+ yards; 40 shots/)
  })

  it('says which plans of a course change with the shots, and plainly when none does', () => {
    const course = file(
      'short.csv',
      'hole,what,side,from_m,to_m,near_m,far_m,note\n4,fairway,across,20,130,-14,14,\n4,green,across,126,146,-9,9,\n',
    )
    const run = marram('pattern', player, '--shots', shots, '--course', course)
    expect(run).toMatchObject({ status: 0, err: '' })
    expect(run.out).toMatch(/Plans that change\n {2}(no plan changes on 1 hole of|Hole 4: )/)
    const { document } = marramJson('pattern', player, '--shots', shots, '--course', course, '--hole', '4')
    expect(document.plans).toMatchObject({ compared: 1, unplanned: [] })
    expect(marramJson('pattern', player, '--shots', shots).document.plans).toBeUndefined()
  })

  it('says it in plain words, with what was not read, and exits with 1 when a row was not', () => {
    const damaged = file(
      'damaged.csv',
      [HEADER, ...rows, '2026-05-01,7i,,far,,,,', '2026-05-01,PT,green,,4,0,,'].join('\n'),
    )
    const run = marram('pattern', player, '--shots', damaged, '--units', 'metres')
    expect(run).toMatchObject({ status: 1, err: '' })
    expect(run.out).toMatch(/^Two Clubs, learned from 46 shots from 2026-05-01 to 2026-05-09\n/)
    expect(run.out).toContain('Of 48 rows 1 not read, 1 set aside as no full shots.')
    expect(run.out).toMatch(/^7-iron +40 {2}130 → 1[34]\d \(1\d\d to 1\d\d\)/m)
    expect(run.out).toMatch(
      /Really changed\n {2}7-iron, carry: \d+ m longer than was known; \d\d chances in 100/,
    )
    expect(run.out).toMatch(
      /error MAR-SHOTS-007 damaged\.csv, line 48: The row was not read: its carry is “far”/,
    )
    expect(run.out).not.toMatch(/NaN|undefined|\[object|Infinity/)
  })

  it('writes the player, which is read again with the shots counted and the guesses gone', () => {
    const out = join(folder, 'learned.player.json')
    expect(marram('pattern', player, '--shots', shots, '--out', out).status).toBe(0)
    const written = JSON.parse(readFileSync(out, 'utf8')) as Json
    const [iron] = written.clubs
    expect(iron).toMatchObject({ name: '7-iron' })
    expect(iron.shots).toBeGreaterThan(30)
    expect(iron.carry_m).toBeGreaterThan(133)
    expect(iron.guesses ?? []).not.toContain('carry_m')
    const again = marramJson('pattern', out, '--shots', shots)
    expect(again.document.clubs[0].carry_m.before).toBe(iron.carry_m)
  })

  it('counts a season that is given twice once', () => {
    const { document } = marramJson('pattern', player, '--shots', shots, shots)
    expect(document.shots).toMatchObject({ rows: 92, used: 46, repeated: 46 })
    expect(document.faults).toMatchObject([{ code: 'MAR-SHOTS-014', severity: 'warning' }])
  })

  it('names shots with a club that is not in the bag', () => {
    const other = file('other.csv', [HEADER, ...rows, '2026-05-01,driver,tee,200,,,,'].join('\n'))
    const { status, document } = marramJson('pattern', player, '--shots', other)
    expect(status).toBe(0)
    expect(document.shots).toMatchObject({ used: 46, unused: 1 })
    expect(document.faults).toMatchObject([{ code: 'MAR-SHOTS-019' }])
  })

  it('reads other columns by --columns or --mapping, and asks without', () => {
    const foreign = file(
      'foreign.csv',
      `Stick;Flight;Side\n${rows
        .map((row) => row.split(','))
        .map((row) => `${row[1]};${row[3]};${row[5]}`)
        .join('\n')}`,
    )
    const asked = marram('pattern', player, '--shots', foreign)
    expect(asked).toMatchObject({ status: 2, out: '' })
    expect(asked.err).toMatch(/^MAR-SHOTS-001 .*Stick \(7i\), Flight \(131\), Side \(-8\)/)
    expectPlain(asked.err)
    const mapping = file('mapping.json', '{"Stick":"club","Flight":"carry_m","Side":"offline_m"}')
    for (const words of [
      ['--columns', 'Stick=club,Flight=carry_m,Side=offline_m'],
      ['--mapping', mapping],
    ])
      expect(marramJson('pattern', player, '--shots', foreign, ...words).document.shots.used).toBe(46)
  })

  it.each<[string, string, readonly string[]]>([
    ['columns said twice', 'MAR-USAGE-002', ['--shots', shots, '--columns', 'a=club', '--mapping', shots]],
    [
      'a picture of a club the player does not have',
      'MAR-PLAN-003',
      ['--shots', shots, '--picture', join(folder, 'x.svg'), '--club', 'driver'],
    ],
    ['a hole without a course', 'MAR-USAGE-002', ['--shots', shots, '--hole', '4']],
    ['a club without a picture', 'MAR-USAGE-002', ['--shots', shots, '--club', '7-iron']],
    ['columns that mean nothing', 'MAR-SHOTS-002', ['--shots', shots, '--columns', 'club']],
    ['no shots', 'MAR-USAGE-001', []],
    ['a table that is not there', 'MAR-FILE-001', ['--shots', join(folder, 'nowhere.csv')]],
    ['a table without rows', 'MAR-SHOTS-017', ['--shots', file('empty.csv', HEADER)]],
    ['a table of nothing but faults', 'MAR-SHOTS-017', ['--shots', file('bad.csv', `${HEADER}\n,x,,1,,,,`)]],
    ['something that is no table', 'MAR-SHOTS-003', ['--shots', file('prose.csv', 'It rained\nall day')]],
  ])('refuses %s with %s', (_title, code, words) => {
    const { status, document } = marramJson('pattern', player, ...words)
    expect(status).toBe(2)
    expect(document.error.code).toBe(code)
    expectPlain(document.error.message)
  })
})
