// Times what a plan is made of and what a field's cards take, and prints each beside another figure of the same run: ratios
// hold on any machine, the milliseconds do not. Beside each ratio stands that of the run kept in `baseline.json`.
// `npm run bench -- [--json] [--keep]`; `--keep` keeps this run, which should be a quiet one. `--field` times a field's cards
// with their plans instead, of half of `--players 40` and of all, which takes more than an hour; `--hole REF` asks for one hole.
import { parseArgs } from 'node:util'
import { baseline, keepBaseline, lineOf } from './baseline.ts'
import { cardFigures, FIELD_PLAYERS, plannedCardFigures } from './field-of-cards.ts'
import { planFigures } from './plan-figures.ts'

const { values } = parseArgs({
  options: {
    json: { type: 'boolean' },
    keep: { type: 'boolean' },
    field: { type: 'boolean' },
    players: { type: 'string' },
    hole: { type: 'string' },
  },
})
const figures = values.field
  ? await plannedCardFigures(Number(values.players ?? FIELD_PLAYERS), values.hole ?? 'all')
  : [...planFigures(), ...(await cardFigures())]

const kept = baseline()
if (values.keep) keepBaseline(figures)
if (values.json) console.log(JSON.stringify(figures, null, 2))
else for (const figure of figures) console.log(lineOf(figure, kept.get(figure.name)))
