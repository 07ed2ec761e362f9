import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { type Json, marram, marramJson } from './run-cli.ts'

// `marram relief` as people and programs outside use it: README.md, docs/errors.md.

const folder = mkdtempSync(join(tmpdir(), 'marram-relief-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const relief = (...words: readonly string[]): readonly string[] => [
  'relief',
  'examples/sandrel-ness.course.geojson',
  '--player',
  'examples/wren.player.json',
  '--hole',
  '11',
  ...words,
]

describe('marram relief', () => {
  // Hole 11 has yellow water from 40 m to 104 m across the line: two ways out under penalty (17.1d), and as it lies.
  it('answers with relief/1: every option with clause, spot, area and cost', () => {
    const { status, document } = marramJson(...relief('--ball', '0,80'))
    expect(status).toBe(0)
    expect(document).toMatchObject({
      schema: 'relief/1',
      hole: { ref: '11' },
      rules: { edition: 'Rules of Golf, 2023', in_force_from: '2023-01-01', local_rules: ['E-5'] },
      situation: { what: 'penalty-yellow', ground: 'penalty-yellow', ball: { x_m: 0, y_m: 80 } },
      empty: [],
    })
    expect(document.situation.crossing.y_m).toBeGreaterThan(35)
    expect(document.situation.crossing.y_m).toBeLessThan(45)
    expect(document.options.map((one: Json) => one.clause).sort()).toEqual(['17.1b', '17.1d(1)', '17.1d(2)'])
    for (const option of document.options) {
      expect(option.spot.to_pin_m).toBeGreaterThan(0)
      if (option.clause === '17.1b') expect(option.strokes).toBeNull()
      else expect(option.strokes).toBeCloseTo(option.from_spot + 1, 9)
    }
  })

  it('says it in plain words with the edition and whose word counts', () => {
    const picture = join(folder, 'lost.svg')
    const run = marram(...relief('--lost', '--picture', picture))
    expect(run).toMatchObject({ status: 0, err: '' })
    expect(run.out).toMatch(/stroke and distance \(Rule 18\.2\): one penalty stroke\. There is no other/)
    expect(run.out).toContain('Rules of Golf, January 2023')
    expect(run.out).toMatch(/Committee.*referee/)
    expect(run.out).not.toMatch(/NaN|undefined|\[object/)
    expect(readFileSync(picture, 'utf8')).toMatch(/^<svg [\s\S]*Lost ball[\s\S]*stroke and distance/)
  })

  it.each<[string, string, readonly string[]]>([
    ['a ball off the survey', 'MAR-PLAN-004', ['--ball', '900,10']],
    ['a ball lost and out', 'MAR-USAGE-002', ['--ball', '0,80', '--lost', '--out']],
    ['no ball at all', 'MAR-RELIEF-002', []],
    ['a place that is none', 'MAR-USAGE-002', ['--ball', 'there']],
    ['an unplayable ball in water', 'MAR-RELIEF-004', ['--ball', '0,80', '--unplayable']],
    ['a ball out that is in', 'MAR-RELIEF-003', ['--ball', '0,20', '--out']],
    ['a crossing in mid-fairway', 'MAR-RELIEF-007', ['--crossed', '0,15', '--out']],
  ])('refuses %s with %s', (_title, code, words) => {
    const { status, document } = marramJson(...relief(...words))
    expect(status).toBe(2)
    expect(document.error.code).toBe(code)
    expect(document.error.message).toMatch(/\.$/)
  })
})
