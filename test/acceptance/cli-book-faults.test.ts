import { execFileSync, spawn, spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { open } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { twoShort } from '../fixtures/two-short.ts'
import { environment } from './run-cli.ts'

// What is left of a book whose making is broken off: the file that was there, whole, and nothing beside it.

const folder = mkdtempSync(join(tmpdir(), 'marram-broken-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const path = (name: string): string => join(folder, name)

const BEFORE = 'what was there before'
const WORDS = ['book', path('course.geojson'), '--player', path('player.json'), '--out', path('card.pdf')]
writeFileSync(path('course.geojson'), JSON.stringify(twoShort()))
const CLUBS = [{ name: '9-iron', carry_m: 100 }]
writeFileSync(
  path('player.json'),
  JSON.stringify({
    schema: 'player/1',
    name: 'Ebbe',
    hand: 'left',
    handicapIndex: 18,
    clubs: CLUBS,
    bag: 'as-listed',
  }),
)

function expectUntouched(): void {
  expect(readFileSync(path('card.pdf'), 'utf8')).toBe(BEFORE)
  expect(readdirSync(folder).filter((name) => name.includes('.part'))).toEqual([])
}

const threadsOf = (pid: number | undefined): number => readdirSync(`/proc/${pid}/task`).length

describe('a book that is broken off', () => {
  it.skipIf(!existsSync('/proc/self/task'))(
    'by Ctrl-C in the middle of planning leaves the file that was there, and says so',
    async () => {
      writeFileSync(path('card.pdf'), BEFORE)
      // The day comes through a pipe, so that the moment between reading and planning is known.
      execFileSync('mkfifo', [path('day.json')])
      const child = spawn(process.execPath, ['bin/marram.js', ...WORDS, '--day', path('day.json')], {
        env: environment,
      })
      let said = ''
      child.stderr.on('data', (text: Buffer) => {
        said += text.toString()
      })
      const closed = new Promise((resolve) => child.on('close', resolve))
      const day = await open(path('day.json'), 'w')
      const threads = threadsOf(child.pid)
      await day.writeFile('{ "schema": "day/1" }')
      await day.close()
      // Planning has begun with the threads that plan.
      await expect.poll(() => threadsOf(child.pid), { interval: 5 }).toBeGreaterThan(threads)
      child.kill('SIGINT')
      expect(await closed).toBe(2)
      expect(said).toContain('MAR-WORK-001')
      expectUntouched()
    },
  )

  it('by a disk with no room for it leaves the file that was there, and says so', () => {
    writeFileSync(path('card.pdf'), BEFORE)
    // The system itself refuses what lies beyond 4 kB of a file (EFBIG), as a full disk does in the middle of writing.
    const limited = `trap '' XFSZ; ulimit -f 8; exec "$0" bin/marram.js "$@"`
    const words = [...WORDS, '--hole', '1', '--draws', '0', '--workers', '0']
    const run = spawnSync('bash', ['-c', limited, process.execPath, ...words], {
      env: environment,
      encoding: 'utf8',
    })
    expect(run.status).toBe(2)
    expect(run.stderr).toMatch(/MAR-FILE-006|cannot be written \((?:EFBIG|ENOSPC)\)/)
    expectUntouched()
  })
})
