import type { ReactElement } from 'react'
import { capital } from '#golf/strategy/capital.ts'
import type { Relief, ReliefRow } from '#golf/strategy/relief.ts'
import {
  clauseWords,
  editionWords,
  optionWords,
  penaltyWords,
  reliefSentence,
  situationWords,
} from '#golf/strategy/relief-words.ts'
import type { Reader } from '../desk/desk.ts'
import { Section } from '../ledger/section.tsx'
import type { Worked } from '../planning/use-quick-then-full.ts'
import { cost, figure, groundWord, lieWord, unbroken, unitSign } from '../words.ts'

/** What the Rules give the ball: the choice in a sentence, each option with its cost, one tap plans on from it. */
export function ReliefSection(props: {
  readonly answer: Worked<Relief>
  readonly reader: Reader
  readonly onTake: (row: ReliefRow) => void
}): ReactElement {
  const { answer: relief, isCurrent, isFull, trouble } = props.answer
  const state =
    trouble !== null || isFull
      ? ''
      : isCurrent
        ? 'A first answer, on a coarse grid. The fuller one follows.'
        : 'Reckoning.'
  return (
    <>
      <section className={`sentence${isCurrent ? '' : ' waiting'}`} aria-label="What the Rules give">
        <p aria-live="polite" className="plan-sentence">
          {relief === null
            ? ''
            : unbroken(`${capital(situationWords(relief.situation))}. ${reliefSentence(relief)}`)}
        </p>
        <p className="state">{state}</p>
      </section>
      {relief !== null && (
        <>
          <Options {...props} relief={relief} />
          <Notes relief={relief} />
        </>
      )}
    </>
  )
}

function Options(props: {
  readonly relief: Relief
  readonly reader: Reader
  readonly onTake: (row: ReliefRow) => void
}): ReactElement {
  const { relief, reader, onTake } = props
  return (
    <Section title="Relief" className="relief">
      <table className="clubs">
        <thead>
          <tr>
            <th scope="col">option</th>
            <th scope="col" className="number">
              to the pin, {unitSign(reader)}
            </th>
            <th scope="col" className="number">
              score
            </th>
            <th scope="col" className="number">
              cost in strokes
            </th>
          </tr>
        </thead>
        <tbody>
          {relief.options.map((row) => (
            <tr key={row.kind}>
              <th scope="row">
                <OptionName row={row} onTake={onTake} />
                <small>
                  {clauseWords(row.clause)}, {penaltyWords(row.penalty)}; {groundOf(row)}
                </small>
              </th>
              <td className="number">{figure(row.spot.to_pin_m, reader)}</td>
              <td className="number">{row.strokes === null ? '–' : row.strokes.toFixed(2)}</td>
              <td className="number">{row.cost === null ? 'not priced' : cost(row.cost)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {relief.empty.map(({ kind, clause, reason }) => (
        <p key={kind} className="silent">
          {capital(optionWords(kind))} ({clauseWords(clause)}) gives nothing here: {reason}.
        </p>
      ))}
    </Section>
  )
}

/** A stroke from where no lie is known cannot be planned: its name is then no button. */
function OptionName({ row, onTake }: { row: ReliefRow; onTake: (row: ReliefRow) => void }): ReactElement {
  const words = (
    <>
      <b>{row.letter}</b> {optionWords(row.kind)}
    </>
  )
  if (row.spot.lie === null) return <span className="option-name">{words}</span>
  return (
    <button type="button" onClick={() => onTake(row)}>
      {words}
    </button>
  )
}

function Notes({ relief }: { relief: Relief }): ReactElement {
  const { rules, notes } = relief
  return (
    <Section title="Mind" className="cautions">
      <ul>
        {[`${editionWords(rules)}. ${rules.ruling}`, ...notes].map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
    </Section>
  )
}

function groundOf({ spot }: ReliefRow): string {
  return spot.lie === null ? groundWord(spot.ground) : lieWord(spot.lie)
}
