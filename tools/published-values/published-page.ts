import { airRows } from './air-rows.ts'
import { flightRows } from './flight-rows.ts'
import { greensRows } from './greens-rows.ts'
import { playersRows } from './players-rows.ts'
import { differenceOf, isBeyondBound, type PublishedRow, type PublishedSubject } from './published-row.ts'
import { rulesRows } from './rules-rows.ts'
import { runRows } from './run-rows.ts'
import { shortGameRows } from './short-game-rows.ts'
import { solvedRows } from './solved-rows.ts'
import { solverRows } from './solver-rows.ts'

/** Every published value that is checked, by subject; some take whole holes to be solved. */
export function publishedSubjects(): PublishedSubject[] {
  return [
    { title: 'Air', note: 'Formulas against tabulated values.', rows: airRows() },
    {
      title: 'Flight',
      note: 'Our program against other code that computed from the same published coefficients: it shows that the equations are solved as they stand, not that a ball flies so. Public models differ by a tenth in carry, so plans take only changes from it.',
      rows: flightRows(),
    },
    {
      title: 'Bounce and run',
      note: 'As for flight: the published equations, computed twice.',
      rows: runRows(),
    },
    {
      title: 'Putting',
      note: 'The stroke’s own spreads are published; what reading and pace add was fitted to the tour’s expected putts, and the levels to the distances of 2008. The shares of one and three putts and the angle of 1996 were not fitted. The ramp’s 1.83 m/s is 6.00 ft/s rounded, hence its constant surplus of a thousandth.',
      rows: greensRows(),
    },
    {
      title: 'Short game',
      note: 'The tour’s strokes by lie are taken over as published. How a mean is shared out, and the levels’ losses from sand, were fitted to the up-and-downs and sand saves below; so these rows show how well a few numbers meet all of them, not foresight.',
      rows: shortGameRows(),
    },
    {
      title: 'Players',
      note: 'The lines for drives and their direction were drawn through these very figures; the club lengths and spreads of the rating system were partly used for shape.',
      rows: playersRows(),
    },
    {
      title: 'Whole holes',
      note: 'Solved yardstick holes: straight, fairway 30 m wide, trees 28 m from the line on both sides, bunkers every 50 m, water beside one stretch, a green of 500 m² (380 m² for tees of 140 yd and less and of 260 to 320 yd); method.md, section 11, says why these and what each is worth. The tour is a player of index −5. No number of a player was fitted to these rows; the hole was chosen with them in sight.',
      rows: solvedRows(),
    },
    { title: 'Handicaps and points', note: 'Worked examples; they must be met exactly.', rows: rulesRows() },
    { title: 'Decision', note: 'The solver against sums that can be done by hand.', rows: solverRows() },
  ]
}

/** The text of `docs/published-values.md`. */
export function publishedPage(subjects: readonly PublishedSubject[]): string {
  const all = subjects.flatMap((subject) => subject.rows)
  const beyond = all.filter(isBeyondBound).length
  const sections = subjects.map(
    ({ title, note, rows }) => `## ${title}\n\n${note}\n\n${HEAD}\n${rows.map(lineOf).join('\n')}\n`,
  )
  return `${OPENING}\n${all.length} rows; ${all.length - beyond} within their bound, ${beyond} beyond it with the reason beside it.\n\n${sections.join('\n')}`
}

const HEAD = `| what | published value | source and status | ours | difference | bound and reason |
|---|---|---|---|---|---|`

const OPENING = `# Published values and ours

Written by \`npm run published-values\`; a test keeps this page equal to what the program computes today. The published
figures are those of \`test/fixtures/reference\`.

Status: VERIFIED, seen in print: (a) in the original or at its author's, (b) quoted with its place; DERIVED, computed by
other code from verified inputs, so not itself in print; MEMORY, recalled only. The difference is ours less published,
both rounded as printed. The bound is the largest difference that needs no reason.
`

function lineOf(row: PublishedRow): string {
  const printed = (value: number): string => withUnit(fixed(value, row.decimals), row.unit)
  const bound = withUnit(String(Number(row.bound.toPrecision(3))), row.unit)
  const cells = [
    row.what.replace(/(\d)-(\d)/g, '$1–$2').replace(/ -(\d)/g, ' −$1'),
    printed(row.published),
    `${row.source}; ${row.status}`,
    printed(row.ours),
    signed(differenceOf(row), row.decimals),
    isBeyondBound(row) ? `beyond ${bound}. ${row.reason ?? ''}` : bound,
  ]
  return `| ${cells.map((cell) => cell.replaceAll('|', '\\|').trim()).join(' | ')} |`
}

function withUnit(number: string, unit: string): string {
  return unit === '°' ? `${number}°` : `${number} ${unit}`.trim()
}

function signed(value: number, decimals: number): string {
  return `${value > 0 ? '+' : ''}${fixed(value, decimals)}`
}

/** A number with so many digits behind the point, rounded half up, never "−0". */
function fixed(value: number, decimals: number): string {
  const scale = 10 ** decimals
  return ((Math.round(value * scale) || 0) / scale).toFixed(decimals).replace('-', '−')
}
