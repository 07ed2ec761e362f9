import { execFileSync, spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, dirname, join } from 'node:path'
import ts from 'typescript'
import { afterAll, describe, expect, it } from 'vitest'

// The habits of the house that no other check holds. Source: CONTRIBUTING.md and docs/adr/0002.

const tracked = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], {
  encoding: 'utf8',
})
  .split('\n')
  .filter(
    (path) =>
      path !== '' && !path.startsWith('test/fixtures/') && path !== 'package-lock.json' && existsSync(path),
  )
const sources = tracked.filter((path) => /^src\/.*\.tsx?$/.test(path) && !/\.test\.tsx?$/.test(path))
const textOf = (path: string): string => readFileSync(path, 'utf8')

describe('source files', () => {
  it('are many enough that this test reads them', () => {
    expect(sources.length).toBeGreaterThan(30)
  })

  it('have a median under 120 lines and none over 400', () => {
    const lengths = sources.map((path) => textOf(path).split('\n').length - 1).sort((a, b) => a - b)
    expect(lengths[Math.floor(lengths.length / 2)]).toBeLessThan(120)
    expect(lengths.at(-1)).toBeLessThanOrEqual(400)
  })

  it('bear no name that says nothing', () => {
    const empty = /^(index|utils?|lib|common|shared|helpers?|managers?|engine|data|info|brain|misc|types)$/
    const named = sources.filter((path) =>
      path
        .replace(/\.tsx?$/, '')
        .split('/')
        .some((part) => empty.test(part)),
    )
    expect(named).toEqual([])
  })

  it('know no clock and no unseeded chance on the pure floors', () => {
    const pure = sources.filter((path) => /^src\/(numbers|golf|paper|faults)\//.test(path))
    expect(pure.filter((path) => /\bDate\.now\b|\bnew Date\b|\bMath\.random\b/.test(textOf(path)))).toEqual(
      [],
    )
  })

  it('name no place of the machine they were written on', () => {
    const places = new RegExp(`(^|[\\s'"\`(])/(${['work', 'root', 'farm'].join('|')})/`, 'm')
    const read = tracked.filter((path) => /\.(ts|tsx|mjs|js|json|md|css|html)$/.test(path))
    expect(read.filter((path) => places.test(textOf(path)))).toEqual([])
  })
})

describe('words for people', () => {
  // The trade's plain words only: no claim that a choice cannot be bettered, no makers' words, no grades.
  const FORBIDDEN =
    /\b(optimal|optimum|perfect|guarantee|ladies|virtual|smart|sniper|shotgun|weapon|radar|brain)|strokes gained|normal \(right|[★☆🔥⛳🏌]/iu

  it('avoid what a screen, a page or a sentence must not say', () => {
    const spoken = sources.filter((path) => /^src\/(apps|paper|golf|faults)\//.test(path))
    const found = spoken.flatMap((path) =>
      wordsOf(path)
        .filter((words) => FORBIDDEN.test(words) || /\bAI\b/.test(words))
        .map((words) => `${path}: ${words}`),
    )
    expect(found).toEqual([])
  })
})

describe('walls', () => {
  const folder = mkdtempSync(join(tmpdir(), 'marram-walls-'))
  afterAll(() => rmSync(folder, { recursive: true, force: true }))

  it('stop an import that looks up, one through a private door and one of the machine, each by name', () => {
    const files = {
      'src/numbers/units/yards.ts':
        "import { hole } from '../../golf/course/hole.ts'\nexport const yards = hole\n",
      'src/golf/course/hole.ts': "import { readFileSync } from 'node:fs'\nexport const hole = readFileSync\n",
      'src/golf/course/inner/tee.ts': 'export const tee = 1\n',
      'src/golf/strategy/plan.ts': "import { tee } from '../course/inner/tee.ts'\nexport const plan = tee\n",
    }
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(join(folder, dirname(path)), { recursive: true })
      writeFileSync(join(folder, path), text)
    }
    const result = spawnSync(process.execPath, ['tools/check-walls.mjs', folder], { encoding: 'utf8' })
    expect(result.status, result.stderr).toBe(1)
    expect(result.stdout).toContain('numbers-units-looks-only-down: src/numbers/units/yards.ts')
    expect(result.stdout).toContain('golf-course-front-door: src/golf/strategy/plan.ts')
    expect(result.stdout).toContain('pure-floors-know-no-machine: src/golf/course/hole.ts')
    expect(result.stdout).toContain('files were read; at least')
  })
})

/** Every piece of text that could reach a person: string literals, templates and text between tags, not module names. */
function wordsOf(path: string): string[] {
  const kind = path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS
  const file = ts.createSourceFile(basename(path), textOf(path), ts.ScriptTarget.ES2023, true, kind)
  const words: string[] = []
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) return
    if (ts.isStringLiteralLike(node) || ts.isTemplateLiteralToken(node) || ts.isJsxText(node))
      words.push(node.text)
    ts.forEachChild(node, visit)
  }
  visit(file)
  return words
}
