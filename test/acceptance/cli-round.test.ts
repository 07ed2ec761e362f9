import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { environment, type Json, marram, marramJson } from './run-cli.ts'

// Rounds and several players as people and programs outside use them: README.md.

const folder = mkdtempSync(join(tmpdir(), 'marram-round-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const file = (name: string, document: unknown): string => {
  const path = join(folder, name)
  writeFileSync(path, JSON.stringify(document))
  return path
}

const DEGREE = 111_320
/** East and north in metres of a place in the Atlantic on the equator → longitude and latitude, to a few millimetres. */
const place = ([east, north]: readonly [number, number]): number[] => [-30 + east / DEGREE, north / DEGREE]

/** Short holes side by side, 300 m apart, running north; the green of one may be missing. */
function shortHoles(name: string, lengths: readonly number[], greenless: string | null = null): string {
  const features = lengths.flatMap((length, index) => {
    const [ref, east] = [String(index + 1), 300 * index]
    const corners: readonly (readonly [number, number])[] = [
      [east - 9, length - 9],
      [east + 9, length - 9],
      [east + 9, length + 9],
      [east - 9, length + 9],
      [east - 9, length - 9],
    ]
    const feature = (id: string, properties: object, type: string, coordinates: unknown): object => ({
      type: 'Feature',
      id: `${id}-${ref}`,
      properties,
      geometry: { type, coordinates },
    })
    return [
      feature('line', { golf: 'hole', ref, par: '3' }, 'LineString', [
        place([east, 0]),
        place([east, length]),
      ]),
      feature('tee', { golf: 'tee', tee: ref === '1' ? 'short' : 'long', ref }, 'Point', place([east, 0])),
      ...(ref === greenless ? [] : [feature('green', { golf: 'green' }, 'Polygon', [corners.map(place)])]),
    ]
  })
  return file(`${name}.geojson`, {
    type: 'FeatureCollection',
    marram: { schema: 'course/1', name: 'Three Short' },
    features,
  })
}

const clubs = [
  { name: '9-iron', carry_m: 100 },
  { name: 'sand-wedge', carry_m: 70 },
]
const player = (name: string, handicapIndex: number): string =>
  file(`${name}.player.json`, {
    schema: 'player/1',
    name,
    hand: 'right',
    handicapIndex,
    clubs,
    bag: 'as-listed',
  })
const EBB = player('ebb', 8)
const FLO = player('flo', 30)
const COURSE = shortHoles('three-short', [80, 95, 110], '2')
const QUICK = ['--no-flips', '--draws', '0']
const round = (...words: readonly string[]): readonly string[] => [
  'plan',
  COURSE,
  '--player',
  EBB,
  '--hole',
  'all',
  ...QUICK,
  ...words,
]

/** A document without what differs from run to run. */
function timeless(document: Json): Json {
  return JSON.parse(JSON.stringify(document, (key, value) => (key === 'milliseconds' ? 0 : value)))
}

describe('marram plan --hole all', () => {
  it('plans every hole in its order, and says which has no plan and why', () => {
    const { status, document } = marramJson(...round('--workers', '2'))
    expect(status).toBe(1)
    expect(document).toMatchObject({ schema: 'round-plan/1', course: 'Three Short', player: 'ebb' })
    expect(document.plans.map((plan: Json) => plan.hole.ref)).toEqual(['1', '3'])
    expect(document.unplanned).toEqual([
      { hole: '2', code: 'MAR-PLAN-001', message: expect.any(String), where: 'hole 2' },
    ])
    const [first, third] = document.plans.map((plan: Json) => plan.value.strokes)
    expect(document.value.strokes).toBeCloseTo(first + third, 12)
    const totals = Object.entries(document.scores as Record<string, number>)
    expect(totals.reduce((sum, [, chance]) => sum + chance, 0)).toBeCloseTo(1, 6)
    expect(totals.reduce((sum, [total, chance]) => sum + Number(total) * chance, 0)).toBeCloseTo(
      document.value.strokes,
      1,
    )
    const alone = marramJson('plan', COURSE, '--player', EBB, '--hole', '3', ...QUICK).document
    expect(timeless(document.plans[1])).toEqual(timeless(alone))
  })

  it('prints the holes as one table, with the sum', () => {
    const run = marram(...round('--units', 'metres'))
    expect(run).toMatchObject({ status: 1, err: '' })
    expect(run.out).toMatch(/^Three Short, ebb\n\nhole +par +m +club/)
    expect(run.out).toMatch(/^ +1 +3 +\d+ .+\n +3 +3 +\d+ /m)
    expect(run.out).toMatch(/^Hole 2 has no plan: MAR-PLAN-001 /m)
    expect(run.out).toMatch(/^Expected score for 2 holes, par 6, \d+ m: \d\.\d$/m)
    expect(run.out).toMatch(/^Breaks \d+ in \d+ rounds of 100, \d+ in \d+[^\n]* is not counted\.$/m)
  })
})

describe('marram plan for several players', () => {
  it('answers with one document, a round a player, or with a line a hole and player: the same to the last digit whatever number of threads works on it', () => {
    const here = marramJson(...round('--player', FLO, '--workers', '0'))
    const { document } = here
    expect(here.status).toBe(1)
    expect(document).toMatchObject({ schema: 'round-plans/1', course: 'Three Short' })
    expect(document.rounds.map((one: Json) => [one.schema, one.player, one.playerFile])).toEqual([
      ['round-plan/1', 'ebb', EBB],
      ['round-plan/1', 'flo', FLO],
    ])
    const [ebb, flo] = document.rounds
    expect(flo.value.strokes).toBeGreaterThan(ebb.value.strokes)
    expect(ebb.wins.gross + flo.wins.gross).toBeCloseTo(1, 6)
    expect(ebb.wins.gross).toBeGreaterThan(flo.wins.gross)
    // Two holes are no card.
    expect(ebb.wins.net).toBeNull()

    const run = marram(...round('--player', FLO, '--workers', '3', '--json-lines'))
    expect(run).toMatchObject({ status: 1, err: '' })
    const lines: Json[] = run.out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line))
    expect(lines).toHaveLength(6)
    for (const line of lines) {
      const own = line.player === 'ebb' ? ebb : flo
      expect(line).toMatchObject({ schema: 'plan-line/1', playerFile: own.playerFile })
      if (line.hole === '2') expect(line.error).toMatchObject({ code: 'MAR-PLAN-001', where: 'hole 2' })
      else expect(timeless(own.plans)).toContainEqual(timeless(line.plan))
    }
    const places = lines.map((line) => `${line.player} ${line.hole}`)
    expect(new Set(places).size).toBe(6)
  })

  it('plans one hole for each and says who is expected to need what', () => {
    const run = marram('plan', COURSE, '--player', EBB, '--player', FLO, '--hole', '1', ...QUICK)
    expect(run).toMatchObject({ status: 0, err: '' })
    expect(run.out).toMatch(/^player +holes +score +wins %\nebb +1 +\d\.\d +\d+\nflo +1 +\d\.\d +\d+$/m)
  })

  it.each([
    ['both forms of JSON', 'MAR-USAGE-002', round('--json-lines', '--json')],
    [
      'a picture of several players',
      'MAR-USAGE-002',
      [...round('--player', FLO).map((word) => (word === 'all' ? '1' : word)), '--picture', 'x.svg'],
    ],
    ['workers that are none', 'MAR-USAGE-002', round('--workers', 'many')],
    ['more workers than anyone has', 'MAR-USAGE-002', round('--workers', '1000')],
    ['a player who is missing', 'MAR-FILE-001', round('--player', 'no.json')],
    [
      'a hole that is none',
      'MAR-COURSE-001',
      ['plan', COURSE, '--player', EBB, '--player', FLO, '--hole', '9'],
    ],
  ])('refuses %s with %s', (_what, code, words) => {
    const run = marram(...words)
    expect(run.status).toBe(2)
    expect(`${run.out}${run.err}`).toContain(code)
  })
})

describe('a round that is interrupted', () => {
  it('ends with what is done, and says what is not', async () => {
    const many = shortHoles(
      'many',
      Array.from({ length: 12 }, (_, index) => 80 + 3 * index),
    )
    const words = ['plan', many, '--player', EBB, '--hole', 'all', ...QUICK, '--workers', '1', '--json-lines']
    const child = spawn(process.execPath, ['bin/marram.js', ...words], { env: environment })
    let out = ''
    child.stdout.on('data', (text: Buffer) => {
      if (out === '') child.kill('SIGINT')
      out += text.toString()
    })
    const status = await new Promise((resolve) => child.on('close', resolve))
    const lines: Json[] = out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line))
    expect(status).toBe(1)
    expect(lines).toHaveLength(12)
    expect(lines[0].plan.hole.ref).toBe('1')
    expect(lines.at(-1).error.code).toBe('MAR-WORK-001')
  })
})
