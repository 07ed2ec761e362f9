import { LEVELS, playerOfLevel } from '../../src/golf/player/level.ts'
import type { Player } from '../../src/golf/player/player.ts'
import {
  LENGTH_COLUMNS,
  type LevelColumn,
  PUTTING_COLUMNS,
  SHORT_GAME_COLUMNS,
  SPREAD_COLUMNS,
  unsureFigure,
} from './level-figures.ts'

/** A row of the page: who, and the player it speaks of. */
type Row = readonly [who: string, player: Player]

/** The text of `docs/levels.md`: what is expected of a player of whom only the level is known. */
export function levelsPage(): string {
  const men = levelRows('male')
  const women = levelRows('female')
  const juniors = [8, 10, 12, 14, 16].flatMap((age): Row[] => [
    [`boy of ${age}, index 30`, playerOfLevel('30', { sex: 'male', age })],
    [`girl of ${age}, index 30`, playerOfLevel('30', { sex: 'female', age })],
  ])
  return [
    OPENING,
    section('Men', men),
    section('Women', women),
    `## Juniors\n\n${JUNIORS}\n\n${table([...LENGTH_COLUMNS], juniors)}\n`,
    SOURCES,
  ].join('\n')
}

function levelRows(sex: Player['sex']): Row[] {
  return LEVELS.map(({ name }) => [name, playerOfLevel(name, { sex })])
}

function section(title: string, rows: readonly Row[]): string {
  return `## ${title}

${table([...LENGTH_COLUMNS, ...SPREAD_COLUMNS], rows)}

Chips and pitches from 20 m, and putts on a flat green:

${table([...SHORT_GAME_COLUMNS, ...PUTTING_COLUMNS], rows)}
`
}

function table(columns: readonly LevelColumn[], rows: readonly Row[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`
  return [
    line(['level', ...columns.map((column) => column.title)]),
    line(['---', ...columns.map(() => '---')]),
    ...rows.map(([who, player]) =>
      line([
        who,
        ...columns.map(({ of, decimals }) => {
          const { value, plusMinus } = unsureFigure(player, of)
          return `${value.toFixed(decimals)} ± ${plusMinus.toFixed(decimals)}`
        }),
      ]),
    ),
  ].join('\n')
}

const OPENING = `# Levels

Written by \`npm run levels-doc\`; a test keeps this page equal to what the program computes today. It says what Marram
expects of a player of whom only the level is known: a handicap index, or the tour (taken as index −5). Anything that is
typed or learned replaces it. The same numbers fill the gaps of a player file (\`golf/player/prior.ts\`,
\`golf/player/level.ts\`); between the levels they run on smooth lines.

± is one standard deviation of what a player of that level may be, the same doubt that plans reckon with. Its sizes are
our assumption (\`DOUBT\`, \`NEAR_GREEN_DOUBT\`), held against how much published bands differ. Stock is the mean of good
strikes; "all drives" has the mishits in it. Spreads are standard deviations of good strikes unless "all" is said. Club
golfers' mishits come on top of the spreads of the shot of 100 m, which is the swing of the bag that goes nearest to it.
`

const JUNIORS = `A player file may say \`"age"\`. Under 18 the clubs are shorter by age, boys and girls apart; a known carry always says more.
Everything else is as for the grown player of the same index. Growth differs much between children of one age, hence the
wide ±.`

const SOURCES = `## Where the numbers come from

| figure | source |
|---|---|
| mean total of all drives | distance report of the governing bodies for 2018 by handicap, men and women; Course Rating scratch players 250 and 210 yd; main tours of 2019 for men; the best women and past index 26 (women 36) from memory or our assumption |
| stock carry and total | from that mean, mishits and a usual run taken off (Course Rating: 20 yd for a tee shot) |
| other clubs’ carry | a ladder by loft, common practice; the 3-wood by the Course Rating players’ second shots |
| juniors’ length | our assumption, after growth |
| direction of all drives | Broadie 2008; Broadie & Ko 2009; a line through both, women as men of the same skill |
| spreads of other clubs and in length | Course Rating accuracy table (67 % on each axis), scratch and bogey, men and women |
| mishits | common practice: about one full shot in six at index 17; sizes our assumption |
| strokes from 20 m | tour: Broadie 2012, table 9; what others lose: Broadie 2008 (strokes lost by level, line of a golfer averaging 90) |
| up and down | tour: Broadie 2012; sand saves by level: Broadie 2008 |
| putting | stroke: Bansal & Broadie 2008; half-holed and two-putt distances by level: Broadie 2008; tour table: Broadie 2014 |

How well each is met stands in [published-values.md](published-values.md).
`
