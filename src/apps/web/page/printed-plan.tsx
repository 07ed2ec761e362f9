import { type ReactElement, useMemo } from 'react'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { measureHole } from '#golf/course/measure-hole.ts'
import type { OwnCarries } from '#golf/player/own-carries.ts'
import type { Plan, PlanOption } from '#golf/strategy/plan.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { drawCostBars } from '#paper/draw/draw-cost-bars.ts'
import { drawHole } from '#paper/draw/draw-hole.ts'
import type { HoleDrawingOptions } from '#paper/draw/hole-drawing-options.ts'
import { aimWords, type LineOf } from '../aim-words.ts'
import { AS_DRAWN, EngravedFor, Picture } from '../chart/picture.tsx'
import type { Reader } from '../desk/desk.ts'
import { firstAnswerWords } from '../first-answer-words.ts'
import { flipSentence, isFound, silentFlips } from '../flip-words.ts'
import { nextShotsOf, OutcomeList, ScoreList, valueWords } from '../ledger/plan-words.tsx'
import {
  costHeading,
  firmnessWord,
  length,
  nextShot,
  ownCarriesWords,
  shortDate,
  shotLeft,
  unbroken,
  verdict,
  windOnHole,
  windSpeed,
} from '../words.ts'
import { useSettled } from './use-settled.ts'

/** The hole as one printed page: hidden on the screen, and all there is on paper. */
export function PrintedPlan(props: {
  readonly plan: Plan
  /** False = a first answer, which the page says. */
  readonly isFull: boolean
  readonly hole: Hole
  readonly option: PlanOption
  readonly lineOf: LineOf
  readonly day: Day
  /** Carries typed on the desk. */
  readonly carries: OwnCarries
  readonly reader: Reader
  readonly drawing: HoleDrawingOptions
}): ReactElement {
  const { plan, isFull, hole, option, lineOf, day, carries, reader, drawing } = props
  // The whole hole is engraved for it: as much work as all the rest of a step of a drag many times over.
  const shown = useSettled(useMemo(() => ({ hole, drawing }), [hole, drawing]))
  const chart = useMemo(
    () =>
      shown &&
      drawHole(shown.hole, { ...shown.drawing, measures: measureHole(shown.hole), width: 440, height: 750 }),
    [shown],
  )
  const bars = useMemo(
    () => drawCostBars(plan.options.slice(0, 5), { width: 250, chosen: option.club }),
    [plan, option],
  )
  const next = nextShotsOf(plan, option)
  const wind =
    day.wind.speedMetresPerSecond < 0.05
      ? 'calm'
      : `wind ${windSpeed(day.wind.speedMetresPerSecond, reader)} ${windOnHole(day.wind.fromDegrees, hole.bearingDegrees)}`
  return (
    <EngravedFor value={AS_DRAWN}>
      <main className="printed">
        <h1 className="printed-head">
          <span>
            {plan.course}, hole {hole.ref}
          </span>
          <span>{plan.player}</span>
          <span>
            {[
              ...(day.date === null ? [] : [shortDate(day.date)]),
              wind,
              `ground ${firmnessWord(day.firmness)}`,
            ].join(' · ')}
          </span>
        </h1>
        <p className="printed-sentence">{unbroken(plan.sentence)}</p>
        <p className="printed-verdict">
          {verdict(plan)} {valueWords(plan)}
          {isFull ? '' : ` ${firstAnswerWords(plan)} Print again when the fuller one is there.`}
        </p>
        <div className="printed-body">
          {chart !== null && <Picture drawing={chart} className="printed-chart" isDecoration />}
          <div className="printed-side">
            <h2>The clubs, {costHeading(plan)}</h2>
            <Picture drawing={bars} className="printed-bars" isDecoration />
            <p>
              {clubWords(option)}: aim {aimWords(option, option.aim.heading_deg, lineOf(option), reader)}, it
              leaves about {length(option.leave_m.p50, reader)}.
            </p>
            {Object.keys(carries).length > 0 && <p>{ownCarriesWords(carries, reader)}</p>}
            <OutcomeList club={clubWords(option)} outcomes={option.outcomes} />
            <ScoreList option={option} />
            {plan.flips.length > 0 && <h2>What flips it</h2>}
            <ul>
              {plan.flips.filter(isFound).map((flip) => (
                <li key={`${flip.what} ${flip.direction}`}>{flipSentence(flip, hole, reader)}</li>
              ))}
            </ul>
            <p>{silentFlips(plan.flips, hole)}</p>
            {next.length > 0 && <h2>Then</h2>}
            <ul>
              {next.map((shot) => (
                <li key={`${shot.from.x_m},${shot.from.y_m},${shot.lie}`}>
                  {shotLeft(shot, hole, reader)}: {unbroken(nextShot(shot))}
                </li>
              ))}
            </ul>
          </div>
        </div>
        <ul className="printed-cautions">
          {plan.cautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      </main>
    </EngravedFor>
  )
}
