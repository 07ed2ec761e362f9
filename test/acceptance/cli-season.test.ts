import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { SHORT_HOLES, THREE_CLUBS } from '../fixtures/short-holes.ts'
import { bytesOf, canReadPdf, textOf } from './printed-pages.ts'
import { type Json, marram, marramJson } from './run-cli.ts'

// `marram season` and `marram practice` as people and programs outside use them: README.md, docs/recap.md.

const folder = mkdtempSync(join(tmpdir(), 'marram-season-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const file = (name: string, content: string): string => {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}
const course = file('short.csv', SHORT_HOLES)
const player = file('three.player.json', THREE_CLUBS)
const log = (day: string, first: string): string =>
  file(
    `${day}.log.txt`,
    `date ${day}\nunit m\n1: ${first} / 7i g-4 / 1 putt\n2: 5w r-30 / sw g-6 / 2 putts\n`,
  )
const common = [course, '--player', player, '--workers', '0'] as const

describe('marram season', () => {
  const rounds = ['--round', log('2026-05-02', '7i f-110'), '--round', log('2026-05-09', 'sw f-130')]

  it('answers with season/1: rounds that add up, and no fault named of four holes', () => {
    const { status, document } = marramJson('season', ...common, ...rounds)
    expect(status).toBe(0)
    expect(document).toMatchObject({ schema: 'season/1', rounds: 2, holes: 4, without_day: 2, findings: [] })
    expect(Math.abs(document.over - document.decision - document.execution - document.luck)).toBeLessThan(
      1e-9,
    )
    // Two ways of choosing hold all that the choices cost.
    const chosen = document.choosing.reduce((sum: number, one: Json) => sum + one.strokes_a_round, 0)
    expect(chosen).toBeCloseTo(document.decision, 9)
    const putts = document.parts.filter(({ part }: Json) => part.endsWith('putts'))
    expect(putts.map(({ count }: Json) => count)).toEqual([4, 4])
    const page = marram('season', ...common, ...rounds)
    expect(page.out).toContain('Nothing stands out that is more than chance.')
    expect(page.out).toContain('2 rounds, 4 holes')
  })

  it('says what changed against the season before, and that four holes are too few to tell', () => {
    const [first, second] = rounds.filter((word) => word !== '--round') as [string, string]
    const words = ['--round', second, '--before', first]
    const { status, document } = marramJson('season', ...common, ...words)
    expect(status).toBe(0)
    expect(document).toMatchObject({ rounds: 1, holes: 2, change: { rounds_before: 1 } })
    expect(document.change.changes.map(({ what }: Json) => what).slice(0, 2)).toEqual(['all', 'choices'])
    for (const { verdict, low, strokes, before, now } of document.change.changes) {
      expect([verdict, low]).toEqual(['few', null])
      expect(now - before).toBeCloseTo(strokes, 9)
    }
    const page = marram('season', ...common, ...words)
    expect(page.out).toContain(
      'Too few rounds to tell what changed: one round in the season before and one round now.',
    )
    const twice = marram('season', ...common, '--round', first, '--before', first)
    expect([twice.status, twice.err.includes('MAR-ROUND-020')]).toEqual([2, true])
  })

  it('refuses a round that is given twice, and keeps the rest of one with a hole that is not there', () => {
    const twice = marram('season', ...common, ...rounds, '--round', rounds[1] as string)
    expect(twice.status).toBe(2)
    expect(twice.err).toContain('MAR-ROUND-020')
    const other = file('other.log.txt', 'unit m\n1: 7i f-110 / 7i g-4 / 1 putt\n9: 7i g-3 / 2 putts\n')
    const { status, document } = marramJson('season', ...common, '--round', other)
    expect(status).toBe(1)
    expect(document).toMatchObject({ rounds: 1, holes: 1 })
    expect(document.faults[0]).toMatchObject({ code: 'MAR-COURSE-001' })
    expect(document.faults[0].place).toContain('other.log.txt')
  })
})

describe('marram recap of a match', () => {
  it('says how two rounds stood, and asks for both the other player and the other round', () => {
    const [own, other] = [log('2026-06-01', '7i f-110'), log('2026-06-02', '7i f-110 / 7i f-100')]
    const against = ['--opponent', player, '--opponent-round', other]
    const { document } = marramJson('recap', ...common, '--round', own, ...against)
    // One hole won and one tied, from tees that nobody rated: level.
    expect(document.match).toMatchObject({ up: 1, left: 0, isOver: true, received: 0 })
    expect(document.card).toBeNull()
    const half = marram('recap', ...common, '--round', own, '--opponent', player)
    expect([half.status, half.err.includes('MAR-USAGE-002')]).toEqual([2, true])
  })
})

describe('the sheets of a round, a season and practice', () => {
  const round = log('2026-05-16', '7i f-110')
  it.skipIf(!canReadPdf).each([
    [
      'recap',
      ['--round', round],
      ['From plan to score', 'expected, with the plan', 'Choices that cost most'],
    ],
    ['season', ['--round', round], ['Nothing stands out', 'Struck against the profile']],
    ['practice', ['--hole', '1', '--weeks', '4'], ['Re-test in 4 weeks', 'the professional’s own']],
  ])('%s is written as a page with every sentence', (command, words, sentences) => {
    const path = join(folder, `${command}.pdf`)
    const run = marram(command, ...common, ...words, '--out', path, '--paper', 'letter')
    expect(run.status, run.err).toBe(0)
    expect(run.out).toContain(path)
    const text = textOf(bytesOf(path)).replace(/\s+/g, ' ')
    for (const sentence of sentences) expect(text).toContain(sentence)
    if (command !== 'practice') expect(text).toContain('Rule 4.3a')
  })

  it('are refused before any work where they cannot be written', () => {
    const there = ['recap', ...common, '--round', round]
    expect(marram(...there, '--out', join(folder, 'none', 'x.pdf')).err).toContain('MAR-FILE-006')
    expect(marram(...there, '--out', join(folder, 'x.pdf'), '--paper', 'a3').err).toContain('MAR-USAGE-002')
  })
})

describe('marram practice', () => {
  it('answers with practice-plan/1: parts in order, the professional’s own drill, a dated re-test', () => {
    const notes = file(
      'own.practice.json',
      '{"schema":"practice/1","rates":{"short-game":0.05},"drills":{"short-game":"one ball, nine holes of chips"}}',
    )
    const words = [
      'practice',
      ...common,
      '--hole',
      '1',
      '--from',
      '2026-11-27',
      '--weeks',
      '4',
      '--notes',
      notes,
    ]
    const { status, document } = marramJson(...words)
    expect(status).toBe(0)
    expect(document).toMatchObject({ schema: 'practice-plan/1', holes: 1, hours: 10, retest: '2026-12-25' })
    const hours = document.parts.map((one: Json) => one.strokes_an_hour)
    expect(hours).toEqual(hours.toSorted((a: number, b: number) => b - a))
    expect(document.items[0]).toMatchObject({ part: 'short-game', drill: 'one ball, nine holes of chips' })
    expect(marram(...words).out).toContain('Re-test on 2026-12-25: the short-game stations of the test day.')
  })

  it.each([
    [['--from', '2026-11-31'], 'MAR-USAGE-002'],
    [['--hours', '0'], 'MAR-USAGE-002'],
    [['--notes', 'missing.json'], 'MAR-FILE-001'],
    [['--hole', '9'], 'MAR-COURSE-001'],
  ])('refuses %j', (words, code) => {
    const { status, err } = marram('practice', ...common, ...words)
    expect(status).toBe(2)
    expect(err).toContain(code)
  })
})
