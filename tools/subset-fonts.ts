// Cuts the serif of the desk down to the letters of its own words and of most names: `npm run fonts`. Faces drawn by hand are
// large, and three of them were a third of what the first page loads. What else a name needs comes from the whole face, and
// only then (`src/apps/web/style/fonts.css`). The sans stays as it is: its licence reserves the name.
import { readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
// @ts-expect-error: a package without types
import subsetFont from 'subset-font'

/** Faces that are cut, as their package names them. */
export const CUT_FACES = ['latin-400-normal', 'latin-400-italic', 'latin-600-normal'] as const

/** The letters kept: those on every keyboard, and what sentences and distances are set with. */
const LETTERS = `${String.fromCharCode(...Array.from({ length: 95 }, (_, index) => 32 + index))}\u00a0\u2011«»‹›©°±·×½¾–—‘’“”…−↑↓`

/** What typesetting uses of a face: kerning, ligatures, accents put together, figures of one width. */
const FEATURES = ['kern', 'liga', 'clig', 'rlig', 'calt', 'ccmp', 'locl', 'mark', 'mkmk', 'lnum', 'tnum']

/** Bytes of a face of the serif with the kept letters only, woff2. */
export async function cutFace(face: (typeof CUT_FACES)[number]): Promise<Buffer> {
  const whole = readFileSync(
    fileURLToPath(
      new URL(`../node_modules/@fontsource/eb-garamond/files/eb-garamond-${face}.woff2`, import.meta.url),
    ),
  )
  return subsetFont(whole, LETTERS, { targetFormat: 'woff2', keepFeatures: FEATURES })
}

/** Where the cut face lies. */
export function pathOf(face: (typeof CUT_FACES)[number]): string {
  return fileURLToPath(new URL(`../src/apps/web/style/fonts/eb-garamond-${face}.woff2`, import.meta.url))
}

/** The kept letters as CSS names them: `U+20-7E, U+A0`. */
export function keptRange(): string {
  const codes = [...LETTERS].map((letter) => letter.codePointAt(0) ?? 0).sort((a, b) => a - b)
  const runs: [number, number][] = []
  for (const code of codes) {
    const last = runs.at(-1)
    if (last !== undefined && last[1] === code - 1) last[1] = code
    else runs.push([code, code])
  }
  const hex = (code: number): string => code.toString(16).toUpperCase()
  return runs.map(([from, to]) => (from === to ? `U+${hex(from)}` : `U+${hex(from)}-${hex(to)}`)).join(', ')
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const face of CUT_FACES) writeFileSync(pathOf(face), await cutFace(face))
  console.log(`unicode-range: ${keptRange()}`)
}
