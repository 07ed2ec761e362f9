import { type ReactElement, useMemo, useState } from 'react'
import '../style/new-player.css'
import '../style/shots.css'
import '../style/survey.css'
import '../style/survey-table.css'
import type { LonLat } from '#numbers/geometry/tangent-plane.ts'
import { useCommands } from '../commands/use-commands.ts'
import type { Reader } from '../desk/desk.ts'
import { Choice } from '../ledger/choice.tsx'
import { Section } from '../ledger/section.tsx'
import { PageHead } from '../page/page-head.tsx'
import { readerMetres } from '../words.ts'
import { CornerForm } from './corner-form.tsx'
import * as edits from './edits.ts'
import { GreenSection } from './green-section.tsx'
import { Closing, HoleFields } from './hole-fields.tsx'
import { KeepSection } from './keep-section.tsx'
import { MapSection } from './map-section.tsx'
import type { OpenPicture } from './picture-placer.tsx'
import { PictureSection } from './picture-section.tsx'
import { kindWords } from './row-kinds.ts'
import { FaultList, RowTable } from './row-table.tsx'
import { newSurvey, openHole, type Survey } from './survey.ts'
import { SurveyChart } from './survey-chart.tsx'
import { SurveyFiles } from './survey-files.tsx'
import { nearStart, readHole, unplacedHoles } from './survey-reading.ts'
import { TraceSection } from './trace-section.tsx'
import { useServedMap } from './use-served-map.ts'
import { useSurvey } from './use-survey.ts'
import { WalkSection } from './walk-section.tsx'

/** The survey: a hole typed as a table, or traced, beside the chart that grows with it. */
export function SurveyPage(props: {
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
}): ReactElement {
  const { onReader } = props
  const state = useSurvey(props.reader.units === 'yards' ? 'yd' : 'm')
  const { survey, edit, undo, redo } = state
  useCommands({ undo: state.canUndo ? undo : null, redo: state.canRedo ? redo : null })
  const reader: Reader = { ...props.reader, units: survey.unit === 'yd' ? 'yards' : 'metres' }
  const hole = openHole(survey)
  const reading = useMemo(() => readHole(hole, survey.unit), [hole, survey.unit])
  const green = hole.rows.find(({ what: kind }) => kind === 'green')
  const [isGreenHeld, setGreenHeld] = useState(false)
  // What is still being typed is not wrong yet, and faults above it would push it away.
  const rowFaults = new Map([...reading.rowFaults].filter(([id]) => !isGreenHeld || id !== green?.id))
  const [isTracing, setTracing] = useState(false)
  const [what, setWhat] = useState('fairway')
  const [chosenId, setChosen] = useState<number | null>(null)
  const [picture, setPicture] = useState<OpenPicture | null>(null)
  const served = useServedMap()
  const [isMapShown, setMapShown] = useState(true)
  const [sought, setSought] = useState<{ readonly near: LonLat; readonly open: number } | null>(null)
  // Sought for the hole that was open; another one is none of it.
  const finding = sought?.open === survey.open ? sought.near : null
  const setFinding = (near: LonLat | null): void => setSought(near && { near, open: survey.open })
  const chosen = isTracing
    ? null
    : (hole.rows.find(({ id, outline }) => id === chosenId && outline !== null) ?? null)
  const chosenArea = [...reading.rowOfArea].find(([, id]) => id === chosen?.id)?.[0] ?? ''
  const tracing = isTracing ? kindWords(what) : null
  const replace = (kind: string, next: Survey): void => {
    setTracing(false)
    setChosen(null)
    edit(kind, () => next)
  }
  return (
    <>
      <PageHead
        what="survey"
        reader={reader}
        onReader={(next) => {
          if (next.units !== reader.units)
            edit('unit', (now) => edits.setUnit(now, next.units === 'yards' ? 'yd' : 'm'))
          onReader(next)
        }}
        choices={
          <>
            {survey.holes.length > 1 && (
              <Choice
                label="Hole"
                value={String(survey.open)}
                options={survey.holes.map(({ ref }, index) => ({
                  value: String(index),
                  name: ref || 'no number',
                }))}
                onChange={(index) => edit('open', (now) => edits.chooseHole(now, Number(index)))}
              />
            )}
            <button type="button" onClick={() => edit('hole', edits.addHole)}>
              Another hole
            </button>
            {survey.holes.length > 1 && (
              <button type="button" onClick={() => edit('hole', edits.removeHole)}>
                Remove hole {hole.ref}
              </button>
            )}
          </>
        }
      >
        <button type="button" disabled={!state.canUndo} onClick={undo}>
          Undo
        </button>
        <button type="button" disabled={!state.canRedo} onClick={redo}>
          Redo
        </button>
      </PageHead>
      <main className="desk survey">
        <div className="chart-side">
          {reading.hole !== null && (
            <SurveyChart
              key={survey.open}
              hole={reading.hole}
              units={reader.units}
              step={readerMetres(reader)}
              courseName={survey.name}
              tracing={tracing}
              draft={survey.draft?.corners ?? []}
              chosen={chosen === null ? null : { areaId: chosenArea, corners: chosen.outline ?? [] }}
              picture={picture}
              onPicture={setPicture}
              map={
                served === null
                  ? null
                  : {
                      served,
                      start: isMapShown ? reading.start : null,
                      finding: finding && {
                        near: finding,
                        onStart: (start) => {
                          setFinding(null)
                          setMapShown(true)
                          edit('start', (now) => edits.setStart(now, start))
                        },
                        onLeave: () => setFinding(null),
                      },
                    }
              }
              onCorner={(at) => edit(`corner ${Date.now()}`, (now) => edits.addCorner(now, what, at))}
              onMoveCorner={(index, at, drag) =>
                chosen !== null &&
                edit(
                  'drag',
                  (now) => edits.setCorners(now, chosen.id, (chosen.outline ?? []).with(index, at)),
                  drag,
                )
              }
              onChoose={(areaId) =>
                setChosen(areaId === null ? null : (reading.rowOfArea.get(areaId) ?? null))
              }
              onClose={() => edit('close', edits.closeDraft)}
              onUndo={undo}
              onDrop={() => edit('drop', edits.dropDraft)}
            />
          )}
          <TraceSection
            tracing={tracing}
            what={what}
            corners={survey.draft?.corners.length ?? 0}
            onWhat={(next) => {
              setWhat(next)
              edit('drop', edits.dropDraft)
            }}
            onTrace={setTracing}
            onClose={() => edit('close', edits.closeDraft)}
            onDrop={() => edit('drop', edits.dropDraft)}
          />
        </div>
        <div className="ledger survey-ledger">
          <Section title="The hole">
            <HoleFields
              name={survey.name}
              hole={hole}
              onName={(name) => edit('name', (now) => ({ ...now, name }))}
              onHole={(field, text) => edit(`hole ${field}`, (now) => edits.setHole(now, field, text))}
            />
            <Closing reading={reading} reader={reader} />
          </Section>
          <Section title="Its rows">
            {!state.isKept && (
              <p className="question-fault" role="alert">
                This browser has no room for the survey: it goes when the page is closed. Save it as a table
                first.
              </p>
            )}
            {state.isElsewhere && (
              <div className="question-fault" role="alert">
                <p>Another tab has changed the survey. Until you choose, nothing more of this one is kept.</p>
                <button type="button" onClick={() => state.settle('there')}>
                  Take what is there
                </button>
                <button type="button" onClick={() => state.settle('here')}>
                  Keep what is here
                </button>
              </div>
            )}
            <RowTable
              key={survey.open}
              rows={hole.rows}
              unit={survey.unit}
              faults={rowFaults}
              chosen={chosen?.id ?? null}
              onCell={(id, cell, text) =>
                edit(`cell ${id} ${cell}`, (now) => edits.setCell(now, id, cell, text))
              }
              onRemove={(id) => edit(`remove ${id}`, (now) => edits.removeRow(now, id))}
              onChoose={(id) => {
                setTracing(false)
                setChosen(id)
              }}
            />
            {reading.holeFaults.length > 0 && (
              <div className="hole-faults">
                <FaultList faults={reading.holeFaults} />
              </div>
            )}
          </Section>
          {chosen?.outline != null && (
            <Section title={`The outline: ${kindWords(chosen.what)}`}>
              <CornerForm
                corners={chosen.outline}
                unit={survey.unit}
                onCorners={(kind, corners) => edit(kind, (now) => edits.setCorners(now, chosen.id, corners))}
              />
            </Section>
          )}
          <Section title="The green">
            <GreenSection
              key={survey.open}
              row={green}
              faults={green === undefined ? [] : (reading.rowFaults.get(green.id) ?? [])}
              hole={reading.hole}
              unit={survey.unit}
              reader={reader}
              onHold={setGreenHeld}
              onSize={(part, metres) => edit(`green ${part}`, (now) => edits.setGreenSize(now, part, metres))}
              onSlope={(what, slope) => edit(`green ${what}`, (now) => edits.setGreenSlope(now, slope))}
            />
          </Section>
          <Section title="A picture to trace over">
            <PictureSection
              picture={picture}
              unit={survey.unit}
              lengthMetres={reading.hole?.lengthMetres ?? null}
              onPicture={setPicture}
            />
          </Section>
          <Section title="A map to trace over">
            <MapSection
              map={served}
              near={nearStart(survey)}
              unplaced={unplacedHoles(survey)}
              hasStart={reading.start !== null}
              isShown={isMapShown}
              onShow={setMapShown}
              onFind={setFinding}
            />
          </Section>
          <Section title="Edges that were walked">
            <WalkSection
              holeRef={hole.ref}
              start={reading.start}
              isBent={hole.rows.some(({ what: kind }) => kind === 'bend')}
              unit={survey.unit}
              reader={reader}
              onRows={(rows) => edit('walk', (now) => edits.addRows(now, rows))}
            />
          </Section>
          <Section title="The table">
            <SurveyFiles survey={survey} onOpen={(next) => replace('open', next)} />
          </Section>
          <Section title="The course">
            <KeepSection
              survey={survey}
              onKept={state.keepAs}
              onOpen={(next) => replace('open', next)}
              onNew={() => replace('new', newSurvey(survey.unit, Date.now()))}
            />
          </Section>
        </div>
      </main>
    </>
  )
}
