import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { type Json, marram, marramJson } from './run-cli.ts'

// `marram score` as people and programs outside use it: README.md, docs/recap.md. Sources: Rules of Golf 2023, 3.2, 21 and 23; Rules
// of Handicapping 2024, Appendix C.

const folder = mkdtempSync(join(tmpdir(), 'marram-score-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const course = 'examples/sandrel-ness.course.geojson'
const player = (name: string): string => `examples/${name}.player.json`
/** A log that holds scores alone, from the first hole on. */
const scores = (name: string, all: readonly (number | 'pick up')[]): string => {
  const path = join(folder, `${name}.log.txt`)
  writeFileSync(
    path,
    `date 2026-07-23\ntee drift\n${all.map((one, hole) => `${hole + 1}: ${one}`).join('\n')}\n`,
  )
  return path
}
const fives: readonly number[] = Array(18).fill(5)

describe('marram score', () => {
  it('gives the better ball of a four-ball match, hole by hole, with the difference to the lowest handicap', () => {
    const words = [
      ...['score', course, '--play', 'four-ball', '--by', 'match'],
      ...['--player', player('tobin-skell'), '--round', scores('a', fives)],
      ...['--player', player('wren'), '--round', scores('b', ['pick up', ...fives.slice(1)])],
      ...['--opponent', player('aldous-brack'), '--opponent-round', scores('c', [...fives.slice(1), 4])],
      ...['--opponent', player('ysolde-marrin'), '--opponent-round', scores('d', [...fives.slice(1), 6])],
    ]
    const { status, document } = marramJson(...words)
    expect(status).toBe(0)
    expect(document).toMatchObject({
      schema: 'score/1',
      play: 'four-ball',
      by: 'match',
      allowance_percent: 90,
    })
    const balls: Json[] = document.sides.flatMap((side: Json) => side.balls)
    const lowest = Math.min(...balls.map((ball) => ball.playing_handicap))
    for (const ball of balls) {
      expect(ball.received).toBe(ball.playing_handicap - lowest)
      expect(ball.holes.reduce((sum: number, hole: Json) => sum + hole.received, 0)).toBe(ball.received)
    }
    // The side's count of a hole is its lowest net, and the balls that made it.
    for (const side of document.sides)
      for (const [hole, { counts, balls: by }] of side.holes.entries()) {
        const nets = side.balls.map((ball: Json) => ball.holes[hole].counts ?? Number.POSITIVE_INFINITY)
        expect(counts).toBe(Math.min(...nets))
        expect(by).toEqual(nets.flatMap((net: number, ball: number) => (net === counts ? [ball] : [])))
      }
    const page = marram(...words)
    expect(page.out).toMatch(/– +\(up −1\)/)
    expect(page.out).toContain('* counts for the side.')
    expect(page.out).toContain(`Tobin Skell and Wren: ${document.match.words}.`)
  })

  it('scores one ball of two partners, points, par and a maximum', () => {
    const round = ['--round', scores('e', ['pick up', ...fives.slice(1)])]
    const single = ['score', course, '--player', player('aldous-brack'), ...round]
    const pair = marramJson(
      ...single,
      '--player',
      player('tobin-skell'),
      '--play',
      'foursomes',
      '--by',
      'points',
    )
    expect(pair.document.allowance_percent).toEqual([50, 50])
    expect(pair.document.sides[0].balls).toHaveLength(1)
    const points = pair.document.sides[0].holes.reduce((sum: number, hole: Json) => sum + hole.counts, 0)
    expect(pair.document.sides[0].total).toBe(points)
    const most = marramJson(...single, '--by', 'maximum', '--maximum', 'double-par', '--gross')
    const [first] = most.document.sides[0].balls[0].holes
    expect(first.counts).toBe(2 * first.par)
    expect(most.document.sides[0].total).toBe(first.counts + 17 * 5)
    expect(marram(...single, '--by', 'par').out).toMatch(/(up|down|level with par) on 18 holes/)
    expect(marram(...single).out).toContain('no total, because no ball was holed out on hole 1')
  })

  it.each([
    ['MAR-SCORE-001', '--play', 'four-ball'],
    ['MAR-SCORE-001', '--by', 'match'],
    ['MAR-SCORE-003', '--tee', 'nowhere'],
    ['MAR-USAGE-002', '--play', 'trio'],
    ['MAR-USAGE-002', '--maximum', 'double-par'],
    ['MAR-USAGE-002', '--allowance', '101'],
  ])('refuses with %s what cannot be scored: %s %s', (code, ...words) => {
    const round = ['--round', scores('f', fives)]
    const run = marram('score', course, '--player', player('wren'), ...round, ...words)
    expect([run.status, run.err.includes(code)]).toEqual([2, true])
  })

  it('says that a card in stroke play which lacks holes is no score yet', () => {
    const of = (count: number): string =>
      marram(
        'score',
        course,
        '--player',
        player('wren'),
        '--round',
        scores(`${count}`, fives.slice(0, count)),
      ).out
    expect(of(17)).toMatch(/85 gross, \d+ net on 17 holes, so far: no score of 18 holes .*\(Rule 3\.3c\)/)
    expect(of(18)).not.toContain('so far')
    expect(of(9)).not.toContain('so far')
  })

  it('has the same match from either side, to the first hole that one of them has not logged', () => {
    const gap = join(folder, 'gap.log.txt')
    writeFileSync(gap, fives.flatMap((one, hole) => (hole === 4 ? [] : [`${hole + 1}: ${one}`])).join('\n'))
    const whole = scores('whole', Array(18).fill(4))
    const half = scores('half', Array(9).fill(4))
    const matchOf = (own: string, theirs: string): Json => {
      const words = ['score', course, '--by', 'match', '--gross', '--player', player('wren'), '--round', own]
      const opponent = ['--opponent', player('aldous-brack'), '--opponent-round', theirs]
      return marramJson(...words, ...opponent).document.match
    }
    for (const other of [gap, half]) {
      const [one, turned] = [matchOf(whole, other), matchOf(other, whole)]
      expect(turned.up).toBe(0 - one.up)
      expect(turned.holes.length).toBe(one.holes.length)
    }
    expect(matchOf(whole, gap).holes).toHaveLength(4)
  })

  it('has no score where no stroke was logged, and refuses a round that counts and is not closed', () => {
    const round = (name: string, more: object): string => {
      const path = join(folder, `${name}.round.json`)
      writeFileSync(path, JSON.stringify({ schema: 'round/1', ...more }))
      return path
    }
    const bare = round('bare', {
      holes: [{ ref: '1' }, { ref: '2', putts: 0 }, { ref: '3', strokes: [{}, {}, {}] }],
    })
    const words = ['score', course, '--gross', '--player', player('wren'), '--round']
    const { document } = marramJson(...words, bare)
    expect(document.sides[0].balls[0].holes.map(({ gross }: Json) => gross)).toEqual([null, null, 3])
    const open = round('open', {
      purpose: 'counting',
      closed: false,
      log: [],
      holes: [{ ref: '1', strokes: [{}] }],
    })
    expect(marram(...words, open)).toMatchObject({ status: 2, err: expect.stringContaining('MAR-ROUND-014') })
  })

  it('refuses the same round for two partners, and says where another course stands', () => {
    const round = scores('g', fives)
    const pair = ['--player', player('wren'), '--player', player('tobin-skell'), '--play', 'four-ball']
    const twice = marram('score', course, ...pair, '--round', round, '--round', round)
    expect([twice.status, twice.err.includes('MAR-ROUND-020')]).toEqual([2, true])
    const other = join(folder, 'other.round.json')
    const holes = [{ ref: '1', strokes: [{}, {}], putts: 2 }]
    writeFileSync(other, JSON.stringify({ schema: 'round/1', course: 'Elsewhere', tee: 'drift', holes }))
    const { document } = marramJson('score', course, '--player', player('wren'), '--round', other)
    expect(document.error).toMatchObject({ code: 'MAR-SCORE-002', where: `${other}: course` })
  })
})
