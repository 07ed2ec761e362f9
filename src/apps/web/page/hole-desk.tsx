import { type ReactElement, useEffect, useMemo, useRef } from 'react'
import { NOT_MOVED } from '#golf/course/move-hazards.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import type { ReliefRow } from '#golf/strategy/relief.ts'
import { aimWords, linesOf } from '../aim-words.ts'
import { HoleChart } from '../chart/hole-chart.tsx'
import { CompareSection } from '../compare/compare-section.tsx'
import { MARKERS, openDesk, type Reader } from '../desk/desk.ts'
import * as edits from '../desk/edits.ts'
import { finishOffset } from '../desk/finish-offset.ts'
import { firstAim } from '../desk/first-aim.ts'
import { keptDesk, keptSteps } from '../desk/kept-desk.ts'
import { needsRelief } from '../desk/needs-relief.ts'
import { teeNames } from '../documents/load-course.ts'
import { tabStorage } from '../documents/own-storage.ts'
import { type Library, useCourse, usePlayer } from '../documents/use-library.ts'
import { GoingSection } from '../going/going-section.tsx'
import { AimStrip } from '../ledger/aim-strip.tsx'
import { ClubTable } from '../ledger/club-table.tsx'
import { FlipRuler } from '../ledger/flip-ruler.tsx'
import { HazardControls } from '../ledger/hazard-controls.tsx'
import {
  CautionList,
  OutcomeList,
  OwnChoice,
  PlanSentence,
  ScoreList,
  ThenList,
} from '../ledger/plan-words.tsx'
import { OwnCarriesPart } from '../own-carries/own-carries.tsx'
import { useFinishes, usePlan } from '../planning/use-planning.ts'
import { useRelief } from '../planning/use-relief.ts'
import { WallButton } from '../wall/wall-button.tsx'
import { costHeading, readerMetres } from '../words.ts'
import { awaitedNames } from './awaited-names.ts'
import { chartMarks, chartSurvey, movedMarks } from './chart-options.ts'
import { DeskHead } from './desk-head.tsx'
import { finishShares } from './finish-shares.ts'
import { LaterFormat, LaterLesson, LaterRelief, LaterSideView } from './later-parts.tsx'
import { SURVEY } from './places.ts'
import { PrintedPlan } from './printed-plan.tsx'
import { SituationPart } from './situation-part.tsx'
import { TroubleNote } from './trouble-note.tsx'
import { useDayChoice } from './use-day-choice.ts'
import { useDesk } from './use-desk.ts'
import { useHazards } from './use-hazards.ts'
import { useKeptHeight } from './use-kept-height.ts'
import { useLessonOpen } from './use-lesson-open.ts'
import { useRuler } from './use-ruler.ts'
import { useSituation } from './use-situation.ts'
import { useSteps } from './use-steps.ts'
import { useTurn } from './use-turn.ts'
import { useWanted } from './use-wanted.ts'
import { WaitingFor } from './waiting-for.tsx'

const loadDeskWall = async () => (await import('../wall/desk-wall.tsx')).DeskWall

/** The hole desk: the hole as a chart, the plan as a ledger, and everything in between to move. */
export function HoleDesk(props: {
  readonly library: Library
  /** The player to open with; `null` = as it was left. */
  readonly playerId: string | null
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
  /** A player was kept: the lists of the store are asked for again. */
  readonly onKept: () => void
}): ReactElement {
  const { library, reader, onReader } = props
  const { desk, edit, step, ...steps } = useDesk(
    () => {
      const left =
        keptDesk(library, tabStorage) ??
        openDesk(library.courses[0]?.id ?? '', '', library.players[0]?.id ?? '')
      const isNew = library.players.some(({ id }) => id === props.playerId)
      return isNew && props.playerId !== null ? edits.choosePlayer(left, props.playerId) : left
    },
    () => keptSteps(library, tabStorage),
  )
  useWanted(library, edit)
  const { chooseDay, dayTrouble } = useDayChoice(desk, edit)
  const course = useCourse(desk.courseId)
  const player = usePlayer(desk.playerId)
  const opponent = usePlayer(desk.format.kind === 'match' ? desk.format.opponentId : null)
  const { surveyed, hole, own, situation, trouble } = useSituation(
    desk,
    course.value,
    player.value,
    reader.units,
    opponent.value,
  )
  const isInTrouble = hole !== null && needsRelief(desk.ball, hole)
  const relief = useRelief(isInTrouble ? situation : null)
  const page = useRef<HTMLElement>(null)
  const keptHeight = useKeptHeight(page, isInTrouble)
  const planning = usePlan(isInTrouble ? null : situation, desk.club)
  const plan = planning.plan?.hole.ref === hole?.ref ? planning.plan : null
  const option = plan?.options.find(({ club }) => club === desk.club) ?? plan?.options[0] ?? null
  const begun = useMemo(
    () =>
      situation === null || desk.ball !== null ? null : firstAim(situation.hole, situation.player, desk.club),
    [situation, desk.ball, desk.club],
  )
  const aimed = option ?? begun
  const heading = desk.aimDegrees ?? aimed?.aim.heading_deg ?? null
  const finishes = useFinishes(situation, aimed?.shape === 'stock' ? aimed.club : null, heading)

  // A course is opened at its first hole, known only once it is here; a hole chosen meanwhile stays.
  useEffect(() => {
    const holes = course.value?.holes ?? []
    const isOnCourse = (ref: string): boolean => holes.some((hole) => hole.ref === ref)
    const first = holes[0]?.ref
    if (first !== undefined && !isOnCourse(desk.holeRef))
      edit('open', (now) => (isOnCourse(now.holeRef) ? now : edits.chooseHole(now, first)))
  }, [course.value, desk.holeRef, edit])

  const hazards = useHazards(surveyed, desk, reader, edit)
  const about = JSON.stringify([desk.courseId, desk.holeRef, desk.playerId, desk.ball, desk.carries])
  const before = useTurn(step, about, planning, plan)
  const ruler = useRuler(plan, planning.isFull, about, { desk, surveyed, edit })
  const survey = useMemo(
    () => chartSurvey(hole, course.value, desk.day, reader),
    [hole, course.value, desk.day, reader],
  )
  const marks = useMemo(
    () => ({
      ...movedMarks(surveyed, hole, desk.moved, hazards.held?.id ?? null),
      ...chartMarks(aimed, heading, finishes, plan, own),
      ...(relief.answer === null || hole === null ? {} : { relief: { of: relief.answer, pin: hole.pin } }),
    }),
    [surveyed, hole, desk.moved, hazards.held?.id, aimed, heading, finishes, plan, own, relief.answer],
  )
  const credit = course.value?.credit ?? null
  const printed = useMemo(
    () => ({ ...survey, ...marks, ...(credit === null ? {} : { credit }) }),
    [survey, marks, credit],
  )
  const lineOf = useMemo(
    () => (hole === null ? null : linesOf(plan?.situation ?? { x_m: 0, y_m: 0, lie: 'tee' }, hole)),
    [plan, hole],
  )
  const offset = aimed === null || heading === null ? 0 : finishOffset(aimed, heading)
  const line = aimed === null || lineOf === null ? 0 : lineOf(aimed).headingDegrees
  const aim =
    aimed === null || heading === null || lineOf === null
      ? ''
      : aimWords(aimed, heading, lineOf(aimed), reader)

  const takeRelief = (row: ReliefRow): void => edit('relief', (now) => edits.takeRelief(now, row))
  const lesson = useLessonOpen()
  const { stepAim, stepPin, stepBall } = useSteps({ desk, hole, option: aimed, heading, line, reader, edit })

  const awaited = awaitedNames(desk, library, { course, player, opponent })
  const shown =
    course.trouble ??
    player.trouble ??
    opponent.trouble ??
    trouble ??
    dayTrouble ??
    relief.trouble ??
    planning.trouble
  return (
    <>
      <DeskHead
        library={library}
        desk={desk}
        holes={course.value?.holes ?? []}
        tees={course.value === null ? [] : teeNames(course.value, desk.holeRef)}
        teeName={hole?.teeName ?? ''}
        reader={reader}
        steps={steps}
        onReader={onReader}
        onCourse={(id) => edit('course', (now) => edits.chooseCourse(now, id, ''))}
        onHole={(ref) => edit('hole', (now) => edits.chooseHole(now, ref))}
        onTee={(name) => edit('tee', (now) => edits.chooseTee(now, name))}
        onPlayer={(id) => edit('player', (now) => edits.choosePlayer(now, id))}
        onDay={chooseDay}
        hasLesson={lesson.isOpen}
        onLesson={lesson.setOpen}
      />
      <main className="desk" ref={page} style={{ minHeight: keptHeight }}>
        {shown !== null && <TroubleNote trouble={shown} />}
        {awaited !== '' && <WaitingFor what={awaited} />}
        <div className="chart-side">
          {hole !== null && surveyed !== null && survey !== null && (
            <HoleChart
              hole={hole}
              surveyed={surveyed}
              hazard={hazards.held}
              moves={desk.moved}
              solved={planning.solved?.hole.ref === hole.ref ? planning.solved : null}
              step={readerMetres(reader)}
              onRelief={relief.answer === null ? null : takeRelief}
              onHazard={hazards.take}
              onMoveHazard={hazards.move}
              survey={survey}
              marks={marks}
              aimWords={aimed === null ? '' : `${clubWords(aimed)}, ${aim}`}
              onAim={(degrees, drag) =>
                aimed !== null && edit('aim', (now) => edits.aimAt(now, aimed.club, degrees), drag)
              }
              onAimStep={stepAim}
              onPin={(pin, drag) => edit('pin', (now) => edits.movePin(now, pin), drag)}
              onPinStep={stepPin}
              ball={desk.ball?.at ?? MARKERS}
              onBall={(at, drag) => edit('ball', (now) => edits.placeBall(now, at), drag)}
              onBallStep={stepBall}
            />
          )}
          {aimed !== null && (
            <AimStrip
              aimed={aimed}
              plan={plan}
              option={option}
              words={aim}
              offsetMetres={offset}
              isBest={desk.aimDegrees === null}
              reader={reader}
              onStep={stepAim}
            />
          )}
          {credit !== null && <p className="credit">{credit}</p>}
          <p className="survey-link">
            <a className="button" href={SURVEY}>
              Survey a hole
            </a>
            {plan !== null &&
              option !== null &&
              hole !== null &&
              surveyed !== null &&
              survey !== null &&
              situation !== null && (
                <WallButton
                  load={loadDeskWall}
                  show={{
                    plan,
                    option,
                    hole,
                    surveyed,
                    desk,
                    situation,
                    reader,
                    hazards: hazards.named,
                    scales: ruler.scales,
                    survey,
                    marks,
                  }}
                />
              )}
          </p>
        </div>
        <div className="ledger">
          {isInTrouble ? (
            <LaterRelief answer={relief} reader={reader} onTake={takeRelief} />
          ) : (
            <PlanSentence
              planning={{ ...planning, plan, trouble: shown }}
              before={before}
              hasFormat={desk.format.kind !== 'strokes'}
            />
          )}
          {plan === null && aimed !== null && finishes !== null && (
            <OutcomeList club={clubWords(aimed)} outcomes={finishShares(finishes)} />
          )}
          {plan !== null && option !== null && lineOf !== null && (
            <>
              <OwnChoice option={option} plan={plan} lineOf={lineOf} reader={reader} />
              <ClubTable
                options={plan.options}
                heading={costHeading(plan)}
                chosen={option.club}
                lineOf={lineOf}
                reader={reader}
                onChoose={(club) => edit('club', (now) => edits.chooseClub(now, club))}
              />
              <OutcomeList
                club={clubWords(option)}
                outcomes={
                  desk.aimDegrees === null || finishes === null ? option.outcomes : finishShares(finishes)
                }
              />
              <ScoreList option={option} />
              {hole !== null && option.short !== undefined && (
                <LaterSideView hole={hole} plan={plan} option={option} reader={reader} />
              )}
            </>
          )}
          {own !== null && (
            <OwnCarriesPart
              own={own}
              carries={desk.carries}
              reader={reader}
              onCarries={(carries) => edit('carries', (now) => edits.typeCarries(now, carries))}
              onKept={(id) => {
                props.onKept()
                edit('player', (now) => edits.choosePlayer(now, id))
              }}
            />
          )}
          {hole !== null && (
            <SituationPart
              desk={desk}
              hole={hole}
              ground={plan?.situation.lie ?? null}
              reader={reader}
              edit={edit}
              onBallStep={stepBall}
              onPinStep={stepPin}
            />
          )}
          {plan !== null && course.value !== null && (
            <LaterFormat
              desk={desk}
              plan={plan}
              isFull={planning.isFull}
              course={course.value}
              library={library}
              onFormat={(change) => edit('format', (now) => edits.setFormat(now, change))}
            />
          )}
          <HazardControls
            hazards={hazards.named}
            chosen={hazards.held?.id ?? null}
            move={hazards.held?.move ?? NOT_MOVED}
            reader={reader}
            onChoose={hazards.take}
            onMove={(move) => hazards.held !== null && hazards.move(hazards.held.id, move, null)}
            onRestore={() => hazards.held !== null && hazards.restore(hazards.held.id)}
          />
          {plan !== null && (
            <>
              {surveyed !== null && (
                <FlipRuler
                  plan={plan}
                  isFull={planning.isFull}
                  {...ruler}
                  desk={desk}
                  surveyed={surveyed}
                  hazards={hazards.named}
                  reader={reader}
                />
              )}
              {hole !== null && option !== null && (
                <ThenList plan={plan} option={option} hole={hole} reader={reader} />
              )}
              {situation !== null && <GoingSection situation={situation} reader={reader} />}
              {hole !== null && course.value !== null && (
                <CompareSection
                  library={library}
                  course={course.value}
                  desk={desk}
                  hole={hole}
                  plan={plan}
                  opponent={opponent.value}
                  reader={reader}
                />
              )}
              <CautionList plan={plan} />
            </>
          )}
        </div>
      </main>
      {lesson.isOpen && (
        <LaterLesson
          library={library}
          desk={desk}
          club={planning.isCurrent ? (plan?.options[0]?.club ?? null) : null}
          canRedo={steps.canRedo}
          reader={reader}
          takesFocus={lesson.isAsked}
          onSample={({ courseId, holeRef, playerId }) =>
            edit('lesson', () => openDesk(courseId, holeRef, playerId))
          }
          onPutAway={() => lesson.setOpen(false)}
        />
      )}
      {plan !== null && hole !== null && survey !== null && option !== null && lineOf !== null && (
        <PrintedPlan
          plan={plan}
          isFull={planning.isFull}
          hole={hole}
          option={option}
          lineOf={lineOf}
          day={desk.day}
          carries={desk.carries}
          reader={reader}
          drawing={printed}
        />
      )}
    </>
  )
}
