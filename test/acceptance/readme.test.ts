import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { shownCommands } from '../../tools/readme-commands.ts'
import { marram } from './run-cli.ts'

// What the README promises holds: its commands run, its links lead somewhere, its first words say the job.

const page = readFileSync('README.md', 'utf8')

describe('README', () => {
  it('opens with the job in one paragraph, then the two commands', () => {
    const [first = '', ...others] = page.split('\n\n').filter((block) => !block.startsWith('#'))
    expect(first).toMatch(/^Marram plans a golf hole for one player\./)
    expect(others[0]).toContain('npm start')
    expect(others[0]).toContain('npm test')
    const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as {
      scripts: Record<string, string>
    }
    expect(scripts).toMatchObject({ start: 'node tools/start.mjs', test: 'node tools/test.mjs' })
  })

  const commands = shownCommands(page)
  it('shows commands with their output', () => expect(commands.length).toBeGreaterThan(0))
  it.each(commands.map((command) => [command.words.join(' '), command] as const))(
    'marram %s still prints what is shown',
    (_title, { words, output }) => {
      const run = marram(...words)
      expect(run).toMatchObject({ status: 0, err: '' })
      const [shown, now] = [output, run.out]
      const advice = 'npm run readme writes down what it prints now'
      expect(titles(now), advice).toEqual(titles(shown))
      if (words[0] === 'pattern') {
        const [carries, carriesNow] = [learnedCarries(shown), learnedCarries(now)]
        expect(carries.size, advice).toBeGreaterThan(3)
        for (const [club, yards] of carries)
          expect(Math.abs((carriesNow.get(club) ?? 0) - yards), `${club}: ${advice}`).toBeLessThan(3)
        return
      }
      const [before, after] = [clubScores(shown), clubScores(now)]
      // A page without scores says nothing that a finer model would move: it stands as it is printed.
      if (before.size === 0) return expect(now, advice).toBe(shown)
      expect(before.size, advice).toBeGreaterThan(3)
      // A tenth of a stroke is what the page may lag behind the model; a reader would not act on less.
      for (const [club, score] of before)
        expect(Math.abs((after.get(club) ?? 0) - score), `${club}: ${advice}`).toBeLessThan(0.1)
    },
  )

  it.each(['README.md', 'ARCHITECTURE.md', 'CONTRIBUTING.md', 'CHANGELOG.md', 'docs/life-of-a-plan.md'])(
    'the links of %s lead somewhere',
    (path) => {
      const links = [...readFileSync(path, 'utf8').matchAll(/\]\(([^)#]+)(#[^)]*)?\)/g)].map(
        ([, target = '']) => target,
      )
      expect(
        links.filter((target) => !/^https?:/.test(target) && !existsSync(join(dirname(path), target))),
      ).toEqual([])
    },
  )
})

/** The lines that stand at the margin and hold no figures: the headings of a page. */
function titles(text: string): string[] {
  return text.split('\n').filter((line) => /^[A-Z][a-z ]+$/.test(line))
}

/** Club → score of the table of clubs. */
function clubScores(text: string): Map<string, number> {
  const rows = [...text.matchAll(/^(\S+(?: \S+)*) {2,}.*? (\d\.\d\d) /gm)]
  return new Map(rows.map(([, club = '', score]) => [club, Number(score)]))
}

/** Club → carry after the shots, yards, of the table of what was learned. */
function learnedCarries(text: string): Map<string, number> {
  const rows = [...text.matchAll(/^(\S+(?: \S+)*) +(?:\d+|–) {2}~?\d+(?: → (\d+))? /gm)]
  return new Map(rows.flatMap(([, club = '', yards]) => (yards === undefined ? [] : [[club, Number(yards)]])))
}
