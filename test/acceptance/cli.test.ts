import { spawn, spawnSync } from 'node:child_process'
import {
  chmodSync,
  closeSync,
  existsSync,
  mkdtempSync,
  openSync,
  readFileSync,
  rmSync,
  truncateSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { environment, type Json, marram, marramJson } from './run-cli.ts'

// The promises of the command line to people and programs outside: README.md, docs/errors.md.

const COURSE = 'examples/sandrel-ness.course.geojson'
const folder = mkdtempSync(join(tmpdir(), 'marram-cli-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const file = (name: string, content: string | Uint8Array): string => {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}

/** Every expected failure: exit code 2, one line with the code, nothing on standard output, no stack trace; and the same in JSON once a code. */
function expectFailure(code: string, ...words: readonly string[]): string {
  const run = marram(...words)
  expect(run.err).toMatch(new RegExp(`^${code} .+\n$`))
  expect(run.err).not.toMatch(/\n\s+at /)
  expect(run.out).toBe('')
  expect(run.status).toBe(2)
  if (saidInJson.has(code)) return run.err
  saidInJson.add(code)
  const json = marramJson(...words)
  expect(json.status).toBe(2)
  expect(Object.keys(json.document)).toEqual(['error'])
  expect(json.document.error.code).toBe(code)
  expect(Object.keys(json.document.error)).toEqual(['code', 'message', 'where'])
  return run.err
}
const saidInJson = new Set<string>()

describe('marram', () => {
  it('says its version and its help', () => {
    const version = marram('--version')
    expect(version).toEqual({ status: 0, out: expect.stringMatching(/^\d+\.\d+\.\d+\n$/), err: '' })
    const help = marram('--help')
    expect(help.status).toBe(0)
    for (const command of ['import', 'check', 'measure', 'plan', 'serve'])
      expect(help.out).toMatch(new RegExp(`^  ${command} `, 'm'))
    expect(marram('measure', '--help').out).toContain('--hole <ref>')
    expect(marram('club', '--help').out).not.toContain('[]')
    expect(marramJson('--version').document).toEqual({ version: version.out.trim() })
    expect(marramJson('measure', '--help').document.help).toContain('--hole <ref>')
  })

  it('names words it does not know and the ones that were meant', () => {
    expectFailure('MAR-USAGE-001')
    expect(expectFailure('MAR-USAGE-001', 'mesure', COURSE)).toContain('measure')
    expect(expectFailure('MAR-USAGE-001', 'measure', COURSE, '--hol', '7')).toContain('--hole')
    expect(expectFailure('MAR-USAGE-001', 'measure', COURSE)).toContain('--hole')
    expectFailure('MAR-USAGE-001', 'measure')
    expectFailure('MAR-USAGE-001', 'measure', COURSE, 'another', '--hole', '7')
    expectFailure('MAR-USAGE-001', 'measure', COURSE, '--hole')
    expectFailure('MAR-USAGE-002', 'measure', COURSE, '--hole', '7', '--units', 'furlongs')
    expectFailure('MAR-USAGE-002', 'check', COURSE, '--units', 'furlongs')
  })

  it('says which file cannot be read and why', () => {
    expectFailure('MAR-FILE-001', 'measure', join(folder, 'nothing.geojson'), '--hole', '7')
    expectFailure('MAR-FILE-002', 'measure', folder, '--hole', '7')
    expectFailure('MAR-FILE-003', 'measure', file('empty.geojson', ''), '--hole', '7')
    expectFailure(
      'MAR-FILE-005',
      'measure',
      file(
        'binary.osm',
        Uint8Array.from({ length: 999 }, (_, i) => i % 7),
      ),
      '--hole',
      '7',
    )
    expectFailure('MAR-FILE-007', 'measure', file('words.txt', 'a few plain words\n'), '--hole', '7')
    const large = file('large.osm', '<osm/>')
    truncateSync(large, 200_000_000)
    expectFailure('MAR-FILE-004', 'measure', large, '--hole', '7')
  })

  it.runIf(existsSync('/dev/full'))('says so when its answer finds the disk full', () => {
    const full = openSync('/dev/full', 'w')
    const run = spawnSync(process.execPath, ['bin/marram.js', 'check', COURSE], {
      encoding: 'utf8',
      env: environment,
      stdio: ['ignore', full, 'pipe'],
    })
    closeSync(full)
    expect([run.status, run.stderr]).toEqual([2, 'MAR-FILE-006 The answer cannot be written (ENOSPC).\n'])
  })

  it('says so when a file cannot be read', () => {
    const forbidden = file('forbidden.geojson', '{}')
    chmodSync(forbidden, 0)
    // The superuser may read every file, but not the unmapped memory of a process.
    expectFailure(
      'MAR-FILE-002',
      'measure',
      process.getuid?.() === 0 ? '/proc/self/mem' : forbidden,
      '--hole',
      '7',
    )
  })
})

describe('marram measure', () => {
  it('gives a hole as numbers, in SI for programs', () => {
    const { status, document } = marramJson('measure', COURSE, '--hole', '7')
    expect(status).toBe(0)
    expect(document.schema).toBe('measure/1')
    expect(document.hole.ref).toBe('7')
    expect(document.hole.length_m).toBeGreaterThan(250)
    expect(document.hole.hazards.length).toBeGreaterThan(0)
    for (const hazard of document.hole.hazards) expect(hazard.far_m).toBeGreaterThanOrEqual(hazard.reach_m)
    const { front_m, middle_m, back_m } = document.hole.green
    expect(front_m).toBeLessThan(middle_m)
    expect(middle_m).toBeLessThan(back_m)
  })

  it('speaks yards to people unless asked for metres', () => {
    const { document } = marramJson('measure', COURSE, '--hole', '7')
    const metres = document.hole.length_m
    expect(marram('measure', COURSE, '--hole', '7').out).toContain(`${Math.round(metres / 0.9144)} yd`)
    expect(marram('measure', COURSE, '--hole', '7', '--units', 'metres').out).toContain(
      `${Math.round(metres)} m`,
    )
    // JSON is always SI.
    expect(marramJson('measure', COURSE, '--hole', '7', '--units', 'yards').document).toEqual(document)
  })

  it('says how long the hole plays on a day and why, and when that must not be used', () => {
    const day = 'examples/westerly.day.json'
    const { document } = marramJson('measure', COURSE, '--hole', '7', '--day', day)
    // The seventh runs to the east-south-east, so that a westerly blows behind.
    expect(document.plays.plays_m).toBeLessThan(document.hole.length_m)
    expect(document.plays.byWind_m).toBeLessThan(0)
    const { out } = marram('measure', COURSE, '--hole', '7', '--day', day)
    expect(out).toContain(`Plays ${Math.round(document.plays.plays_m / 0.9144)} yd: wind −`)
    expect(out).toContain('Rule 4.3a')
    expect(out).toMatch(/The green falls \d\.\d per cent towards its front, by \d+ spot heights\./)
    expectFailure('MAR-FILE-001', 'measure', COURSE, '--hole', '7', '--day', 'nowhere.day.json')
  })

  it('says which holes and tees there are when asked for another', () => {
    expect(expectFailure('MAR-COURSE-001', 'measure', COURSE, '--hole', '77')).toContain('18')
    expectFailure('MAR-COURSE-002', 'measure', COURSE, '--hole', '7', '--tee', 'nobody')
  })
})

describe('marram import', () => {
  it('writes a course file that can be measured, and reports every element', () => {
    const out = join(folder, 'lines.geojson')
    const { status, document } = marramJson(
      'import',
      'test/fixtures/courses/purgatory-holes.geojson',
      '--out',
      out,
    )
    expect(status).toBe(0)
    expect(document.schema).toBe('import/1')
    expect(document.report.holes).toHaveLength(18)
    const { total, used, ignored, needsPerson } = document.report.elements
    expect(used + ignored + needsPerson).toBe(total)
    expect(document.report.missing.join(' ')).toContain('green')
    expect(marramJson('measure', out, '--hole', '1').document.hole.length_m).toBeCloseTo(
      document.report.holes[0].length_m,
      3,
    )
  })

  it('lays heights under a course, and says that the tile is too coarse for greens', () => {
    const out = join(folder, 'heights.geojson')
    const at = (lon: number, tags: object): object => ({
      type: 'Feature',
      properties: tags,
      geometry: { type: 'Point', coordinates: [lon, 55.9629] },
    })
    const line = {
      type: 'LineString',
      coordinates: [
        [-2.673, 55.9629],
        [-2.668, 55.9629],
      ],
    }
    const source = file(
      'one-tee.geojson',
      JSON.stringify({
        type: 'FeatureCollection',
        features: [
          { type: 'Feature', properties: { golf: 'hole', ref: '1', par: '4' }, geometry: line },
          at(-2.673, { golf: 'tee', tee: 'white', ref: '1' }),
        ],
      }),
    )
    const { document } = marramJson(
      'import',
      source,
      '--out',
      out,
      '--elevation',
      'test/fixtures/courses/N55W003.hgt.zip',
    )
    expect(document.elevation).toMatchObject({ source: 'N55W003.hgt', filled: { tees: 1, greens: 0 } })
    expect(document.faults.map(({ code }: Json) => code)).toContain('MAR-ELEV-008')
    const tee = JSON.parse(readFileSync(out, 'utf8')).features.find(
      ({ properties }: Json) => properties.golf === 'tee',
    )
    // The ground where the line starts: the height of the tile there as its supplier states it.
    expect(tee.properties['marram:elevation_m']).toBeCloseTo(209.1, 1)
  })

  it('fails cleanly when it has nowhere to write, and leaves nothing behind', () => {
    expectFailure('MAR-FILE-006', 'import', COURSE, '--out', join(folder, 'no', 'such', 'folder.geojson'))
    expectFailure('MAR-USAGE-001', 'import', COURSE)
    const out = join(folder, 'x.geojson')
    const elevation = file('heights.txt', 'no heights')
    expectFailure('MAR-ELEV-001', 'import', COURSE, '--out', out, '--elevation', elevation)
    expect(existsSync(out)).toBe(false)
  })
})

describe('marram check', () => {
  it('finds nothing in the example course', () => {
    const { status, document } = marramJson('check', COURSE)
    expect(status).toBe(0)
    expect(document).toMatchObject({ schema: 'check/1', holes: 18 })
    expect(document.faults.filter((fault: Json) => fault.severity === 'error')).toEqual([])
    expect(marram('check', COURSE).out).toMatch(/18 holes/)
  })

  it('says what is wrong with a course, where and what to do, and ends with 1', () => {
    const square = (size: number): number[][] => [
      [0, 0],
      [size, 0],
      [size, size],
      [0, size],
      [0, 0],
    ]
    const path = file(
      'one.geojson',
      JSON.stringify({
        type: 'FeatureCollection',
        features: [
          {
            type: 'Feature',
            properties: { golf: 'hole', ref: '1', par: '4' },
            geometry: {
              type: 'LineString',
              coordinates: [
                [0, 0],
                [0, 0.003],
              ],
            },
          },
          {
            type: 'Feature',
            properties: { golf: 'hole', ref: '1', par: '4' },
            geometry: {
              type: 'LineString',
              coordinates: [
                [0.001, 0],
                [0.001, 0.003],
              ],
            },
          },
          {
            type: 'Feature',
            properties: { golf: 'green' },
            geometry: { type: 'Polygon', coordinates: [square(0.0002)] },
          },
        ],
      }),
    )
    const { status, document } = marramJson('check', path)
    expect(status).toBe(1)
    expect(document.faults.some((fault: Json) => fault.severity === 'error')).toBe(true)
    for (const fault of document.faults) {
      expect(fault.code).toMatch(/^MAR-[A-Z]+-\d{3}$/)
      expect(fault.advice).not.toBe('')
    }
    const page = marram('check', path)
    expect(page.status).toBe(1)
    expect(page.out).toMatch(/^error MAR-/m)
  })
})

describe('marram serve', () => {
  it('says where the hole desk is, answers there, and stops when told to', async () => {
    const desk = spawn(
      process.execPath,
      ['bin/marram.js', 'serve', '--json', '--port', '4890', '--store', join(folder, 'desk.db')],
      { env: environment },
    )
    const first = await new Promise<string>((resolve) =>
      desk.stdout.once('data', (chunk) => resolve(String(chunk))),
    )
    const { address } = JSON.parse(first) as { address: string }
    const answer = await fetch(`${address}api/courses`)
    expect(answer.status).toBe(200)
    expect(((await answer.json()) as Json).courses.map((course: Json) => course.name)).toContain(
      'Sandrel Ness',
    )
    const code = await new Promise((resolve) => {
      desk.once('exit', resolve)
      desk.kill('SIGTERM')
    })
    expect(code).toBe(0)
  })

  it('refuses a port that is none', () => {
    expectFailure('MAR-USAGE-002', 'serve', '--port', 'seven')
    expectFailure('MAR-USAGE-002', 'serve', '--port', '70000')
  })
})
