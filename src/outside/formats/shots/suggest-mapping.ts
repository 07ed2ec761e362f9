import { type ColumnMeaning, headingAndUnit, unitOf } from './column-meaning.ts'
import type { FoundTable } from './find-table.ts'
import { meaningText } from './parse-mapping.ts'

type What = ColumnMeaning['what']

/** Words by which a heading may be known, the likeliest meaning first, and words that speak against it. From memory. */
const SIGNS: readonly (readonly [what: What, sign: RegExp, against: RegExp | null])[] = [
  ['club', /^(club|stick|schlager|palo|baton)(_(name|type|used))?$/, null],
  ['date', /^(date|day|datum|fecha|time|timestamp|date_time)$/, null],
  [
    'offline',
    /off_?line|side|lateral|deviation|left_right|links_rechts|seite/,
    /spin|angle_of_attack|height/,
  ],
  ['carry', /carry|flug/, /side|off_?line|time|height|angle|deviation|spin|curve/],
  ['total', /total|gesamt/, /side|off_?line|spin|deviation|angle/],
  ['carry', /^(distance|dist|length|weite)$/, null],
  ['lie', /^(lie|surface)$/, null],
  ['strike', /^(strike|contact|quality)$/, null],
]

/**
 * The likely meaning of a table's columns, as it would be typed after `--columns`: `Club=club,Carry=carry_?`. A unit
 * that neither heading nor units row tells is a `?` for a person to replace. `null` when no club and distance are found.
 */
export function suggestMapping({ headings, units }: FoundTable): string | null {
  const found = new Map<What, number>()
  for (const [what, sign, against] of SIGNS) {
    if (found.has(what)) continue
    const taken = new Set(found.values())
    const index = headings.findIndex((heading, at) => {
      const { words } = headingAndUnit(plain(heading))
      return !taken.has(at) && sign.test(words) && against?.test(words) !== true
    })
    if (index !== -1) found.set(what, index)
  }
  if (!found.has('club') || !(found.has('carry') || found.has('total'))) return null
  return [...found]
    .sort(([, a], [, b]) => a - b)
    .map(([what, index]) => {
      const heading = headings[index] ?? ''
      const unit = headingAndUnit(heading).unit ?? unitOf(units[index] ?? '')
      return `${quoted(heading)}=${meaningText(likely(what, unit))}`
    })
    .join(',')
}

function likely(what: What, unit: ReturnType<typeof unitOf>): ColumnMeaning {
  if (what === 'date') return { what, order: null }
  if (what === 'offline') return { what, unit, isLeftPositive: false }
  if (what === 'carry' || what === 'total')
    return { what, unit: unit === 'deg' ? null : unit, isStraight: false }
  return { what }
}

function plain(heading: string): string {
  return heading.normalize('NFD').replaceAll(/\p{M}/gu, '')
}

function quoted(heading: string): string {
  return /[,="]/.test(heading) ? `"${heading.replaceAll('"', '')}"` : heading
}
