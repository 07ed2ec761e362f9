import { type ReactElement, useMemo, useState } from 'react'
import { partnerNames } from '#golf/player/first-name.ts'
import type { Player } from '#golf/player/player.ts'
import { FOURSOME_BASIS, foursomeTable } from '#golf/round/foursome-table.ts'
import type { Partners } from '#golf/strategy/alternate-shot.ts'
import { splitWords } from '#golf/strategy/foursome-words.ts'
import { splitTees } from '#golf/strategy/split-tees.ts'
import { type CardChoice, keepChoice, keptChoice } from '../card/card-choice.ts'
import { RoundChoices } from '../card/round-choices.tsx'
import { roundHoles } from '../card/round-holes.ts'
import { SheetFrame } from '../card/sheet-frame.tsx'
import { useLaidOut } from '../card/use-laid-out.ts'
import { usePdf } from '../card/use-pdf.ts'
import { AS_DRAWN, EngravedFor } from '../chart/picture.tsx'
import { useCommands } from '../commands/use-commands.ts'
import { useDay } from '../course/use-day.ts'
import type { OfField } from '../group/page-of-field.tsx'
import { useField } from '../group/use-field.ts'
import { Choice } from '../ledger/choice.tsx'
import { Section } from '../ledger/section.tsx'
import { faultWords } from '../page/fault-words.ts'
import { FigureTable } from '../page/figure-table.tsx'
import { Lines } from '../page/lines.tsx'
import { TroubleNote } from '../page/trouble-note.tsx'
import { PlanProgress } from '../planning/plan-progress.tsx'
import { figure, unitSign } from '../words.ts'
import { type AskedCaptain, layOutCaptain } from './lay-out-captain.ts'
import { usePair } from './use-pair.ts'

/** A pair, once course and players are there: who tees off where, the table, and the sheet for the captain. */
export function PairDesk(props: OfField): ReactElement {
  const { course, courseId, players, reader } = props
  const { units } = reader
  const { day, dayId, chooseDay, dayTrouble } = useDay()
  const [tee, setTee] = useState('')
  const [choice, setChoice] = useState(keptChoice)
  const [ids, setIds] = useState<Partners<string>>(['', ''])
  const { holes, left } = useMemo(() => roundHoles(course, tee, day), [course, tee, day])
  const wanted = useMemo(() => ids.filter((id) => id !== ''), [ids])
  const loaded = useField(wanted)
  const pair = useMemo(() => pairOf(ids, loaded), [ids, loaded])
  const { work, holes: paired, missing } = usePair(course, holes, day, pair)
  const isWhole = pair !== null && work.of > 0 && work.done === work.of && paired.length > 0
  const asked = useMemo((): AskedCaptain | null => {
    if (!isWhole || pair === null) return null
    const names = partnerNames(pair) as unknown as Partners<string>
    return { course, day, names, holes: paired, split: splitTees(paired), choice, units }
  }, [isWhole, pair, course, day, paired, choice, units])
  const { laid, trouble } = useLaidOut(asked, layOutCaptain)
  const { save, isMaking, fault } = usePdf()
  const choose = (change: Partial<CardChoice>): void => {
    keepChoice({ ...choice, ...change })
    setChoice({ ...choice, ...change })
  }
  const unread = wanted.flatMap((id) => {
    const one = loaded[id]
    return one !== undefined && 'trouble' in one ? [one.trouble] : []
  })
  const shown = dayTrouble ?? fault ?? trouble
  const faults = laid === null ? [] : laid.faults.map(faultWords)
  const mayLeave = laid !== null && faults.length === 0
  useCommands({ print: mayLeave ? () => print() : null }, true)
  return (
    <main className="ruled-page after-page card-page">
      <div className="choices card-choices">
        {(['First partner', 'Second partner'] as const).map((label, index) => (
          <Choice
            key={label}
            label={label}
            value={ids[index] ?? ''}
            options={[
              { value: '', name: 'nobody yet' },
              ...players
                .filter(({ id }) => id !== ids[index === 0 ? 1 : 0])
                .map(({ id, name }) => ({ value: id, name })),
            ]}
            onChange={(id) => setIds(index === 0 ? [id, ids[1]] : [ids[0], id])}
          />
        ))}
        <RoundChoices
          choice={choice}
          onChoose={choose}
          course={course}
          tee={tee}
          onTee={setTee}
          days={props.days}
          dayId={dayId}
          onDay={chooseDay}
        />
      </div>
      {shown !== null && <TroubleNote trouble={shown} />}
      {pair === null && unread.length === 0 && (
        <p className="after-lead">Choose the two partners who play one ball by turns.</p>
      )}
      <PlanProgress work={work} />
      {[...unread, ...left, ...missing].length > 0 && <Lines of={[...unread, ...left, ...missing]} />}
      {asked !== null && (
        <>
          <Section title="Who takes which tees">
            <Lines
              of={splitWords(
                asked.names,
                paired.map(({ ref }) => ref),
                asked.split,
              )}
            />
            <FigureTable
              caption="The round, expected strokes"
              table={foursomeTable(paired, asked.names, asked.split, {
                sign: unitSign(reader),
                figure: (metres) => figure(metres, reader),
              })}
            />
            <Lines of={[FOURSOME_BASIS]} />
          </Section>
          <h2>The captain’s sheet</h2>
          {faults.length > 0 && <Lines of={faults} />}
          <div className="choices sheet-choices">
            <button type="button" disabled={!mayLeave} onClick={() => print()}>
              Print
            </button>
            <button
              type="button"
              disabled={!mayLeave || isMaking}
              onClick={() =>
                laid &&
                save(laid.sheets, `${course.name}, ${asked.names.join(' and ')}`, `${courseId}-captain`)
              }
            >
              Save as PDF
            </button>
          </div>
          <EngravedFor value={AS_DRAWN}>
            {laid?.sheets.map((drawing, index) => (
              <SheetFrame
                // biome-ignore lint/suspicious/noArrayIndexKey: a sheet is its number.
                key={index}
                drawing={drawing}
                paper={choice.paper}
              />
            ))}
          </EngravedFor>
        </>
      )}
    </main>
  )
}

/** Both partners once their files are read; `null` until then. */
function pairOf(ids: Partners<string>, loaded: ReturnType<typeof useField>): Partners<Player> | null {
  const [first, second] = ids.map((id) => loaded[id])
  if (first === undefined || second === undefined || !('player' in first) || !('player' in second))
    return null
  return [first.player, second.player]
}
